import { setHandout } from './data/set-handout.js';
import { checkReference } from './reference.js';

checkReference(setHandout);
