/** The demos as subjects to draw futures for, by the product's own code. */
import { readFileSync } from 'node:fs';
import { productModules } from './product.mjs';

/** @typedef {import('../../src/engine/scenario/inputs/scenario.ts').Scenario} Scenario */
/** @typedef {import('../../src/engine/simulation/studyDesign.ts').Subject} Subject */

const SIMULATION = 'src/engine/simulation';

export const drawing = async () => {
  const { parse, subject, draws, futures, counts, joint, context } = await productModules({
    parse: 'src/engine/scenario/file/parse.ts',
    subject: `${SIMULATION}/studyDesign.ts`,
    draws: `${SIMULATION}/draws.ts`,
    futures: `${SIMULATION}/futureDrawer.ts`,
    counts: `${SIMULATION}/failureCounts.ts`,
    joint: `${SIMULATION}/jointInputs.ts`,
    context: 'src/engine/plans/vehicle/context.ts',
  });
  return {
    /** @type {(name: string) => Scenario} */
    demo: (name) => {
      const text = readFileSync(`scenarios/${name}.yaml`, 'utf8');
      const { scenario, problems } = parse.parseScenario(text, { file: name, today: '2026-11-25' });
      if (!scenario) throw new Error(`${name}: ${JSON.stringify(problems)}`);
      return scenario;
    },
    /** @type {typeof import('../../src/engine/simulation/studyDesign.ts').subjectOf} */
    subjectOf: subject.subjectOf,
    /** @type {typeof import('../../src/engine/simulation/draws.ts').drawFutures} */
    drawFutures: draws.drawFutures,
    /** @type {typeof import('../../src/engine/simulation/futureDrawer.ts').drawerOf} */
    drawerOf: futures.drawerOf,
    /** @type {typeof import('../../src/engine/simulation/failureCounts.ts').expectedOf} */
    expectedOf: counts.expectedOf,
    /** @type {typeof import('../../src/engine/simulation/jointInputs.ts').jointInputs} */
    jointInputs: joint.jointInputs,
    /** @type {typeof import('../../src/engine/plans/vehicle/context.ts').contextOf} */
    contextOf: context.contextOf,
  };
};

/** Processor time of a piece of work in microseconds: other work on the machine disturbs it less than the clock's. */
export const processorTime = (/** @type {() => unknown} */ work) => {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return user + system;
};

/**
 * Only these ways of a subject, nothing else worked out in a future.
 *
 * @param {Subject} subject
 * @param {readonly number[]} ways positions among its options: first the one that keeps, then the one that replaces
 * @returns {Subject}
 */
export const onlyWays = (subject, ways) => ({
  ...subject,
  options: ways.map((way) => /** @type {Subject['options'][number]} */ (subject.options[way])),
  keep: 0,
  replace: ways.length > 1 ? 1 : null,
  fixed: null,
  rule: null,
  groups: [],
});
