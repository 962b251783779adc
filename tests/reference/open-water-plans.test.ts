import { openWaterPlans } from './data/open-water-plans.js';
import { checkReference } from './reference.js';

checkReference(openWaterPlans);
