import type {
  BreakEven,
  ByReading,
  Decision,
  LeaseView,
  LoanView,
  OptionResult,
  Swing,
} from '../../engine/answer/decision.ts';
import { type Cents, centsText } from '../../engine/quantity/money.ts';
import type { Quantity } from '../../engine/scenario/inputs/scenario.ts';
import { figureOf } from '../../engine/scenario/reading/figure.ts';
import { isPrivate, withoutPrivate } from '../privacy.ts';
import { savingsShown } from '../words/facts.ts';
import { claimJson } from './claim.ts';
import { drawnJson, significant } from './drawn.ts';

/** Amounts are decimal strings in the household's currency; costs positive, receipts negative. */
const amounts = (of: ByReading<Cents>): Record<'counted' | 'cash' | 'shop', string> => ({
  counted: centsText(of.counted),
  cash: centsText(of.cash),
  shop: centsText(of.shop),
});

const amount = (units: number): string => centsText(Math.round(units * 100) as Cents);

const quantity = (q: Quantity) => ({
  key: q.key,
  path: q.path,
  label: q.label,
  unit: q.unit,
  value: q.value,
  ...(q.range === null
    ? {}
    : { range: { low: q.range.low, likely: q.range.likely, high: q.range.high }, varies: q.varies }),
  mark: q.mark,
  isDefault: q.isDefault,
  source: q.source,
  note: q.note,
});

const option = (o: OptionResult, savings: boolean) => ({
  id: o.id,
  side: o.side,
  label: o.label,
  work: o.work,
  letGo: o.letGo,
  replacement: o.replacement,
  replaceMonth: o.replaceMonth,
  netPresentCost: centsText(o.netPresentCost.counted),
  netPresentCostCash: centsText(o.netPresentCost.cash),
  netPresentCostShop: centsText(o.netPresentCost.shop),
  equivalentMonthlyCost: centsText(o.equivalentMonthlyCost.counted),
  equivalentMonthlyCostCash: centsText(o.equivalentMonthlyCost.cash),
  equivalentMonthlyCostShop: centsText(o.equivalentMonthlyCost.shop),
  costPerDistance: o.costPerDistance,
  cashOnTheDay: centsText(o.cashOnTheDay),
  ...(savings ? { savingsAfter: centsText(o.savingsAfter), savingsLowest: centsText(o.savingsLowest) } : {}),
  hours: o.hours,
  valueAtEnd: centsText(o.valueAtEnd),
  owedAtEnd: centsText(o.owedAtEnd),
});

const breakEven = (b: BreakEven) => ({
  key: b.quantity.key,
  path: b.quantity.path,
  label: b.quantity.label,
  unit: b.quantity.unit,
  today: b.quantity.value,
  status: b.status,
  roots: b.roots.map((root) => ({ ...root, typed: figureOf(b.quantity, root.at) })),
  slope: b.slope,
});

const swing = (s: Swing) => ({
  key: s.quantity.key,
  low: { value: s.low.value, difference: amount(s.low.difference) },
  high: { value: s.high.value, difference: amount(s.high.difference) },
});

const payment = (p: LoanView) => ({
  replacement: p.replacement,
  name: p.name,
  amountFinanced: centsText(p.amountFinanced),
  payment: centsText(p.payment),
  months: p.months,
  noteRate: p.noteRate,
  apr: p.apr,
  totalOfPayments: centsText(p.totalOfPayments),
  interest: centsText(p.interest),
  monthsUnderWater: p.monthsUnderWater,
  owedAtHorizon: centsText(p.owedAtHorizon),
  longer: {
    months: p.longer.months,
    payment: centsText(p.longer.payment),
    totalOfPayments: centsText(p.longer.totalOfPayments),
  },
});

const lease = (l: LeaseView) => ({
  ...l,
  payment: centsText(l.payment),
  dueAtSigning: centsText(l.dueAtSigning),
  fees: centsText(l.fees),
  overDistance: centsText(l.overDistance),
  total: centsText(l.total),
});

/**
 * The whole decision as plain data, in the field's terms. `difference` is the cheapest replacement's net present cost
 * less the cheapest keep's (positive: keeping is cheaper), null where a side has no open way; `crossing` is the month
 * from which one side stays cheaper, null when it is so from the start or never; `breakEvens` give the input's own
 * unit. Shares and rates are fractions, times whole months. `chances` and `walkAway` are plain numbers in currency units, each
 * drawn figure with its standard error; null where no futures were drawn. Nothing marked private is in it.
 */
export const decisionJson = (decision: Decision) => {
  const d = withoutPrivate(decision);
  const savings = savingsShown(d);
  return {
    /** Raised where a field changes its meaning or goes. */
    format: 2,
    stillworth: d.version,
    title: d.facts.title,
    date: d.facts.date,
    currency: d.facts.currency,
    distanceUnit: d.facts.distanceUnit,
    horizon: d.horizon,
    verdict: {
      kind: d.verdict.kind,
      cheaper: d.verdict.cheaper,
      readingsDisagree: d.verdict.readingsDisagree,
      settledBy: d.verdict.settledBy.map((b) => b.quantity.key),
      deciding: d.verdict.deciding,
    },
    answer: d.answer?.id ?? null,
    bestKeep: d.bestKeep?.id ?? null,
    bestReplace: d.bestReplace?.id ?? null,
    difference: d.difference && centsText(d.difference.counted),
    differences: d.difference && amounts(d.difference),
    crossing: d.crossing,
    options: d.options.map((o) => option(o, savings)),
    closed: d.closed,
    breakEvens: d.breakEvens.map(breakEven),
    swings: d.swings.map(swing),
    ownHourTips: d.ownHourTips,
    // The difference again, under what such a tool is most often wrong about.
    doubleHours: d.doubleHours === null ? null : centsText(d.doubleHours),
    ifNotCured: d.ifNotCured === null ? null : centsText(d.ifNotCured),
    shopFrom: d.shopFrom.map((from) => ({ month: from.month, difference: centsText(from.difference) })),
    atLoanRate: d.atLoanRate && {
      rate: d.atLoanRate.rate,
      difference: centsText(d.atLoanRate.difference),
    },
    breakEvenLine: d.breakEvenLine && {
      x: d.breakEvenLine.x.key,
      y: d.breakEvenLine.y.key,
      points: d.breakEvenLine.points,
      keepIs: d.breakEvenLine.keepIs,
    },
    payments: d.payments.map(payment),
    fits: d.fits,
    lasting: d.lasting,
    survival: d.survival,
    leases: d.leases.map(lease),
    replaceLater: d.replaceLater.map((r) => ({
      replacement: r.replacement,
      name: r.name,
      best: { month: r.best.month, netPresentCost: amount(r.best.netPresentCost) },
      curve: r.curve.map((p) => ({ month: p.month, netPresentCost: amount(p.netPresentCost) })),
    })),
    economicLife: {
      name: d.economicLife.name,
      months: d.economicLife.best.months,
      averageCost: amount(d.economicLife.best.averageCost),
    },
    sunk: { spent: centsText(d.sunk.spent), returns: centsText(d.sunk.returns) },
    notices: d.notices.map((n) => ({ ...n, cost: n.cost === null ? null : centsText(n.cost) })),
    cautions: d.cautions,
    work: d.work,
    notMoney: d.facts.notMoney,
    quantities: d.quantities.map(quantity),
    chances: d.chances && drawnJson(d.chances, !isPrivate(d.facts, 'chance.set_aside_each_month')),
    walkAway: d.walkAway && significant(d.walkAway),
    claim: claimJson(d),
    cover: d.cover && significant(d.cover),
  };
};
