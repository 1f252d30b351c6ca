/** A worker of the page: draws each scramble that it is asked for, of the scenario that it was sent first. */
import { simulateScramble } from '../../../src/engine/simulation/draws.ts';

/** @typedef {import('../../../src/engine/scenario/inputs/scenario.ts').Scenario} Scenario */
/** @typedef {import('../../../src/engine/simulation/draws.ts').DrawSetting} DrawSetting */

const scope = /** @type {any} */ (globalThis);
/** @type {Scenario} */
let scenario;

scope.onmessage = (/** @type {{ data: { scenario: Scenario } | { setting: DrawSetting } }} */ { data }) => {
  // What was sent is of another kind to the compiler than what is copied from it.
  if ('scenario' in data) scenario = { ...data.scenario, inputs: structuredClone(data.scenario.inputs) };
  else scope.postMessage(simulateScramble(scenario, data.setting));
};
