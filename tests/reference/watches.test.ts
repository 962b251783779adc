import { watches } from './data/watches.js';
import { checkReference } from './reference.js';

checkReference(watches);
