import { reserveWorked } from './data/reserve-worked.js';
import { checkReference } from './reference.js';

checkReference(reserveWorked);
