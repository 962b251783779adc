import { pointsInverse } from './data/points-inverse.js';
import { checkReference } from './reference.js';

checkReference(pointsInverse);
