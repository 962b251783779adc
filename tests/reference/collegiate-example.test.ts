import { collegiateExample } from './data/collegiate-example.js';
import { checkReference } from './reference.js';

checkReference(collegiateExample);
