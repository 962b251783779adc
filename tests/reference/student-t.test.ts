import { studentTQuantiles } from './data/student-t.js';
import { checkReference } from './reference.js';

checkReference(studentTQuantiles);
