/**
 * What drawing a future takes at its core, beside C and numpy doing the same: see kernel/model.mjs. Every round runs
 * each once, one after the other, and takes the processor time of it, which other work on the machine disturbs least; the
 * best round of each counts, since a disturbance only adds. Prints the ratios; throws where the means do not agree;
 * judges no time.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { exactly } from './kernel/exact.mjs';
import { checkGenerator, stateAfter } from './kernel/generator.mjs';
import { bytesOf, expected, MONTHS, PARTS, tablesOf } from './kernel/model.mjs';
import { byTables } from './kernel/tables.mjs';
import { productModules } from './product.mjs';

const ROUNDS = Number(process.argv[2] ?? 15);
const FUTURES = 50_000;
const CHUNK = 10_000;
const SLICE = 200;
const SEED = [2_463_534_242, 1_812_433_253, 69_069, 3_141_592_653];

/** @typedef {{ ns: number, keep: number, replace: number, draws?: number, state?: number[], errors?: number[] }} Run */

const folder = mkdtempSync(join(tmpdir(), 'stillworth-kernel-'));
const beside = (/** @type {string} */ name) => fileURLToPath(new URL(`kernel/${name}`, import.meta.url));
const has = (/** @type {string} */ command, /** @type {readonly string[]} */ args) =>
  spawnSync(command, args).status === 0;

/** @type {(command: string, args: readonly string[]) => Run} */
const printed = (command, args) => {
  const run = spawnSync(command, args, { encoding: 'utf8' });
  if (run.status !== 0) throw new Error(`${command} failed: ${run.stderr}`);
  return JSON.parse(run.stdout);
};

/** @type {(draw: (n: number, state: Int32Array, cost: Float64Array, from: number) => number) => Run} */
const inNode = (draw) => {
  const state = Int32Array.from(SEED, (word) => word | 0);
  const cost = new Float64Array(2 * FUTURES).fill(1);
  const start = process.cpuUsage();
  let draws = 0;
  // In slices, as the product draws: what is called often is compiled as a whole.
  for (let i = 0; i < FUTURES; i += SLICE) draws += draw(SLICE, state, cost, 2 * i);
  const { user, system } = process.cpuUsage(start);
  const ns = ((user + system) * 1000) / FUTURES;
  let keep = 0;
  let replace = 0;
  for (let i = 0; i < FUTURES; i += 1) {
    keep += Number(cost[2 * i]);
    replace += Number(cost[2 * i + 1]);
  }
  return {
    ns,
    keep: keep / FUTURES,
    replace: replace / FUTURES,
    draws,
    state: [...state].map((x) => x >>> 0),
  };
};

/** Throws unless two means agree to so much of themselves. @type {(what: string, a: number, b: number, by: number) => void} */
const agree = (what, a, b, by) => {
  if (!(Math.abs(a - b) <= by)) throw new Error(`${what}: ${a} and ${b} differ by more than ${by}`);
};

