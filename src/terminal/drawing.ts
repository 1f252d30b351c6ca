import type { Scenario } from '../engine/scenario/inputs/scenario.ts';
import type { DrawSetting, ScrambleDraws } from '../engine/simulation/draws.ts';
import type { Crew, Effects } from './effects.ts';
import { MOST } from './futures.ts';
import { joining } from './joining.ts';
import { grouped } from './number.ts';

/** The engine's part in drawing futures. */
export interface Simulator {
  readonly simulate: (scenario: Scenario, setting: DrawSetting) => ScrambleDraws;
  /** One set with the further points of the same set after its first ones. */
  readonly joined: (first: ScrambleDraws, further: ScrambleDraws) => ScrambleDraws;
  /** Whether more futures would no longer change what is printed. */
  readonly settled: (scenario: Scenario, draws: readonly ScrambleDraws[]) => boolean;
  /** The scenario to draw anew for, where other ways than those turned out best on average; null where the draws stand. */
  readonly drawnForOthers: (scenario: Scenario, draws: readonly ScrambleDraws[]) => Scenario | null;
}

/** What is to be known before anything is drawn, and where the engine's part comes from. */
export interface Drawing {
  /** How many independent sets of points there are. */
  readonly scrambles: number;
  /** The crew has an engine of its own and begins while this thread's is still loading. */
  readonly load: () => Promise<Simulator>;
}

/** Whoever waits for the draws, and does something else till then. */
export interface Waiting {
  /** Hears how far it is, in words. */
  readonly say: (line: string) => void;
  /** Settles when this thread has nothing else to do. */
  readonly free: Promise<unknown>;
}

/** How often the number of futures may be doubled before what is printed counts as settled as it will get. */
const DOUBLINGS = 3;

/**
 * Draws the scenario's futures, then doubles them until what is printed is settled: at most three times, and never
 * past the most that can be asked for. Each doubling draws only the further points of each set. The sets come back in
 * their own order, so that nothing depends on who drew what or when; what the crew could not draw is drawn here.
 *
 * @returns the draws, and the scenario they are for: it says which ways are compared
 */
export const drawFutures = async (
  asked: Scenario,
  { scrambles, load }: Drawing,
  crew: Crew,
  clock: Pick<Effects, 'later'>,
  { say, free }: Waiting,
): Promise<{ readonly scenario: Scenario; readonly draws: readonly ScrambleDraws[] }> => {
  const { seed, futures } = asked.facts.chance;
  let scenario = asked;
  const pause = (): Promise<void> => new Promise((done) => void clock.later(0, done));

  const stretch = async (from: number, to: number): Promise<ScrambleDraws[]> => {
    const settings = Array.from({ length: scrambles }, (_, scramble) => ({ seed, scramble, from, to }));
    const draws: (ScrambleDraws | undefined)[] = settings.map(() => undefined);
    let sets = 0;
    const tell = (): void =>
      say(`Drawing futures: ${grouped(scrambles * from + sets * (to - from))} of ${grouped(scrambles * to)}`);
    const oneMore = (): void => {
      sets += 1;
      tell();
    };
    tell();
    const here = async (setting: DrawSetting): Promise<ScrambleDraws> => {
      // Between two sets a signal to stop must get its turn.
      await pause();
      return (await load()).simulate(scenario, setting);
    };
    const { joins, came, forget } = joining(clock, settings.length, free);
    try {
      await crew.draw(scenario, settings, { draw: here, joins }, (place, drawn, at) => {
        draws[place] = drawn;
        came(at);
        oneMore();
      });
    } finally {
      forget();
    }
    const whole: ScrambleDraws[] = [];
    for (const [place, setting] of settings.entries()) {
      let drawn = draws[place];
      if (drawn === undefined) {
        drawn = await here(setting);
        oneMore();
      }
      whole.push(drawn);
    }
    return whole;
  };

  let each = futures / scrambles;
  let draws = await stretch(0, each);
  const { settled, joined, drawnForOthers } = await load();
  const others = drawnForOthers(scenario, draws);
  if (others !== null) {
    scenario = others;
    draws = await stretch(0, each);
  }
  for (let doublings = 0; doublings < DOUBLINGS && 2 * each * scrambles <= MOST; doublings += 1) {
    if (settled(scenario, draws)) break;
    const further = await stretch(each, 2 * each);
    draws = draws.map((first, place) => joined(first, further[place] as ScrambleDraws));
    each *= 2;
  }
  return { scenario, draws };
};
