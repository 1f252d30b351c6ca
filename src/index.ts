/**
 * The engine as a library: the ladder from its lowest rung up. Everything is a pure function over plain data; costs are
 * positive and receipts negative; month 0 is the day of the decision. Each function says its units and its edge cases.
 */

// 3 cashflow: contracts turn themselves into flows.
export {
  type LoanSchedule,
  type LoanTerms,
  levelPayment as loanPayment,
  loanSchedule,
  payoffAt,
} from './engine/cashflow/contracts/amortisation.ts';
export { type LeaseTerms, leasePayment } from './engine/cashflow/contracts/lease.ts';
// 7 decision: inputs to options to an answer.
export { EXPECTED, type Future } from './engine/decision/context.ts';
export { decide } from './engine/decision/decide.ts';
export type { Decision, OptionResult } from './engine/decision/decision.ts';
export { type Evaluated, evaluate, type Setting } from './engine/decision/evaluate.ts';
// 1 quantity: units are types.
export { type Cents, centsText, inUnits, toCents } from './engine/quantity/money.ts';
export {
  discountFactor,
  effective,
  effectivePerYear,
  nominal,
  nominalPerYear,
  perPeriod,
  type Rate,
  realRate,
} from './engine/quantity/rate.ts';
// 2 scenario: a file's text in, complete inputs or problems out.
export type { Inputs } from './engine/scenario/inputs.ts';
export { parseScenario, startingScenario } from './engine/scenario/parse.ts';
export { type Problem, problemText } from './engine/scenario/problems.ts';
export type { Facts, Quantity, Scenario } from './engine/scenario/scenario.ts';
export { futureValue, paymentFor, periodsFor, presentValue, rateFor } from './engine/valuation/annuity.ts';
export { type Apr, annualPercentageRate, aprOfDates, aprOfLoan } from './engine/valuation/apr.ts';
export { breakEvenPeriod, paybackTime } from './engine/valuation/breakEvenPeriod.ts';
export { type Crossings, crossings as breakEven } from './engine/valuation/crossings.ts';
export { averageCostOfOwning, economicLife, marginalCost } from './engine/valuation/economicLife.ts';
export { type IntegerFlips, integerFlips } from './engine/valuation/integerFlips.ts';
// 4 valuation: what flows are worth.
export {
  equivalentCost,
  equivalentMonthlyCost,
  type Flow,
  presentCost,
  presentCostOfSeries,
} from './engine/valuation/present.ts';
export { modifiedRateOfReturn, rateOfReturn } from './engine/valuation/rateOfReturn.ts';
export { replacementProgramme } from './engine/valuation/replacement.ts';
