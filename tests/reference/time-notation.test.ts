import { timeNotation } from './data/time-notation.js';
import { checkReference } from './reference.js';

checkReference(timeNotation);
