import { recordAsPlan } from './data/record-as-plan.js';
import { checkReference } from './reference.js';

checkReference(recordAsPlan);
