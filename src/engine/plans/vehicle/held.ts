import type { RunningCosts } from '../../scenario/inputs/inputs.ts';
import type { Context } from './context.ts';
import { LIKE_OURS, LIKE_PATH, offerAt } from './likeOurs.ts';
import { renewedBy, type Treatments } from './neededWork.ts';
import { boughtSpan, type Span } from './span.ts';

/** A replacement over the months in which it is held, by what says which: enough to find it in any inputs. */
export type HeldReplacement = {
  readonly whose: 'replacement';
  readonly index: number;
  /** Held from the end of `start` to the end of `end`. */
  readonly start: number;
  readonly end: number;
  /** 0 the first; a further vehicle of the same kind, such as a second lease, has luck of its own. */
  readonly nth: number;
};

/** The same of the present vehicle, held to the end of month `until`. */
export type HeldPresent = {
  readonly whose: 'present';
  readonly until: number;
  /** Of each job, how it is met; `done` for those that renew no component, for no clock hangs on when they are. */
  readonly renewing: Treatments;
};

export type Held = HeldPresent | HeldReplacement;

/** The present vehicle over the months to the end of `until`. Ways that renew its components alike hold the same one. */
export const heldPresent = (treatments: Treatments, until: number, ctx: Context): HeldPresent => ({
  whose: 'present',
  until,
  renewing: treatments.map((treatment, i) =>
    (ctx.inputs.workNeeded[i]?.renews.length ?? 0) > 0 ? treatment : 'done',
  ),
});

/** The present vehicle's span, held to the end of month `until`. */
export const presentSpan = (treatments: Treatments, until: number, ctx: Context): Span => ({
  path: 'vehicle',
  luck: 'vehicle',
  name: ctx.facts.vehicleName,
  start: 0,
  end: until,
  idle: Math.min(ctx.inputs.vehicle.offTheRoad, until),
  bought: false,
  renewed: renewedBy(treatments, until, ctx),
  lastYearlyBill: until,
});

/** Where a replacement stands in the scenario. */
export const pathOf = (index: number, ctx: Context): string => {
  if (index === LIKE_OURS) return LIKE_PATH;
  return ctx.inputs.replacement.length === 1 ? 'replacement' : `replacement[${index}]`;
};

export const nameOf = (index: number, ctx: Context): string => {
  if (index === LIKE_OURS) return `another ${ctx.facts.vehicleName}`;
  return ctx.facts.replacementNames[index] ?? ctx.inputs.replacement[index]?.name ?? '';
};

/** The vehicle that is held, and its span. */
export interface Run {
  readonly vehicle: RunningCosts;
  readonly span: Span;
}

export const runOf = (ctx: Context, held: Held): Run => {
  if (held.whose === 'present')
    return { vehicle: ctx.inputs.vehicle, span: presentSpan(held.renewing, held.until, ctx) };
  const { index, start, end, nth } = held;
  return {
    vehicle: offerAt(index, start, ctx),
    span: boughtSpan(pathOf(index, ctx), nameOf(index, ctx), start, end, nth),
  };
};
