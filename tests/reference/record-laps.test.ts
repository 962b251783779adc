import { recordLaps } from './data/record-laps.js';
import { checkReference } from './reference.js';

checkReference(recordLaps);
