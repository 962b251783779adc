import { recordsOf1976 } from './data/records-of-1976.js';
import { checkReference } from './reference.js';

checkReference(recordsOf1976);
