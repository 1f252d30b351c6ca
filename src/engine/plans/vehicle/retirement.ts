import { brokenValue } from '../../cashflow/contracts/marketValue.ts';
import { levelAt } from '../../cashflow/levels.ts';
import { type Category, type Contract, postMoney } from '../../cashflow/posting.ts';
import type { Amounts } from './byReading.ts';
import type { Sold } from './changeOver.ts';
import type { Context } from './context.ts';
import type { Treatments } from './neededWork.ts';
import { presentUnusedBack } from './paidAhead.ts';
import { presentValueAt, sellLater } from './presentVehicle.ts';
import { type Recipe, recipe } from './recipe.ts';
import { type Awaited, netValue, type Sale, sellPrivately } from './selling.ts';

/** In what state the vehicle is when it goes. */
export type WalksAs = 'running' | 'broken';

/**
 * What the present vehicle would bring at the end of a month, broken down then: the same part of its running value as
 * today, not less than scrap, and never more than it would bring running.
 */
export const presentBrokenAt = (treatments: Treatments, month: number, ctx: Context): number => {
  const { sellsFor, brandFactor } = ctx.inputs.vehicle;
  const running = presentValueAt(treatments, month, month, ctx);
  const [today, brokenToday] = [sellsFor.running * brandFactor, sellsFor.brokenDown * brandFactor];
  return Math.min(running, brokenValue(running, today, brokenToday, sellsFor.scrap));
};

/** What it brings at the end of a month, running or broken down, before what selling it costs. */
const priceAt = (month: number, how: WalksAs, treatments: Treatments, ctx: Context): number =>
  how === 'running' ? presentValueAt(treatments, month, month, ctx) : presentBrokenAt(treatments, month, ctx);

/** The same net of what selling it costs. */
export const valueWalking = (month: number, how: WalksAs, treatments: Treatments, ctx: Context): Amounts =>
  netValue(ctx.inputs.vehicle, priceAt(month, how, treatments, ctx), month, ctx);

/** Selling it where it stands, broken down: no buyer drives it away, but the sale costs what any sale costs. */
const sellBroken = (treatments: Treatments, month: number, ctx: Context): Sale =>
  sellPrivately(
    {
      category: 'selling the old one',
      what: 'sold: broken down',
      path: 'vehicle.sells_for.as_it_stands',
      reason: 'the same part of its running price as today, not less than scrap',
    },
    presentBrokenAt(treatments, month, ctx),
    ctx.inputs.vehicle.floor,
    month,
    ctx,
  );

/** What replacing it in a hurry adds to replacing it in peace: money, days without, storage, a loan refused. */
const inAHurry =
  (month: number, ctx: Context): Contract =>
  (sink) => {
    const { inAHurry: hurry, storageADay } = ctx.inputs.vehicle;
    const { dayWithout } = ctx.inputs.household;
    const level = ctx.oneOffLevel(month);
    const days = dayWithout * levelAt(ctx.levels.general, month);
    if (hurry.days !== 0) sink.stands?.(month, 0, hurry.days);
    const add = (category: Category, what: string, key: string, reason: string, amount: number): void => {
      if (amount !== 0)
        postMoney(sink, { category, what, path: `vehicle.in_a_hurry.${key}`, reason }, month, amount);
    };
    add('buying', 'in a hurry', 'adds', 'a worse price than in peace', hurry.adds * level);
    add(
      'getting about without it',
      'days until another is there',
      'days',
      'it has broken down',
      hurry.days * days,
    );
    add(
      'selling the old one',
      'storage until it is sold',
      'days',
      'it cannot move',
      hurry.days * storageADay * level,
    );
    add(
      'buying',
      'loan refused',
      'refused',
      'its chance, times what is then paid more',
      hurry.refused * hurry.refusedCosts * level,
    );
  };

const soldThen = (ctx: Context, month: number, how: WalksAs, treatments: Treatments): Sale =>
  how === 'running' ? sellLater(treatments, month, ctx) : sellBroken(treatments, month, ctx);

const letGo = (ctx: Context, sale: Recipe<Sale>, month: number, how: WalksAs): Contract[] => [
  sale.from(ctx).contract,
  ...(how === 'broken' ? [inAHurry(month, ctx)] : []),
  presentUnusedBack(month, ctx),
];

const awaitedBy = (ctx: Context, sale: Recipe<Sale>): Awaited | null => sale.from(ctx).awaited;

const proceedsThen = (ctx: Context, month: number, how: WalksAs, treatments: Treatments): number =>
  priceAt(month, how, treatments, ctx);

/** Letting it go at the end of month t: as later sales go while it runs; where it stands, and in a hurry, once broken. */
export const soldWalking = (month: number, how: WalksAs, treatments: Treatments): Sold => {
  const sale = recipe(soldThen, month, how, treatments);
  return {
    proceeds: recipe(proceedsThen, month, how, treatments),
    pieces: [recipe(letGo, sale, month, how)],
    awaited: recipe(awaitedBy, sale),
  };
};
