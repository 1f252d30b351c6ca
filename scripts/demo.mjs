/** From a fresh clone to a report: sets up, builds, and runs the main job on the short demo scenario. */
import { mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { runs, setUpPackages } from './setup.mjs';

const REPORT = 'demo/short-form.html';

setUpPackages();
if (!runs('npm', ['run', '--silent', 'build'])) process.exit(1);
mkdirSync('demo', { recursive: true });
const made = runs(process.execPath, [
  'dist/stillworth.js',
  'report',
  'scenarios/short-form.yaml',
  '--out',
  REPORT,
]);
if (!made) process.exit(1);
console.log(`Open it in a browser: ${pathToFileURL(resolve(REPORT)).href}`);
