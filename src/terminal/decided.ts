import type { Decision } from '../engine/answer/decision.ts';
import type { Scenario } from '../engine/scenario/inputs/scenario.ts';
import { type Drawing, drawFutures } from './drawing.ts';
import type { Crew, Effects } from './effects.ts';
import { startProgress } from './progress.ts';

/** What decides is loaded once it is wanted: by then those who draw have been asked to. */
const deciding = () => import('../engine/answer/decide.ts');

/**
 * The whole decision, with as many futures as the scenario says; with none of them, what can be said at average
 * inputs. While the crew draws, this thread works out the latter. Told to stop, it sends the crew home and leaves the
 * terminal's line as it was.
 *
 * @param crew null where nothing is to be drawn
 * @param meanwhile what else this thread can do with the decision at average inputs while the crew draws
 */
export const decided = async (
  scenario: Scenario,
  drawing: Drawing,
  crew: Crew | null,
  effects: Effects,
  meanwhile: (atAverage: Decision) => Promise<void> = async () => {},
): Promise<Decision> => {
  if (crew === null || scenario.facts.chance.futures === 0)
    return (await deciding()).decideAtAverage(scenario, effects.version);
  const progress = startProgress(effects);
  const end = (): void => {
    crew.end();
    progress.end();
  };
  const release = effects.onStop(end);
  const pause = (): Promise<void> => new Promise((done) => void effects.later(0, done));
  const ownPart = async () => {
    const { decideAtAverage, beforeDraws, withChances } = await deciding();
    const atAverage = decideAtAverage(scenario, effects.version);
    // Between two long pieces of work what has come is told, and a signal to stop gets its turn.
    await pause();
    beforeDraws(scenario);
    await pause();
    await meanwhile(atAverage);
    return { atAverage, withChances };
  };
  try {
    const own = ownPart();
    const [drawn, { atAverage, withChances }] = await Promise.all([
      drawFutures(scenario, drawing, crew, effects, { say: progress.say, free: own }),
      own,
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
