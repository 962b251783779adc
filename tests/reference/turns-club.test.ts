import { turnsClub } from './data/turns-club.js';
import { checkReference } from './reference.js';

checkReference(turnsClub);
