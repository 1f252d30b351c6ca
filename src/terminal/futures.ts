import type { Scenario } from '../engine/scenario/inputs/scenario.ts';
import { grouped } from './number.ts';

/** The fewest and the most futures that can be asked for, besides none. */
export const FEWEST = 1024;
export const MOST = 1_048_576;

/**
 * The scenario with the futures and the seed that the command line asks for; null leaves what the file says. The
 * number of futures is carried up to the next one that `scrambles` equal powers of two make: points are only well
 * spread in such numbers. `told` says so in words where it was; null where it was not.
 */
export const withFutures = (
  scenario: Scenario,
  asked: { readonly futures: number | null; readonly seed: number | null },
  scrambles: number,
): { readonly scenario: Scenario; readonly told: string | null } => {
  const { chance } = scenario.facts;
  const wanted = asked.futures ?? chance.futures;
  const futures = wanted === 0 ? 0 : scrambles * powerOfTwo(wanted / scrambles);
  const seed = asked.seed ?? chance.seed;
  return {
    scenario: { ...scenario, facts: { ...scenario.facts, chance: { ...chance, futures, seed } } },
    told:
      futures === wanted
        ? null
        : `Drawing ${grouped(futures)} futures, not ${grouped(wanted)}: ${scrambles} sets of ${grouped(futures / scrambles)}, and a set is a power of two.`,
  };
};

/** What of the drawing is not as the file has it. */
export const drawnOtherwise = (file: Scenario, drawn: Scenario): { seed?: number; futures?: number } => {
  const [own, used] = [file.facts.chance, drawn.facts.chance];
  return {
    ...(used.seed === own.seed ? {} : { seed: used.seed }),
    ...(used.futures === own.futures ? {} : { futures: used.futures }),
  };
};

/** The least power of two that is no less. */
const powerOfTwo = (least: number): number => {
  let power = 1;
  while (power < least) power *= 2;
  return power;
};
