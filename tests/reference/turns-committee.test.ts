import { turnsCommittee } from './data/turns-committee.js';
import { checkReference } from './reference.js';

checkReference(turnsCommittee);
