/**
 * How long a cold run of the built command takes, as ratios to Node starting up and doing nothing, measured side by
 * side: every round runs each command once, and medians are compared. Prints; judges nothing.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';

const ROUNDS = Number(process.argv[2] ?? 15);
const SCENARIO = 'scenarios/short-form.yaml';
const folder = mkdtempSync(join(tmpdir(), 'stillworth-bench-'));

/** @type {Readonly<Record<string, readonly string[]>>} */
const COMMANDS = {
  'node -e 0': ['-e', '0'],
  check: ['dist/stillworth.js', 'check', SCENARIO],
  report: ['dist/stillworth.js', 'report', SCENARIO, '--out', join(folder, 'report.html')],
  'report --json': ['dist/stillworth.js', 'report', SCENARIO, '--json'],
  costs: ['dist/stillworth.js', 'costs', SCENARIO],
};

/** A report with its futures, and one without, of each demo. @type {Record<string, readonly string[]>} */
const REPORTS = Object.fromEntries(
  readdirSync('scenarios')
    .filter((name) => name.endsWith('.yaml'))
    .flatMap((name) => {
      const of = ['dist/stillworth.js', 'report', join('scenarios', name), '--force'];
      const out = ['--out', join(folder, 'page.html')];
      const title = name.replace('.yaml', '');
      return [
        [title, [...of, ...out]],
        [`${title} without`, [...of, ...out, '--futures', '0']],
      ];
    }),
);

/** @param {readonly number[]} values */
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** Medians of what each takes, every round running each once. @param {Readonly<Record<string, readonly string[]>>} all */
const timed = (all) => {
  const names = Object.keys(all);
  /** @type {Record<string, number[]>} */
  const times = Object.fromEntries(names.map((name) => [name, []]));
  for (let round = 0; round < ROUNDS; round += 1)
    for (const name of names) {
      const start = performance.now();
      const run = spawnSync(process.execPath, all[name] ?? [], { encoding: 'utf8' });
      times[name]?.push(performance.now() - start);
      if (run.status !== 0) throw new Error(`${name} failed: ${run.stderr}`);
    }
  return Object.fromEntries(names.map((name) => [name, median(times[name] ?? [])]));
};

try {
  console.log(
    `medians of ${ROUNDS} rounds, Node ${process.versions.node}, ${availableParallelism()} processors`,
  );
  const commands = timed(COMMANDS);
  for (const [name, middle] of Object.entries(commands))
    console.log(
      `${name.padEnd(18)} ${middle.toFixed(0).padStart(5)} ms  ${(middle / (commands['node -e 0'] ?? 0)).toFixed(2)} x node -e 0`,
    );
  console.log('\na report with its futures, and as a multiple of one without');
  const reports = timed(REPORTS);
  for (const [name, middle] of Object.entries(reports)) {
    const without = reports[`${name} without`];
    if (without !== undefined)
      console.log(
        `${name.padEnd(18)} ${middle.toFixed(0).padStart(5)} ms  ${(middle / without).toFixed(2)} x ${without.toFixed(0)} ms`,
      );
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
