/** `node build/site.ts dev|build|preview`: the reference first, then the site, and nothing tracked. */
import { spawnSync } from 'node:child_process';

const [command = 'build', ...rest] = process.argv.slice(2);
const run = (line: string) => {
  const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' };
  const { status } = spawnSync(line, { shell: true, stdio: 'inherit', env });
  if (status !== 0) process.exit(status ?? 1);
};

if (command !== 'preview') run('typedoc');
run(['astro', command, ...rest].join(' '));
