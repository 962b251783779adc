import { openWaterReadings } from './data/open-water-readings.js';
import { checkReference } from './reference.js';

checkReference(openWaterReadings);
