import { strokeLength2007 } from './data/stroke-length-2007.js';
import { checkReference } from './reference.js';

checkReference(strokeLength2007);
