// Makes a fresh clone ready with nothing but a system Node (20 or later) and npm, and runs the rest on
// the Node that the lock file pins: npm puts node_modules/.bin first on the PATH, and a `node` is there.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));
const bin = join(root, 'node_modules', '.bin');
const windows = process.platform === 'win32';

/** Runs a command of node_modules/.bin or the system, its output shown; the exit code. */
export function run(command, args, env = {}) {
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    shell: windows,
    env: {
      ...process.env,
      PATH: bin + delimiter + process.env.PATH,
      ASTRO_TELEMETRY_DISABLED: '1',
      ...env,
    },
  });
  return status ?? 1;
}

/** The same, but a failure ends the program. */
export function must(command, args, env) {
  const status = run(command, args, env);
  if (status !== 0) {
    console.error(`\n${[command, ...args].join(' ')} did not succeed; its last lines say why.`);
    process.exit(status);
  }
}

/** Installs what the lock file names, unless that was done already. */
export function install() {
  const stamp = join(root, 'node_modules', '.installed-from');
  const lock = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return;
  console.log('Installing what the lock file names …');
  const npm = ['ci', '--loglevel=error'];
  if (run('npm', npm) !== 0) must('npm', npm); // a registry that hung once usually answers the next time
  writeFileSync(stamp, lock);
  const [major] = spawnSync('node', ['--version'], {
    encoding: 'utf8',
    shell: windows,
    env: { ...process.env, PATH: bin + delimiter + process.env.PATH },
  })
    .stdout.replace('v', '')
    .split('.');
  if (Number(major) < 22) {
    console.error(
      'No newer Node could be installed for this platform; install Node 22.12 or later to build.',
    );
    process.exit(1);
  }
}

/** Builds the library, then the site that stands on it. */
export function build() {
  must('npm', ['run', '--silent', 'build', '--workspace', 'packages/core']);
  must('npm', ['run', '--silent', 'build', '--workspace', 'docs-site']);
}
