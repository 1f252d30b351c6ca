import { partialInformation, shuffles, testInformation } from '../chance/information.ts';
import type { ScrambleDraws } from '../simulation/draws.ts';
import type { Subject } from '../simulation/studyDesign.ts';
import type { LookWorth, WorthKnowing } from './chances.ts';
import type { Gather } from './columns.ts';

/** What a part is called. */
export const partName = ({ unknowns, scenario }: Subject, p: number): string => {
  const part = unknowns.parts[p];
  if (!part) return '';
  const { vehicle, replacement } = scenario.inputs;
  const at = /\[(\d+)\]/.exec(part.vehicle)?.[1];
  const of = part.vehicle === 'vehicle' ? vehicle : replacement[Number(at ?? 0)];
  return of?.components[part.component]?.name ?? '';
};

/** Has made what no draw changes, where anything could be known: a number given as a range, a chance, a named part. */
export const prepareToAsk = ({ unknowns: { ranged, turns, parts }, scenario }: Subject): void => {
  const { futures, seed } = scenario.facts.chance;
  if (ranged.length > 0 || turns.length > 0 || parts.some(({ component }) => component >= 0))
    shuffles(futures, seed);
};

/** What it is worth to know each number given as a range, and how long each part will last. */
export const worthKnowing = (
  subject: Subject,
  costs: readonly Float64Array[],
  gather: Gather,
  scrambles: number,
  seed: number,
): WorthKnowing[] => {
  const { ranged, turns, parts } = subject.unknowns;
  const about = (what: string, kind: WorthKnowing['kind'], column: Float64Array): WorthKnowing => ({
    what,
    kind,
    ...partialInformation(costs, column, scrambles, seed),
  });
  return [
    ...ranged.map(({ label }, r) =>
      about(
        label,
        'number',
        gather((one) => one.ranged[r] ?? []),
      ),
    ),
    ...turns.map(({ what }, t) =>
      about(
        what,
        'part',
        gather((one) => one.turns[t] ?? []),
      ),
    ),
    ...parts.flatMap(({ component, vehicleName }, p) =>
      component < 0
        ? []
        : [
            about(
              `how long the ${partName(subject, p)} will last, ${vehicleName}`,
              'part',
              gather((one) => one.firstFailure[p] ?? []),
            ),
          ],
    ),
  ].sort((a, b) => b.worth.value - a.worth.value);
};

/** What the tests that the file describes are worth. */
export const looksOf = (
  { scenario }: Subject,
  costs: readonly Float64Array[],
  draws: readonly ScrambleDraws[],
  gather: Gather,
  scrambles: number,
): LookWorth[] =>
  draws.length === 0
    ? []
    : scenario.facts.chance.looks.map((look, l): LookWorth => {
        const event = Uint8Array.from(gather((one) => one.events[l] ?? []));
        const found = testInformation(costs, event, look.sees, look.clears, scrambles);
        const gain = found.worth.value - look.costs;
        return {
          what: look.what,
          component: scenario.inputs.vehicle.components[look.component]?.name ?? '',
          within: look.within,
          costs: look.costs,
          sees: look.sees,
          clears: look.clears,
          ...found,
          pays: Math.abs(gain) <= 2 * found.worth.error ? 'cannot tell' : gain > 0 ? 'yes' : 'no',
        };
      });
