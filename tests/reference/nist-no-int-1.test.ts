import { nistNoInt1 } from './data/nist-no-int-1.js';
import { checkReference } from './reference.js';

checkReference(nistNoInt1);
