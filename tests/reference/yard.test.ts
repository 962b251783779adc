import { yard } from './data/yard.js';
import { checkReference } from './reference.js';

checkReference(yard);
