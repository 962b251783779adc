/** `node build/site.ts dev|build|preview`: reference and schemas first, then the site; nothing tracked. */
import { spawnSync } from 'node:child_process';
import { cpSync } from 'node:fs';

const [command = 'build', ...rest] = process.argv.slice(2);
const run = (line: string) => {
  const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' };
  const { status } = spawnSync(line, { shell: true, stdio: 'inherit', env });
  if (status !== 0) process.exit(status ?? 1);
};

if (command !== 'preview') {
  run('typedoc');
  run('node ../packages/core/build-schemas.ts');
  cpSync('../packages/core/dist/schemas', 'public/schemas', { recursive: true });
}
run(['astro', command, ...rest].join(' '));
