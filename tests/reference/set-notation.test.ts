import { setNotation } from './data/set-notation.js';
import { checkReference } from './reference.js';

checkReference(setNotation);
