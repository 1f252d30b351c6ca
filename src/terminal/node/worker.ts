import { parentPort } from 'node:worker_threads';
import { copyOf } from '../../engine/scenario/inputs/lens.ts';
import { simulateScramble } from '../../engine/simulation/draws.ts';
import type { Asked, Told } from './crew.ts';

// The arrays are copied. To hand their memory over would be quicker, but makes V8 drop all that it has compiled here for
// reading arrays.
const tell = (told: Told): void => parentPort?.postMessage(told);

/** A worker's whole life: draws scrambles of the scenario it is handed, each time until none is left to take. */
parentPort?.on('message', ({ scenario: sent, settings, taken }: Asked) => {
  // What was sent is of another kind than what is copied from it.
  const scenario = { ...sent, inputs: copyOf(sent.inputs) };
  for (;;) {
    const place = Atomics.add(taken, 0, 1);
    const setting = settings[place];
    if (setting === undefined) break;
    const draws = simulateScramble(scenario, setting);
    tell({ place, draws, at: performance.timeOrigin + performance.now() });
  }
  tell('nothing left');
});
