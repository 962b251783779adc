import { criticalSpeedWorked } from './data/critical-speed-worked.js';
import { checkReference } from './reference.js';

checkReference(criticalSpeedWorked);
