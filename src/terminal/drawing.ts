import type { Scenario } from '../engine/scenario/inputs/scenario.ts';
import type { DrawSetting, ScrambleDraws } from '../engine/simulation/draws.ts';
import type { Crew } from './effects.ts';
import { MOST } from './futures.ts';
import { grouped } from './number.ts';

/** The engine's part in drawing futures. */
export interface Drawing {
  /** How many independent sets of points there are. */
  readonly scrambles: number;
  readonly simulate: (scenario: Scenario, setting: DrawSetting) => ScrambleDraws;
  /** One set with the further points of the same set after its first ones. */
  readonly joined: (first: ScrambleDraws, further: ScrambleDraws) => ScrambleDraws;
  /** Whether more futures would no longer change what is printed. */
  readonly settled: (scenario: Scenario, draws: readonly ScrambleDraws[]) => boolean;
  /** The scenario to draw anew for, where other ways than those turned out best on average; null where the draws stand. */
  readonly drawnForOthers: (scenario: Scenario, draws: readonly ScrambleDraws[]) => Scenario | null;
}

/** Who draws, and who hears of it. */
export interface Hands {
  readonly crew: Crew;
  /** Settles when this thread has nothing else to do: from then on it draws too. */
  readonly free: Promise<unknown>;
  /** Gives a signal to stop its turn between two sets, and the crew's messages theirs. */
  readonly pause: () => Promise<void>;
  /** Hears how far it is, in words. */
  readonly say: (line: string) => void;
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
  { scrambles, simulate, joined, settled, drawnForOthers }: Drawing,
  { crew, free, pause, say }: Hands,
): Promise<{ readonly scenario: Scenario; readonly draws: readonly ScrambleDraws[] }> => {
  const { seed, futures } = asked.facts.chance;
  let scenario = asked;

  const stretch = async (from: number, to: number): Promise<ScrambleDraws[]> => {
    const settings = Array.from({ length: scrambles }, (_, scramble) => ({ seed, scramble, from, to }));
    const draws = new Map<number, ScrambleDraws>();
    const tell = (): void =>
      say(
        `Drawing futures: ${grouped(scrambles * from + draws.size * (to - from))} of ${grouped(scrambles * to)}`,
      );
    const came = (place: number, drawn: ScrambleDraws): void => {
      draws.set(place, drawn);
      tell();
    };
    const here = async (place: number, setting: DrawSetting): Promise<void> => {
      await pause();
      came(place, simulate(scenario, setting));
    };
    const taken = new Int32Array(new SharedArrayBuffer(4));
    const ownShare = async (): Promise<void> => {
      await free;
      for (;;) {
        const place = Atomics.add(taken, 0, 1);
        const setting = settings[place];
        if (setting === undefined) return;
        await here(place, setting);
      }
    };
    tell();
    await Promise.all([crew.draw({ scenario, settings, taken }, came), ownShare()]);
    const broken = [...settings.entries()].filter(([place]) => !draws.has(place));
    for (const [place, setting] of broken) await here(place, setting);
    return settings.map((_, place) => draws.get(place) as ScrambleDraws);
  };

  let each = futures / scrambles;
  let draws = await stretch(0, each);
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