try {
  checkGenerator();
  const { life, normal, renewal } = await productModules({
    life: 'src/engine/chance/failureTimes.ts',
    normal: 'src/engine/quantity/normal.ts',
    renewal: 'src/engine/chance/renewal.ts',
  });
  const tables = tablesOf(normal.normalQuantile);
  const file = join(folder, 'tables');
  writeFileSync(file, bytesOf(tables));
  const program = join(folder, 'kernel');
  const hasC = has('gcc', ['-O3', '-march=native', '-o', program, beside('kernel.c'), '-lm']);
  const hasNumpy = has('python3', ['-c', 'import numpy']);
  const inTables = byTables(tables);
  const inExact = exactly({ failureTimes: life.failureTimes, normalQuantile: normal.normalQuantile });
  const numpy = (/** @type {string} */ how, /** @type {number} */ chunk) =>
    printed('python3', [beside('kernel.py'), file, how, `${FUTURES}`, `${chunk}`, '20']);
  const inC = (/** @type {string} */ how) => printed(program, [file, how, `${FUTURES}`, ...SEED.map(String)]);
  /** @type {Readonly<Record<string, () => Run>>} */
  const all = {
    'tables, JavaScript': () => inNode(inTables),
    ...(hasC ? { 'tables, C': () => inC('tables') } : {}),
    ...(hasNumpy
      ? {
          'formulas, numpy in chunks': () => numpy('formulas', CHUNK),
          'tables, numpy in chunks': () => numpy('tables', CHUNK),
        }
      : {}),
    'exact, JavaScript': () => inNode(inExact),
    ...(hasC ? { 'exact, C': () => inC('exact') } : {}),
  };
  /** @type {Record<string, Run>} */
  const best = {};
  for (let round = 0; round < ROUNDS; round += 1)
    for (const [name, run] of Object.entries(all)) {
      const one = run();
      if (!best[name] || one.ns < best[name].ns) best[name] = one;
    }

  const js = /** @type {Run} */ (best['tables, JavaScript']);
  const exact = /** @type {Run} */ (best['exact, JavaScript']);
  const c = best['tables, C'];
  const exactC = best['exact, C'];
  const formulas = best['formulas, numpy in chunks'];
  const numpyTables = best['tables, numpy in chunks'];
  const mean = expected(tables);

  // The generator written out in the kernel is the one that gives the published numbers.
  if (`${stateAfter(SEED, Number(js.draws)).map((x) => x | 0)}` !== `${Int32Array.from(js.state ?? [])}`)
    throw new Error('the kernel draws other numbers than the generator');
  for (const [mine, its] of /** @type {[Run, Run | undefined][]} */ ([
    [js, c],
    [exact, exactC],
  ])) {
    if (!its) continue;
    agree('keep, JavaScript and C', mine.keep, its.keep, 1e-9 * mine.keep);
    agree('replace, JavaScript and C', mine.replace, its.replace, 1e-9 * mine.replace);
    if (`${mine.state}` !== `${its.state}`) throw new Error('JavaScript and C end in different states');
  }
  // Sampling errors are alike for all of them; five of them, so that chance alone hardly ever stops a run.
  const errors = formulas?.errors ?? [mean.keep / 300, mean.replace / 300];
  for (const run of [js, ...(formulas && numpyTables ? [formulas, numpyTables] : [])]) {
    agree('keep, drawn and by the renewal equation', run.keep, mean.keep, 5 * Number(errors[0]));
    agree('replace, drawn and by the renewal equation', run.replace, mean.replace, 5 * Number(errors[1]));
  }

  const per = Object.entries(best);
  console.log(
    `kernel: ${PARTS.length / 2} components of each of two vehicles, ${MONTHS} months, both in every future; ` +
      `${mean.failures.toFixed(1)} failures a future; processor time of a future, best of ${ROUNDS} rounds`,
  );
  for (const [name, { ns, keep, replace }] of per)
    console.log(
      `  ${name.padEnd(26)} ${ns.toFixed(0).padStart(6)} ns   means ${keep.toFixed(2)} and ${replace.toFixed(2)}`,
    );
  console.log(
    `  renewal equation of the tables' model     means ${mean.keep.toFixed(2)} and ${mean.replace.toFixed(2)}`,
  );
  console.log(`  one sampling error of a mean: ${errors.map((x) => x.toFixed(1)).join(' and ')}`);
  if (c)
    console.log(
      `model of whole-month lives, by tables: JavaScript takes ${(js.ns / c.ns).toFixed(2)} x C -O3`,
    );
  else console.log('C left out: there is no gcc here');
  if (formulas && numpyTables)
    console.log(
      `the same model: numpy takes ${(formulas.ns / js.ns).toFixed(2)} x JavaScript by formulas, ` +
        `${(numpyTables.ns / js.ns).toFixed(2)} x by tables`,
    );
  else console.log('numpy left out: there is no python3 with numpy here');
  console.log(
    'exact inversion, another model (lives end at an instant), which is what the product draws with: ' +
      (exactC ? `JavaScript takes ${(exact.ns / exactC.ns).toFixed(2)} x C -O3, ` : '') +
      (formulas ? `numpy by formulas ${(formulas.ns / exact.ns).toFixed(2)} x it, ` : '') +
      `${(exact.ns / js.ns).toFixed(1)} x the tables`,
  );
  const counts = renewal.renewalIncrements;
  let ofExact = 0;
  PARTS.slice(0, PARTS.length / 2).forEach(({ shape, scale, age, bill }) => {
    const increments = counts({ shape, scale }, age, { shape, scale }, 1, MONTHS);
    for (let m = 1; m <= MONTHS; m += 1) ofExact += bill * increments[m - 1] * Number(tables.discount[m]);
  });
  agree('keep, drawn exactly and by the renewal function', exact.keep, ofExact, 5 * Number(errors[0]));
  console.log(`  its renewal function: keep ${ofExact.toFixed(2)}`);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
