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

/** A serif the pages name, free and everywhere to be had: what they measure on paper is measured in it. */
const FONT = 'Liberation Serif';

const hasFont = () =>
  process.platform !== 'linux' ||
  String(spawnSync('fc-list', [':', 'family'], { encoding: 'utf8' }).stdout ?? '').includes(FONT);

/**
 * Installs Debian packages, where that can be done without asking anybody.
 * @param {readonly string[]} packages
 */
const installed = (...packages) => {
  const isRoot = process.getuid?.() === 0;
  if (process.platform !== 'linux' || !isRoot || !existsSync('/usr/bin/apt-get')) return;
  console.log(`Installing ${packages.join(', ')}.`);
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
  runs('apt-get', ['update', '-q'], quiet);
  runs('apt-get', ['install', '-y', '-q', '--no-install-recommends', ...packages], quiet);
};

/** Installs a browser for the tests that look at a report as a reader does, and a font, where one is not found. */
export const setUpBrowser = () => {
  if (findBrowser() === null) installed('chromium', 'fonts-dejavu-core');
  if (findBrowser() === null)
    throw new Error(
      'The tests look at reports in a browser, and none was found. Install Chromium (Debian and Ubuntu: ' +
        '"apt-get install chromium"), or put the path of a Chromium, Chrome or Edge into STILLWORTH_BROWSER.',
    );
  if (!hasFont()) installed('fontconfig', 'fonts-liberation');
  if (!hasFont())
    console.log(`The pages are measured in ${FONT}, which is not here: on paper they may come out longer.`);
};
