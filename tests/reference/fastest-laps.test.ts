import { fastestLaps } from './data/fastest-laps.js';
import { checkReference } from './reference.js';

checkReference(fastestLaps);
