import { powerLawWorked } from './data/power-law-worked.js';
import { checkReference } from './reference.js';

checkReference(powerLawWorked);
