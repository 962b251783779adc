import { strokeLength1998 } from './data/stroke-length-1998.js';
import { checkReference } from './reference.js';

checkReference(strokeLength1998);
