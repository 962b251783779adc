import { restGains } from './data/rest-gains.js';
import { checkReference } from './reference.js';

checkReference(restGains);
