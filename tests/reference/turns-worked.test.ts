import { turnsWorked } from './data/turns-worked.js';
import { checkReference } from './reference.js';

checkReference(turnsWorked);
