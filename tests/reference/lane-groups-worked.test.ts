import { laneGroupsWorked } from './data/lane-groups-worked.js';
import { checkReference } from './reference.js';

checkReference(laneGroupsWorked);
