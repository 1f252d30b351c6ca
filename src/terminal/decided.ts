import { drawnForOthers, settled } from '../engine/analysis/futuresSummary.ts';
import { beforeDraws, decideAtAverage, withChances } from '../engine/answer/decide.ts';
import type { Decision } from '../engine/answer/decision.ts';
import { SCRAMBLES, type Scenario } from '../engine/scenario/inputs/scenario.ts';
import { simulateScramble } from '../engine/simulation/draws.ts';
import { joinDraws } from '../engine/simulation/join.ts';
import { type Drawing, drawFutures } from './drawing.ts';
import type { Effects } from './effects.ts';
import { startProgress } from './progress.ts';

const DRAWING: Drawing = {
  scrambles: SCRAMBLES,
  simulate: simulateScramble,
  joined: joinDraws,
  settled,
  drawnForOthers,
};

/**
 * The whole decision, with as many futures as the scenario says; with none of them, what can be said at average
 * inputs. While the crew draws, this thread works out the latter, then draws too. Told to stop, it sends the crew home
 * and leaves the terminal's line as it was.
 */
export const decided = async (scenario: Scenario, effects: Effects): Promise<Decision> => {
  if (scenario.facts.chance.futures === 0) return decideAtAverage(scenario, effects.version);
  const crew = effects.crew();
  const progress = startProgress(effects);
  const end = (): void => {
    crew.end();
    progress.end();
  };
  const release = effects.onStop(end);
  // Between two long pieces of work what has come is told, and a signal to stop gets its turn.
  const pause = (): Promise<void> => new Promise((done) => void effects.later(0, done));
  const averages = async (): Promise<Decision> => {
    await pause();
    const atAverage = decideAtAverage(scenario, effects.version);
    await pause();
    beforeDraws(scenario);
    return atAverage;
  };
  try {
    const free = averages();
    const [drawn, atAverage] = await Promise.all([
      drawFutures(scenario, DRAWING, { crew, free, pause, say: progress.say }),
      free,
    ]);
    crew.end();
    progress.say('Working out what they show');
    await pause();
    return withChances(drawn.scenario, atAverage, drawn.draws);
  } finally {
    release();
    end();
  }
};
