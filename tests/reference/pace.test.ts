import { reference } from './data/pace.js';
import { checkReference } from './reference.js';

checkReference(reference);
