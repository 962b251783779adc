import { setDurationWorked } from './data/set-duration-worked.js';
import { checkReference } from './reference.js';

checkReference(setDurationWorked);
