import { simulateScramble } from '../engine/decision/chance/draws.ts';
import { joinDraws } from '../engine/decision/chance/join.ts';
import { drawnForOthers, settled } from '../engine/decision/chance/summary.ts';
import type { Simulator } from './drawing.ts';

/** The engine's part in drawing, in a file that is loaded when this thread needs it. */
export const SIMULATOR: Simulator = {
  simulate: simulateScramble,
  joined: joinDraws,
  settled,
  drawnForOthers,
};
