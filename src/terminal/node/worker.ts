import { parentPort } from 'node:worker_threads';
import { simulateScramble } from '../../engine/simulation/draws.ts';
import type { Asked } from '../effects.ts';
import type { Told } from './crew.ts';

// The arrays are copied. To hand their memory over would be quicker, but makes V8 drop all that it has compiled here for
// reading arrays.
const tell = (told: Told): void => parentPort?.postMessage(told);

/** A worker's whole life: draws sets of the scenario it is handed, each time until none is left to take. */
parentPort?.on('message', ({ scenario, settings, taken }: Asked) => {
  for (;;) {
    const place = Atomics.add(taken, 0, 1);
    const setting = settings[place];
    if (setting === undefined) break;
    tell({ place, draws: simulateScramble(scenario, setting) });
  }
  tell('nothing left');
});
