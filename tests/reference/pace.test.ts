import { pace } from './data/pace.js';
import { checkReference } from './reference.js';

checkReference(pace);
