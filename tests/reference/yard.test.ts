import { reference } from './data/yard.js';
import { checkReference } from './reference.js';

checkReference(reference);
