import { racePlansWorked } from './data/race-plans-worked.js';
import { checkReference } from './reference.js';

checkReference(racePlansWorked);
