import { recordProfile } from './data/record-profile.js';
import { checkReference } from './reference.js';

checkReference(recordProfile);
