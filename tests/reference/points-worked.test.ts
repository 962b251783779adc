import { pointsWorked } from './data/points-worked.js';
import { checkReference } from './reference.js';

checkReference(pointsWorked);
