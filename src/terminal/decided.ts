import { beforeDraws, decideAtAverage, withChances } from '../engine/decision/decide.ts';
import type { Decision } from '../engine/decision/decision.ts';
import type { Scenario } from '../engine/scenario/scenario.ts';
import { drawFutures, type Simulator } from './drawing.ts';
import type { Crew, Effects } from './effects.ts';
import { startProgress } from './progress.ts';

/**
 * The whole decision, with as many futures as the scenario says; with none of them, what can be said at average
 * inputs. While the crew draws, this thread works out the latter. Told to stop, it sends the crew home and leaves the
 * terminal's line as it was.
 *
 * @param crew null where nothing is to be drawn
 */
export const decided = async (
  scenario: Scenario,
  simulator: Simulator,
  crew: Crew | null,
  effects: Effects,
): Promise<Decision> => {
  if (crew === null || scenario.facts.chance.futures === 0) return decideAtAverage(scenario, effects.version);
  const progress = startProgress(effects);
  const end = (): void => {
    crew.end();
    progress.end();
  };
  const release = effects.onStop(end);
  try {
    const [draws, atAverage] = await Promise.all([
      drawFutures(scenario, simulator, crew, effects, progress.say),
      Promise.resolve().then(() => {
        const atAverage = decideAtAverage(scenario, effects.version);
        // The crew is still drawing by then.
        beforeDraws(scenario);
        return atAverage;
      }),
    ]);
    crew.end();
    progress.say('Working out what they show');
    await new Promise<void>((done) => void effects.later(0, done));
    return withChances(scenario, atAverage, draws);
  } finally {
    release();
    end();
  }
};
