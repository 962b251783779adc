import { openWaterCrossings } from './data/open-water-crossings.js';
import { checkReference } from './reference.js';

checkReference(openWaterCrossings);
