// The main job from a fresh clone: build, serve the site, and print one reading in the terminal too.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { build, install, must, root } from './ready.mjs';

install();
build();
const PORT = await freePort(Number(process.env.PORT ?? 4321));
must('node', ['scripts/demo.ts', `http://localhost:${PORT}`]);
spawn(
  'npm',
  ['run', '--silent', 'preview', '--workspace', 'docs-site', '--', '--port', String(PORT)],
  {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  },
).on('exit', (code) => process.exit(code ?? 1));

/** The port, or the next that nobody listens on: the address is printed before the server starts. */
async function freePort(port) {
  const probe = createServer();
  try {
    await once(probe.listen(port, 'localhost'), 'listening');
    return port;
  } catch (error) {
    if (error.code !== 'EADDRINUSE') throw error;
    return freePort(port + 1);
  } finally {
    probe.close();
  }
}
