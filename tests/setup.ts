import fc from 'fast-check';
import { runs, seed } from './random.js';

// The same numbers in every run unless asked otherwise; `npm run test:long` draws a fresh seed.
fc.configureGlobal({ seed, numRuns: runs });

/** Once for the whole run, as `globalSetup`. */
export default function announce(): void {
  console.log(`Properties: ${runs} runs each from seed ${seed} (FC_RUNS, FC_SEED).`);
}
