/**
 * How long a cold run of the built command takes, as ratios to Node starting up and doing nothing, measured side by
 * side: every round runs each command once, and medians are compared. Prints; judges nothing.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const ROUNDS = Number(process.argv[2] ?? 15);
const SCENARIO = 'scenarios/short-form.yaml';
const folder = mkdtempSync(join(tmpdir(), 'stillworth-bench-'));

/** @type {Readonly<Record<string, readonly string[]>>} */
const COMMANDS = {
  'node -e 0': ['-e', '0'],
  check: ['dist/stillworth.js', 'check', SCENARIO],
  report: ['dist/stillworth.js', 'report', SCENARIO, '--out', join(folder, 'report.html')],
  'report --futures 0': [
    'dist/stillworth.js',
    'report',
    SCENARIO,
    '--futures',
    '0',
    '--out',
    join(folder, 'without.html'),
  ],
  'report --json': ['dist/stillworth.js', 'report', SCENARIO, '--json'],
  costs: ['dist/stillworth.js', 'costs', SCENARIO],
};

/** @param {readonly number[]} values */
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** @type {Record<string, number[]>} */
const times = Object.fromEntries(Object.keys(COMMANDS).map((name) => [name, []]));
try {
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const [name, args] of Object.entries(COMMANDS)) {
      const start = performance.now();
      const run = spawnSync(process.execPath, args, { encoding: 'utf8' });
      times[name]?.push(performance.now() - start);
      if (run.status !== 0) throw new Error(`${name} failed: ${run.stderr}`);
    }
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
const bare = median(times['node -e 0'] ?? []);
console.log(`medians of ${ROUNDS} rounds, Node ${process.versions.node}`);
for (const [name, values] of Object.entries(times)) {
  const middle = median(values);
  console.log(
    `${name.padEnd(18)} ${middle.toFixed(0).padStart(5)} ms  ${(middle / bare).toFixed(2)} x node -e 0`,
  );
}
const [drawn, without] = ['report', 'report --futures 0'].map((name) => median(times[name] ?? []));
console.log(`a report with its futures takes ${((drawn ?? 0) / (without ?? 0)).toFixed(2)} x one without`);
