import { collegiateFactors } from './data/collegiate-factors.js';
import { checkReference } from './reference.js';

checkReference(collegiateFactors);
