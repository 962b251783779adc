import { secondHalves } from './data/second-halves.js';
import { checkReference } from './reference.js';

checkReference(secondHalves);
