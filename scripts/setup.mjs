/**
 * Sets up what the project needs from nothing but Node and npm. Safe to run again: it does only what is missing.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { findBrowser } from './browser.mjs';

const LOCK = 'package-lock.json';
const INSTALLED = 'node_modules/.package-lock.json';
const OLDEST = { major: 20, minor: 19 };

/**
 * Runs a program with its output shown.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {Record<string, string>} [environment] added to this process's own
 * @returns {boolean} whether it ended well
 */
export const runs = (program, args, environment = {}) =>
  spawnSync(program, args, {
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
    env: { ...process.env, ...environment },
  }).status === 0;

/** Installs the packages the lock file names, unless that was done since the lock last changed. */
export const setUpPackages = () => {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < OLDEST.major || (major === OLDEST.major && minor < OLDEST.minor)) {
    throw new Error(
      `This needs Node ${OLDEST.major}.${OLDEST.minor} or later; this is ${process.versions.node}.`,
    );
  }
  const current = existsSync(INSTALLED) && statSync(INSTALLED).mtimeMs >= statSync(LOCK).mtimeMs;
  if (!current && !runs('npm', ['ci', '--no-audit', '--no-fund']))
    throw new Error('npm ci failed: see above.');
};

/** Installs a browser for the tests that look at a report as a reader does, where none is found. */
export const setUpBrowser = () => {
  if (findBrowser() !== null) return;
  const isRoot = process.getuid?.() === 0;
  if (process.platform === 'linux' && isRoot && existsSync('/usr/bin/apt-get')) {
    console.log('No browser found: installing chromium.');
    const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
    runs('apt-get', ['update', '-q'], quiet);
    runs(
      'apt-get',
      ['install', '-y', '-q', '--no-install-recommends', 'chromium', 'fonts-dejavu-core'],
      quiet,
    );
    if (findBrowser() !== null) return;
  }
  throw new Error(
    'The tests look at reports in a browser, and none was found. Install Chromium (Debian and Ubuntu: ' +
      '"apt-get install chromium"), or put the path of a Chromium, Chrome or Edge into STILLWORTH_BROWSER.',
  );
};
