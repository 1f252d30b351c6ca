/**
 * How the time of drawing grows with futures, months, components and options: each doubled, as the ratio of the
 * processor time to that before, 2.00 being in proportion. What does not grow with it lowers the ratio. Prints; judges
 * nothing.
 */
import { drawing, onlyWays, processorTime } from './draws.mjs';

const ROUNDS = Number(process.argv[2] ?? 5);
const FUTURES = 1024;
const { demo, subjectOf, drawFutures } = await drawing();

/** @typedef {import('../../src/engine/scenario/inputs/scenario.ts').Scenario} Scenario */
/** @typedef {import('../../src/engine/simulation/studyDesign.ts').Subject} Subject */

const base = demo('van-gearbox');

/** @type {(months: number) => Scenario} */
const over = (months) => ({
  ...base,
  inputs: { ...base.inputs, household: { ...base.inputs.household, lookAhead: months } },
});

/** The scenario with so many components in the present vehicle, its own again and again. @type {(count: number) => Scenario} */
const having = (count) => {
  const { vehicle } = base.inputs;
  const components = Array.from({ length: count }, (_, i) => ({
    .../** @type {typeof vehicle.components[number]} */ (vehicle.components[i % vehicle.components.length]),
    name: `part ${i}`,
  }));
  return {
    ...base,
    inputs: { ...base.inputs, vehicle: { ...vehicle, components } },
    quantities: base.quantities.filter(({ key }) => !key.startsWith('vehicle.components.')),
  };
};

const whole = subjectOf(base);
const ways = [whole.keep ?? 0, whole.replace ?? 1];
for (let i = 0; i < whole.options.length; i += 1) if (!ways.includes(i)) ways.push(i);

/** @type {(subject: Subject, futures?: number) => () => unknown} */
const run = (subject, futures = FUTURES) => {
  const setting = { seed: 1, scramble: 0, from: 0, to: futures };
  return () => drawFutures(subject, setting);
};

/** @type {readonly { what: string, sizes: readonly number[], work: (size: number) => () => unknown }[]} */
const TABLES = [
  { what: 'futures', sizes: [1024, 2048, 4096, 8192, 16384], work: (size) => run(whole, size) },
  { what: 'months', sizes: [60, 120, 240], work: (size) => run(subjectOf(over(size))) },
  {
    what: 'components of one vehicle',
    sizes: [1, 2, 4, 8, 12],
    work: (size) => run(subjectOf(having(size))),
  },
  {
    what: 'options',
    sizes: [1, 2, 4, ways.length].filter((size, i, all) => size <= ways.length && all.indexOf(size) === i),
    work: (size) => run(onlyWays(whole, ways.slice(0, size))),
  },
];

console.log(`growth of the time of drawing, van-gearbox; processor time, best of ${ROUNDS} rounds`);
for (const { what, sizes, work } of TABLES) {
  const all = sizes.map((size) => ({ size, work: work(size), best: Number.POSITIVE_INFINITY }));
  for (let round = 0; round <= ROUNDS; round += 1)
    for (const one of all) {
      const time = processorTime(one.work);
      // The first round compiles.
      if (round > 0) one.best = Math.min(one.best, time);
    }
  const steps = all.slice(1).map(({ size, best }, i) => {
    const before = /** @type {typeof all[number]} */ (all[i]);
    const ratio = best / before.best;
    return `${before.size} to ${size}: ${ratio.toFixed(2)} x for ${(size / before.size).toFixed(1)} x`;
  });
  console.log(`  ${what.padEnd(26)} ${steps.join('   ')}`);
}
