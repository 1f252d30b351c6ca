import type { Decision } from '../../engine/decision/decision.ts';
import { type Cents, centsText } from '../../engine/quantity/money.ts';
import { significant } from './drawn.ts';

const text = (cents: Cents | null): string | null => (cents === null ? null : centsText(cents));

/** A claim as plain data: amounts are decimal strings; lines of a statement are signed from the payment's side. */
export const claimJson = ({ claim, facts }: Decision) =>
  claim &&
  facts.claim && {
    pays: facts.claim.pays,
    place: facts.claim.place,
    value: text(claim.value),
    estimate: {
      lines: claim.estimate.lines.map((line) => ({
        ...line,
        amount: text(line.amount),
        betterment: text(line.betterment),
      })),
      tax: text(claim.estimate.tax),
      total: text(claim.estimate.total),
    },
    test: {
      ...claim.test.result,
      repair: text(claim.test.repair),
      value: text(claim.test.value),
      salvage: text(claim.test.salvage),
      totalLossFrom: text(claim.test.from),
    },
    courses: claim.courses.map((course) => ({
      id: course.id,
      label: course.label,
      side: course.side,
      inHand: text(course.inHand),
      hours: course.hours,
      netPresentCost: text(course.netPresentCost),
      cheapest: course.cheapest && significant(course.cheapest),
      statement: course.statement && {
        lines: course.statement.lines.map(({ item, amount }) => ({ item, amount: text(amount) })),
        payment: text(course.statement.payment),
      },
      firstDay: course.firstDay.map(({ item, amount }) => ({ item, amount: text(amount) })),
      risks: course.risks,
      forecloses: course.forecloses,
    })),
    closed: claim.closed,
    breakEvens: claim.breakEvens,
  };
