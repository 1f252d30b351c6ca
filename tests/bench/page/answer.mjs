/**
 * What a page would ask of the engine, timed where it is asked. A scenario comes as JSON, complete, and is read anew each
 * time, outside what is timed: nothing that was kept for the last one may answer for this one.
 */
import { decideAtAverage } from '../../../src/engine/answer/atAverage.ts';
import { withChances } from '../../../src/engine/answer/decide.ts';

/** @typedef {import('../../../src/engine/scenario/inputs/scenario.ts').Scenario} Scenario */
/** @typedef {import('../../../src/engine/answer/decision.ts').Decision} Decision */
/** @typedef {import('../../../src/engine/simulation/draws.ts').ScrambleDraws} ScrambleDraws */

/** @type {(json: string) => Scenario} */
const scenarioOf = (json) => {
  const scenario = JSON.parse(json);
  return { ...scenario, inputs: structuredClone(scenario.inputs) };
};

/** Milliseconds of the options with their ledgers, the pair and the verdict, nothing asked about any number. */
export const firstAnswer = (/** @type {string} */ json) => {
  const scenario = { ...scenarioOf(json), quantities: [] };
  const start = performance.now();
  decideAtAverage(scenario, 'bench');
  return performance.now() - start;
};

/** Milliseconds of the same with every break-even and swing, and what to know the answer again by. */
export const wholeAnswer = (/** @type {string} */ json) => {
  const scenario = scenarioOf(json);
  const start = performance.now();
  const decision = decideAtAverage(scenario, 'bench');
  return { time: performance.now() - start, ...told(decision) };
};

/** @param {Decision} decision */
const told = ({ breakEvens, difference, chances }) => ({
  /** Currency units. */
  difference: difference && difference.counted / 100,
  tips: breakEvens.filter(({ roots }) => roots.length > 0).length,
  asked: breakEvens.length,
  keepingCheaper: chances?.pair ? chances.pair.keepCheaper.value : null,
});

/** @type {any[]} */
const crew = [];

/** Calls in those who draw. @param {string} script address of their script */
export const callIn = (script, size = 2) => {
  const { Worker } = /** @type {any} */ (globalThis);
  for (let i = 0; i < size; i += 1) crew.push(new Worker(script, { type: 'module' }));
};

/**
 * Whole scrambles by the crew, each taking the next when it is done with one.
 *
 * @param {Scenario} scenario
 * @param {number} scrambles
 * @param {number} futures of each
 * @returns {Promise<ScrambleDraws[]>} in order
 */
const drawn = (scenario, scrambles, futures) =>
  new Promise((done, fail) => {
    /** @type {ScrambleDraws[]} */
    const draws = [];
    let asked = 0;
    let told = 0;
    const ask = (/** @type {any} */ worker) => {
      if (asked === scrambles) return;
      worker.postMessage({
        setting: { seed: scenario.facts.chance.seed, scramble: asked, from: 0, to: futures },
      });
      asked += 1;
    };
    for (const worker of crew) {
      worker.onerror = fail;
      worker.onmessage = (/** @type {{ data: ScrambleDraws }} */ { data }) => {
        draws[data.scramble] = data;
        told += 1;
        if (told === scrambles) done(draws);
        else ask(worker);
      };
      worker.postMessage({ scenario });
      ask(worker);
    }
  });

/** Milliseconds by the clock from asking for futures to what they say. */
export const futures = async (/** @type {string} */ json, scrambles = 16, futures = 1024) => {
  const scenario = scenarioOf(json);
  const decision = decideAtAverage(scenario, 'bench');
  const start = performance.now();
  const draws = await drawn(scenario, scrambles, futures);
  const summed = performance.now();
  const { keepingCheaper } = told(withChances(scenario, decision, draws));
  const end = performance.now();
  return { time: end - start, drawing: summed - start, keepingCheaper };
};
