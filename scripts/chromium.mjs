// Finds a Chromium for the browser tests, or gets one: the system's, Debian's package, or Playwright's.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './ready.mjs';

const NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome.exe',
];
const ELSEWHERE = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const runnable = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** The path of a Chromium on this machine, or null. */
export async function findChromium() {
  const { chromium } = await import('playwright-core');
  const folders = (process.env.PATH ?? '').split(delimiter);
  const candidates = [
    process.env.CHROME_PATH ?? '',
    ...folders.flatMap((folder) => NAMES.map((name) => join(folder, name))),
    ...ELSEWHERE,
    chromium.executablePath(),
  ];
  return candidates.find((path) => path !== '' && existsSync(path) && runnable(path)) ?? null;
}

/** The same, but gets one where there is none; ends the program where none can be had. */
export async function needChromium() {
  const found = await findChromium();
  if (found !== null) return found;

  console.log('No Chromium found; installing one for the browser tests …');
  const apt = spawnSync('apt-get', ['--version']).status === 0;
  const admin = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
  const aptGet = (...args) => {
    const [command, ...rest] = [...admin, 'apt-get', ...args];
    return run(command, rest, { DEBIAN_FRONTEND: 'noninteractive' });
  };
  if (apt) {
    aptGet('update', '-qq');
    aptGet('install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-dejavu-core');
  }
  if ((await findChromium()) === null) run('playwright-core', ['install', 'chromium']);
  const got = await findChromium();
  if (got !== null) return got;
  console.error(
    'The browser tests need a Chromium and none could be installed. Install Chrome or Chromium, or set CHROME_PATH to one, and run npm test again.',
  );
  process.exit(1);
}
