// The main job from a fresh clone: build, serve the site, and print one reading in the terminal too.
import { spawn } from 'node:child_process';
import { build, install, must, root } from './ready.mjs';

const PORT = process.env.PORT ?? '4321';

install();
build();
must('node', ['scripts/demo.ts', `http://localhost:${PORT}`]);
spawn('npm', ['run', '--silent', 'preview', '--workspace', 'docs-site', '--', '--port', PORT], {
  cwd: root,
  stdio: 'inherit',
  shell: process.platform === 'win32',
  env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
}).on('exit', (code) => process.exit(code ?? 1));
