/**
 * The engine as a library: the ladder from its lowest rung up. Everything is a pure function over plain data; costs are
 * positive and receipts negative; month 0 is the day of the decision. Each function says its units and its edge cases.
 * Arguments are read before anything is computed with them: a TypeError for what is of another kind (a string for a
 * number, an option that does not exist), a RangeError for what is impossible (NaN, part of a month, a misspelt choice).
 */

// 1 quantity: units are types.
export { type Cents, centsText, inUnits, toCents } from './library/money.ts';
export { discountFactor, effective, effectivePerYear, nominal, nominalPerYear } from './library/money.ts';
export { perPeriod, type Rate, realRate } from './library/money.ts';

// 2 scenario: a file's text in, complete inputs or problems out; room by room.
export type { Inputs } from './engine/scenario/inputs/inputs.ts';
export { parseScenario, problemText, startingScenario } from './library/scenario.ts';
export type { Problem } from './engine/scenario/text/problems.ts';
export type { Facts, Quantity, Scenario } from './engine/scenario/inputs/scenario.ts';

// 3 cashflow: contracts turn themselves into flows.
export { loanPayment, loanSchedule, payoffAt } from './library/loans.ts';
export type { LoanRow, LoanSchedule, LoanTerms } from './library/loans.ts';
export { type LeaseTerms, leasePayment } from './library/loans.ts';

// 4 valuation: what flows are worth.
export { type Flow, presentCost, presentCostOfSeries } from './library/worth.ts';
export { equivalentCost, equivalentMonthlyCost } from './library/worth.ts';
export { futureValue, paymentFor, periodsFor, presentValue, rateFor } from './library/worth.ts';
export { modifiedRateOfReturn, rateOfReturn } from './library/worth.ts';
export { type Apr, annualPercentageRate, aprOfDates, aprOfLoan } from './library/apr.ts';
export { averageCostOfOwning, economicLife, marginalCost, replacementProgramme } from './library/owning.ts';
export { breakEven, breakEvenOfWhole, type Crossings, type IntegerFlips } from './library/owning.ts';
export { breakEvenPeriod, paybackTime } from './library/owning.ts';

// 5 chance: what counted repairs say of the rate behind them.
export { chanceOfCount, chanceOfRateBelow, learn, type RateBelief, rateBelow } from './library/chance.ts';

// 8 evaluation to 11 answer: from inputs to options, from options to flows, from flows to a decision.
export { EXPECTED, type Future } from './engine/plans/vehicle/context.ts';
export type { Setting } from './engine/evaluation/evaluate.ts';
export type { Evaluated } from './engine/evaluation/project.ts';
export { SCRAMBLES } from './engine/scenario/inputs/scenario.ts';
export { decide, decideAtAverage, evaluate, firstAnswer } from './library/decision.ts';
export { answersInSteps, simulateScramble, withChances, withTips } from './library/decision.ts';
export type { Decision, OptionResult } from './engine/answer/decision.ts';
