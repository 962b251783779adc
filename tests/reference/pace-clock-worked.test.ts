import { paceClockWorked } from './data/pace-clock-worked.js';
import { checkReference } from './reference.js';

checkReference(paceClockWorked);
