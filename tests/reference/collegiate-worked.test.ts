import { collegiateWorked } from './data/collegiate-worked.js';
import { checkReference } from './reference.js';

checkReference(collegiateWorked);
