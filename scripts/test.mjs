/**
 * Everything that must hold, from a fresh clone: sets up, then checks types, style, unused code, tests, the built
 * package and the committed reports. A failing step does not stop the next, so that one run tells everything.
 */
import { readFileSync, rmSync } from 'node:fs';
import { runs, setUpBrowser, setUpPackages } from './setup.mjs';

const COUNTS = 'node_modules/.vitest-counts.json';
/** No step may write what it should compare with. */
const STRICT = { CI: 'true' };

/**
 * What is checked, and the script of package.json that does it.
 * @type {readonly (readonly [name: string, ...script: string[]])[]}
 */
const STEPS = [
  ['types', 'types'],
  ['style', 'style'],
  ['unused code and dependencies', 'unused'],
  ['build', 'build'],
  ['tests', 'unit', '--', '--reporter=default', '--reporter=json', `--outputFile.json=${COUNTS}`],
  ['reports as committed', 'reports', '--', '--compare'],
  ['package', 'package'],
];

/** The test runner's own counts; a run that left none has failed as a step already. */
const counts = () => {
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(COUNTS, 'utf8'));
    return { passed: Number(numPassedTests), failed: Number(numFailedTests) };
  } catch {
    return { passed: 0, failed: 0 };
  }
};

try {
  setUpPackages();
  setUpBrowser();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}
rmSync(COUNTS, { force: true });
const failed = STEPS.filter(([name, ...script]) => {
  console.log(`\n== ${name}`);
  return !runs('npm', ['run', '--silent', ...script], STRICT);
}).map(([name]) => name);

const tests = counts();
const otherSteps = failed.filter((name) => name !== 'tests').length;
// A test run that broke off counts as one failure even if no single test is to blame.
const broken = failed.includes('tests') ? Math.max(1, tests.failed) : tests.failed;
if (failed.length > 0) console.log(`\nFailed: ${failed.join('; ')}`);
console.log(`\n${tests.passed} passed, ${broken + otherSteps} failed`);
process.exit(failed.length === 0 && tests.passed > 0 ? 0 : 1);
