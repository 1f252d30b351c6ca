import { shopPriceOf } from '../cashflow/contracts/work.ts';
import { claimTurns } from '../plans/collision/claimOutcomes.ts';
import { BIG, bigBillsAMonth } from '../plans/vehicle/bigBills.ts';
import { paceOf } from '../plans/vehicle/clocks.ts';
import { type Context, contextOf, EXPECTED } from '../plans/vehicle/context.ts';
import { ENDS } from '../plans/vehicle/endOfLife.ts';
import { expectedFailures } from '../plans/vehicle/expectedFailures.ts';
import { nameOf } from '../plans/vehicle/held.ts';
import { LIKE_OURS, LIKE_PATH, offerAt } from '../plans/vehicle/likeOurs.ts';
import { averageOverAll, leftOf } from '../plans/vehicle/unnamedRepairs.ts';
import { yearOf } from '../quantity/month.ts';
import type { Inputs, RunningCosts } from '../scenario/inputs/inputs.ts';
import type { Quantity, Scenario } from '../scenario/inputs/scenario.ts';
import { type LuckNames, luckNamesOf } from './luckNames.ts';

/** The luck of one component of one vehicle, of its repairs that nobody named (position -1), or of its big bills (-2). */
export interface PartLuck {
  readonly vehicle: string;
  readonly component: number;
  /** The same in whatever order the file lists things and whatever they are called: random streams go by it. */
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

const NOTHING_RENEWED = { renewed: new Map<number, number>() };

const partsOf = (
  vehicle: RunningCosts,
  key: string,
  luck: string,
  vehicleName: string,
  names: LuckNames,
  ctx: Context,
): PartLuck[] => {
  const named = vehicle.components.map((part, i): PartLuck => {
    const pace = { aMonth: paceOf(part, ctx.distanceAMonth), months: ctx.horizon };
    const counts = expectedFailures(part, pace, []);
    let expected = 0;
    for (let m = 0; m < ctx.horizon; m++) expected += counts[m] ?? 0;
    const bill = shopPriceOf(part, ctx.work.shopHour) + part.tow + part.daysWithout * ctx.work.dayWithout;
    return {
      vehicle: luck,
      component: i,
      name: names(`${key}.components.${i}`),
      what: `luck with the ${part.name}, ${vehicleName}`,
      vehicleName,
      expected,
      weight: expected * bill * bill,
      billed: part.bill.parts !== null || part.bill.hours !== null || part.bill.shopPrice !== null,
    };
  });
  const { bill, strands } = vehicle.averageRepairs;
  named.push(...bigBillsOf(vehicle, key, luck, vehicleName, names, ctx));
  // A way that renews a part leaves more of the average than is left with nothing renewed.
  const money = averageOverAll(vehicle, leftOf(vehicle, NOTHING_RENEWED, ctx), ctx);
  if (averageOverAll(vehicle, null, ctx) <= 0 || bill.mean <= 0) return named;
  return [
    ...named,
    {
      vehicle: luck,
      component: -1,
      name: names(`${key}.averageRepairs`),
      what: `luck with repairs nobody can name, ${vehicleName}`,
      vehicleName,
      expected: money / bill.mean,
      weight: money * bill.mean,
      billed: bill.range !== null || strands > 0,
    },
  ];
};

const bigBillsOf = (
  vehicle: RunningCosts,
  key: string,
  luck: string,
  vehicleName: string,
  names: LuckNames,
  ctx: Context,
): PartLuck[] => {
  let expected = 0;
  for (let m = 1; m <= ctx.horizon; m++) expected += bigBillsAMonth(vehicle, yearOf(m), ctx);
  // About what one takes, paid or not: what it is worth once to have a vehicle of its kind.
  const takes = ctx.inputs.vehicle.sellsFor.running;
  return expected === 0
    ? []
    : [
        {
          vehicle: luck,
          component: BIG,
          name: names(`${key}.bodyStyle`),
          what: `luck with big bills, ${vehicleName}`,
          vehicleName,
          expected,
          weight: expected * takes * takes,
          billed: true,
        },
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

/** Every unknown of a scenario, in an order that neither the file's own nor any word changes. */
export const unknownsOf = (scenario: Scenario): Unknowns => {
  const { inputs, facts, quantities } = scenario;
  const ctx = contextOf(inputs, facts, EXPECTED, 'unrounded');
  const names = luckNamesOf(scenario);
  const ranged = quantities
    .filter(({ range, varies }) => range !== null && range.low !== range.high && varies === 'once')
    .map((quantity) => ({ quantity, name: names(quantity.key) }))
    .sort(byName)
    .map(({ quantity }) => quantity);
  const turns = inputs.workNeeded.flatMap((job, i) => {
    const uncertain = (chance: number): boolean => chance > 0 && chance < 1;
    return [
      ...(uncertain(job.notCured.chance)
        ? [
            turn(
              `work_needed[${i}].not_cured`,
              names(`workNeeded.${i}.notCured`),
              `whether ${job.name} cures it`,
              ({ workNeeded }) => workNeeded[i]?.notCured.chance ?? 0,
            ),
          ]
        : []),
      ...(uncertain(job.moreFound.chance)
        ? [
            turn(
              `work_needed[${i}].more_found`,
              names(`workNeeded.${i}.moreFound`),
              `whether ${job.name} finds more`,
              ({ workNeeded }) => workNeeded[i]?.moreFound.chance ?? 0,
            ),
          ]
        : []),
    ];
  });
  turns.push(...claimTurns(inputs));
  if (inputs.vehicle.ends.length > 0)
    turns.push(turn(ENDS, 'the end', `whether the ${facts.vehicleName} comes to its end`, null));
  const parts = [
    ...partsOf(inputs.vehicle, 'vehicle', 'vehicle', facts.vehicleName, names, ctx),
    ...inputs.replacement.flatMap((offer, i) =>
      partsOf(
        offer,
        `replacement.${i}`,
        luckOfReplacement(i, inputs.replacement.length),
        facts.replacementNames[i] ?? offer.name,
        names,
        ctx,
      ),
    ),
    ...(inputs.anotherLikeOurs === null
      ? []
      : partsOf(
          offerAt(LIKE_OURS, 0, ctx),
          'anotherLikeOurs',
          LIKE_PATH,
          nameOf(LIKE_OURS, ctx),
          names,
          ctx,
        )),
  ];
  return {
    ranged,
    turns: turns.sort(byName),
    parts: parts.sort((a, b) => b.weight - a.weight || byName(a, b)),
  };
};
