import { reference } from './data/official-time.js';
import { checkReference } from './reference.js';

checkReference(reference);
