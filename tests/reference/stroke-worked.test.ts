import { strokeWorked } from './data/stroke-worked.js';
import { checkReference } from './reference.js';

checkReference(strokeWorked);
