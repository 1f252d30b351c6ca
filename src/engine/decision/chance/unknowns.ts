import { shopPriceOf } from '../../cashflow/contracts/work.ts';
import type { Inputs, RunningCosts } from '../../scenario/inputs.ts';
import type { Quantity, Scenario } from '../../scenario/scenario.ts';
import { claimTurns } from '../claim/turns.ts';
import { paceOf } from '../clocks.ts';
import { type Context, contextOf, EXPECTED } from '../context.ts';
import { ENDS } from '../ends.ts';
import { expectedFailures } from '../expectedFailures.ts';
import { averageOverAll, leftOf } from '../unnamed.ts';

/** The luck of one component of one vehicle, or of its repairs that nobody named (position -1). */
export interface PartLuck {
  readonly vehicle: string;
  readonly component: number;
  /** The same in whatever order the file lists things: random streams go by it. */
  readonly name: string;
  readonly what: string;
  readonly vehicleName: string;
  /** Expected failures up to the horizon. */
  readonly expected: number;
  /** About what its failures add to the variance of a way's cost. */
  readonly weight: number;
  /** Its bills differ. */
  readonly billed: boolean;
}

/** Something that turns out or does not: a repair that does not cure, more found, the vehicle's end. */
export interface Turn {
  readonly key: string;
  readonly name: string;
  readonly what: string;
  /** The chance that it comes true; null where it is about when, not whether. */
  readonly chance: ((inputs: Inputs) => number) | null;
}

/** Everything about a scenario that a future settles. */
export interface Unknowns {
  /** Numbers given as ranges. */
  readonly ranged: readonly Quantity[];
  readonly turns: readonly Turn[];
  /** By weight, heaviest first. */
  readonly parts: readonly PartLuck[];
}

const byName = <T extends { readonly name: string }>(a: T, b: T): number =>
  a.name < b.name ? -1 : a.name > b.name ? 1 : 0;

/** A quantity's name without positions: labels name the vehicle, the job or the part. */
export const nameOf = ({ label, key }: Pick<Quantity, 'label' | 'key'>): string =>
  `${label} (${key.replaceAll(/\d+/g, '#')})`;

/** Something named, with all that is said of it: what has the same name is put in order by that. */
interface Said<T> {
  readonly one: T;
  readonly content: string;
}

const said = <T>(one: T, all: unknown): Said<T> => ({ one, content: JSON.stringify(all) });

/** By name; what has the same name is told apart by what is said of it, never by the file's order. */
const distinct = <T extends { readonly name: string }>(all: readonly Said<T>[]): T[] => {
  const sorted = [...all]
    .sort((a, b) => byName(a.one, b.one) || (a.content < b.content ? -1 : a.content > b.content ? 1 : 0))
    .map(({ one }) => one);
  return sorted.map((one, i) => {
    const before = sorted.slice(0, i).filter(({ name }) => name === one.name).length;
    return before === 0 ? one : { ...one, name: `${one.name} (${before + 1})` };
  });
};

const NOTHING_RENEWED = { renewed: new Map<number, number>() };

const partsOf = (
  vehicle: RunningCosts,
  luck: string,
  vehicleName: string,
  ctx: Context,
): Said<PartLuck>[] => {
  const named = vehicle.components.map((part, i) => {
    const pace = { aMonth: paceOf(part, ctx.distanceAMonth), months: ctx.horizon };
    const counts = expectedFailures(part, pace, []);
    let expected = 0;
    for (let m = 0; m < ctx.horizon; m++) expected += counts[m] ?? 0;
    const bill = shopPriceOf(part, ctx.work.shopHour) + part.tow + part.daysWithout * ctx.work.dayWithout;
    const one = {
      vehicle: luck,
      component: i,
      name: `${vehicleName}: ${part.name}`,
      what: `luck with the ${part.name}, ${vehicleName}`,
      vehicleName,
      expected,
      weight: expected * bill * bill,
      billed: part.bill.parts !== null || part.bill.hours !== null || part.bill.shopPrice !== null,
    };
    return said(one, part);
  });
  const { bill, strands } = vehicle.averageRepairs;
  // A way that renews a part leaves more of the average than is left with nothing renewed.
  const money = averageOverAll(vehicle, leftOf(vehicle, NOTHING_RENEWED, ctx), ctx);
  if (averageOverAll(vehicle, null, ctx) <= 0 || bill.mean <= 0) return named;
  return [
    ...named,
    said(
      {
        vehicle: luck,
        component: -1,
        name: `${vehicleName}: repairs nobody named`,
        what: `luck with repairs nobody can name, ${vehicleName}`,
        vehicleName,
        expected: money / bill.mean,
        weight: money * bill.mean,
        billed: bill.range !== null || strands > 0,
      },
      vehicle.averageRepairs,
    ),
  ];
};

/** The luck key of a replacement: its path in the file. */
export const luckOfReplacement = (index: number, count: number): string =>
  count === 1 ? 'replacement' : `replacement[${index}]`;

const turn = (key: string, name: string, what: string, chance: Turn['chance']): Turn => ({
  key,
  name,
  what,
  chance,
});

/** Every unknown of a scenario, in an order that the file's own does not change. */
export const unknownsOf = ({ inputs, facts, quantities }: Scenario): Unknowns => {
  const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
  const ranged = quantities
    .filter(({ range, varies }) => range !== null && range.low !== range.high && varies === 'once')
    .map((quantity) => ({ quantity, name: nameOf(quantity) }))
    .sort(byName)
    .map(({ quantity }) => quantity);
  const turns = inputs.workNeeded.flatMap((job, i) => {
    const uncertain = (chance: number): boolean => chance > 0 && chance < 1;
    return [
      ...(uncertain(job.notCured.chance)
        ? [
            turn(
              `work_needed[${i}].not_cured`,
              `${job.name}: not cured`,
              `whether ${job.name} cures it`,
              ({ workNeeded }) => workNeeded[i]?.notCured.chance ?? 0,
            ),
          ]
        : []),
      ...(uncertain(job.moreFound.chance)
        ? [
            turn(
              `work_needed[${i}].more_found`,
              `${job.name}: more`,
              `whether ${job.name} finds more`,
              ({ workNeeded }) => workNeeded[i]?.moreFound.chance ?? 0,
            ),
          ]
        : []),
    ].map((one) => said(one, job));
  });
  turns.push(...claimTurns(inputs).map((one) => said(one, null)));
  if (inputs.vehicle.ends.length > 0)
    turns.push(said(turn(ENDS, 'the end', `whether the ${facts.vehicleName} comes to its end`, null), null));
  const parts = [
    ...partsOf(inputs.vehicle, 'vehicle', facts.vehicleName, ctx),
    ...inputs.replacement.flatMap((offer, i) =>
      partsOf(
        offer,
        luckOfReplacement(i, inputs.replacement.length),
        facts.replacementNames[i] ?? offer.name,
        ctx,
      ),
    ),
  ];
  return {
    ranged,
    turns: distinct(turns),
    parts: distinct(parts).sort((a, b) => b.weight - a.weight || byName(a, b)),
  };
};
