import { paceClockGuides } from './data/pace-clock-guides.js';
import { checkReference } from './reference.js';

checkReference(paceClockGuides);
