import { levelAt } from '../../cashflow/levels.ts';
import type { Contract, Line, Sink } from '../../cashflow/posting.ts';
import { type Course, weightsOf } from '../../policy/course.ts';
import { discountFactor, effective } from '../../quantity/rate.ts';
import type { Context } from '../context.ts';
import { presentCostOf } from '../evaluate.ts';
import type { Treatments } from '../neededWork.ts';
import { presentClosed, replacementClosed } from '../openWays.ts';
import type { Plan } from '../plan.ts';
import { holdPresent, presentLoan } from '../presentVehicle.ts';
import { replacedAt } from '../ways/later.ts';
import { soldWalking, type WalksAs, walkPlan } from '../ways/walk.ts';

/** A bill of a named component: the parts say what those cost, by their clocks. */
const isNamedRepair = (line: Line): boolean =>
  line.category === 'repairs' && line.path.startsWith('vehicle.components[');

/** What holding the present vehicle takes, own time counted, its named components' failures left out. */
interface Holding {
  readonly running: Float64Array;
  /** Needed work that was put off, by the month in which it is done if the vehicle is kept on. */
  readonly ifKeptOn: Float64Array;
  /** All of the first day, as one posting. */
  readonly firstDay: Contract;
}

const holdingOf = (treatments: Treatments, ctx: Context): Holding => {
  const running = new Float64Array(ctx.horizon + 1);
  const ifKeptOn = new Float64Array(ctx.horizon + 1);
  const day = { counted: 0, cash: 0, shop: 0 };
  const add = (to: Float64Array, month: number, amount: number): void => {
    to[month] = (to[month] as number) + amount;
  };
  const sink: Sink = {
    post(line, month, counted, cash, shop) {
      if (month === 0) {
        day.counted += counted;
        day.cash += cash;
        day.shop += shop;
      } else if (line.category === 'work needed now') add(ifKeptOn, month, counted);
      else if (!isNamedRepair(line)) add(running, month, counted);
    },
    series(_line, from, to, levels, counted) {
      for (let m = from; m <= to; m++) add(running, m, counted * levelAt(levels, m));
    },
    time: () => undefined,
    stands: () => undefined,
  };
  for (const contract of holdPresent(treatments, ctx.horizon, presentLoan(ctx), ctx)) contract(sink);
  const line = { category: 'work needed now', what: 'the first day', path: '', reason: '' } as const;
  return { running, ifKeptOn, firstDay: (to) => to.post(line, 0, day.counted, day.cash, day.shop) };
};

/** Nothing but the first day: what its card costs is no part of what comes later. */
const onlyFirstDay = (holding: Holding): Plan => ({
  id: '',
  side: 'later',
  label: '',
  replacement: null,
  work: 'mended',
  letGo: null,
  replaceMonth: null,
  contracts: [holding.firstDay],
  changeOver: null,
  valueAt: () => 0,
  owedAt: () => 0,
  vehicleAtEnd: '',
  purchase: null,
});

/**
 * What the rule of the repair limit needs of the present vehicle at one set of inputs, besides its components: keeping it
 * from the day the needed work is done as `treatments` says, and replacing it by one replacement, at every month to H.
 */
export const keepCourse = (
  treatments: Treatments,
  replacement: number,
  ends: Float64Array,
  ctx: Context,
): Course => {
  const { horizon } = ctx;
  const rate = effective(ctx.inputs.household.moneyEarns);
  const discount = Float64Array.from({ length: horizon + 1 }, (_, m) => discountFactor(rate, m));
  const holding = holdingOf(treatments, ctx);
  const firstDay = onlyFirstDay(holding);
  const firstDayCost = presentCostOf(firstDay, ctx).counted;
  const stopping = (month: number, how: WalksAs): number => {
    const closed =
      presentClosed(month, ctx) ?? (month < horizon && replacementClosed(replacement, month, ctx));
    if (month > 0 && closed) return Number.POSITIVE_INFINITY;
    const plan: Plan =
      month < horizon
        ? {
            ...firstDay,
            ...replacedAt(
              replacement,
              month,
              treatments,
              firstDay.contracts,
              soldWalking(month, how, treatments, ctx),
              ctx,
            ),
          }
        : { ...walkPlan(replacement, month, how, treatments, ctx), contracts: firstDay.contracts };
    return (presentCostOf(plan, ctx).counted - firstDayCost) / (discount[month] as number);
  };
  const months = Array.from({ length: horizon + 1 }, (_, m) => m);
  return {
    until: horizon,
    weights: weightsOf(discount, ends),
    running: holding.running,
    ifKeptOn: holding.ifKeptOn,
    ends,
    stopping: Float64Array.from(months, (m) => stopping(m, 'running')),
    stoppingBroken: Float64Array.from(months, (m) => stopping(m, 'broken')),
  };
};
