import { sendOffsWorked } from './data/send-offs-worked.js';
import { checkReference } from './reference.js';

checkReference(sendOffsWorked);
