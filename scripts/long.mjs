// Property tests for hours, not seconds: 200,000 runs of each from a fresh seed, which is printed so
// that a red run can be repeated. FC_RUNS and FC_SEED override; arguments go to Vitest.
import { randomInt } from 'node:crypto';
import { run } from './ready.mjs';

const runs = process.env['FC_RUNS'] ?? '200000';
const seed = process.env['FC_SEED'] ?? String(randomInt(2 ** 31 - 1));
console.log(`To repeat: FC_SEED=${seed} FC_RUNS=${runs} npm run test:long`);
const given = process.argv.slice(2);
const files = given.length > 0 ? given : ['tests/core', 'tests/reference'];
const args = ['run', '--project', 'core', '--testTimeout=0', '--hookTimeout=0', ...files];
process.exit(run('vitest', args, { FC_SEED: seed, FC_RUNS: runs }));
