/**
 * The engine as a library: the ladder from its lowest rung up. Everything is a pure function over plain data; costs are
 * positive and receipts negative; month 0 is the day of the decision. Each function says its units and its edge cases.
 */

// 1 quantity: units are types.
export { type Cents, centsText, inUnits, toCents } from './engine/quantity/money.ts';
export {
  discountFactor,
  effective,
  effectivePerYear,
  nominal,
  nominalPerYear,
} from './engine/quantity/rate.ts';
export { perPeriod, type Rate, realRate } from './engine/quantity/rate.ts';

// 2 scenario: a file's text in, complete inputs or problems out.
export type { Inputs } from './engine/scenario/inputs.ts';
export { parseScenario } from './engine/scenario/parse.ts';
export { startingScenario } from './engine/scenario/starting.ts';
export { type Problem, problemText } from './engine/scenario/problems.ts';
export type { Facts, Quantity, Scenario } from './engine/scenario/scenario.ts';

// 3 cashflow: contracts turn themselves into flows.
export {
  levelPayment as loanPayment,
  loanSchedule,
  payoffAt,
} from './engine/cashflow/contracts/amortisation.ts';
export type { LoanRow, LoanSchedule, LoanTerms } from './engine/cashflow/contracts/amortisation.ts';
export { type LeaseTerms, leasePayment } from './engine/cashflow/contracts/lease.ts';

// 4 valuation: what flows are worth.
export { type Flow, presentCost, presentCostOfSeries } from './engine/valuation/present.ts';
export { equivalentCost, equivalentMonthlyCost } from './engine/valuation/present.ts';
export { futureValue, paymentFor, periodsFor, presentValue, rateFor } from './engine/valuation/annuity.ts';
export { modifiedRateOfReturn, rateOfReturn } from './engine/valuation/rateOfReturn.ts';
export { type Apr, annualPercentageRate, aprOfDates, aprOfLoan } from './engine/valuation/apr.ts';
export { averageCostOfOwning, economicLife, marginalCost } from './engine/valuation/economicLife.ts';
export { replacementProgramme } from './engine/valuation/replacement.ts';
export { type Crossings, crossings as breakEven } from './engine/valuation/crossings.ts';
export { type IntegerFlips, integerFlips as breakEvenOfWhole } from './engine/valuation/integerFlips.ts';
export { breakEvenPeriod, paybackTime } from './engine/valuation/breakEvenPeriod.ts';

// 5 chance: what counted repairs say of the rate behind them.
export {
  chanceOfCount,
  chanceOfRateBelow,
  learn,
  type RateBelief,
  rateBelow,
} from './engine/chance/repairRate.ts';

// 7 decision: from inputs to the ways, from the ways to an answer.
export { EXPECTED, type Future } from './engine/decision/context.ts';
export { evaluate, type Setting } from './engine/decision/evaluate.ts';
export type { Evaluated } from './engine/decision/project.ts';
export { SCRAMBLES, simulateScramble } from './engine/decision/chance/draws.ts';
export { decide, decideAtAverage, withChances } from './engine/decision/decide.ts';
export type { Decision, OptionResult } from './engine/decision/decision.ts';
