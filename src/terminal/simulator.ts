import { drawnForOthers, settled } from '../engine/analysis/futuresSummary.ts';
import { simulateScramble } from '../engine/simulation/draws.ts';
import { joinDraws } from '../engine/simulation/join.ts';
import type { Simulator } from './drawing.ts';

/** The engine's part in drawing, in a file that is loaded when this thread needs it. */
export const SIMULATOR: Simulator = {
  simulate: simulateScramble,
  joined: joinDraws,
  settled,
  drawnForOthers,
};
