import { nistNorris } from './data/nist-norris.js';
import { checkReference } from './reference.js';

checkReference(nistNorris);
