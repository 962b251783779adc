import { setTotalsWorked } from './data/set-totals-worked.js';
import { checkReference } from './reference.js';

checkReference(setTotalsWorked);
