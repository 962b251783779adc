import { fourFifties } from './data/four-fifties.js';
import { checkReference } from './reference.js';

checkReference(fourFifties);
