import fc from 'fast-check';

// The same numbers in every run unless asked otherwise, so that a red run can be repeated:
// FC_SEED=… FC_RUNS=… npm test. `npm run test:long` draws a fresh seed.
const seed = Number(process.env['FC_SEED'] ?? 20260901);
const numRuns = Number(process.env['FC_RUNS'] ?? 100);

fc.configureGlobal({ seed, numRuns });
