// Rewrites what is written by machine and read by people: the public surface, the bytes of each name,
// and the results that examples state. Look at the diff before committing it.
import { spawnSync } from 'node:child_process';

const files = [
  'tests/repo/api-report.test.ts',
  'tests/bench/bytes.test.ts',
  'tests/docs/examples.test.ts',
];
// Last, for it would take what follows it for its value.
const { status } = spawnSync('vitest', ['run', '--project', 'core', ...files, '--update'], {
  stdio: 'inherit',
  shell: process.platform === 'win32',
  env: { ...process.env, UPDATE_EXAMPLES: '1' },
});
process.exitCode = status ?? 1;
