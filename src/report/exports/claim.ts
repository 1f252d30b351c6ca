import type { Decision } from '../../engine/answer/decision.ts';
import { type Cents, centsText } from '../../engine/quantity/money.ts';
import { significant } from './drawn.ts';

const text = (cents: Cents | null): string | null => (cents === null ? null : centsText(cents));

/** Every amount of a record as a decimal string. */
const texts = <K extends string>(of: Readonly<Record<K, Cents>>): Record<K, string> =>
  Object.fromEntries(Object.entries<Cents>(of).map(([key, cents]) => [key, centsText(cents)])) as Record<
    K,
    string
  >;

/** A claim as plain data: amounts are decimal strings; lines of a statement are signed from the payment's side. */
export const claimJson = ({ claim }: Decision) =>
  claim && {
    payer: claim.payer,
    place: claim.place,
    value: text(claim.value),
    comparables: claim.comparables && {
      ...claim.comparables,
      lines: claim.comparables.lines.map(({ what, distance, ...amounts }) => ({
        what,
        distance,
        ...texts(amounts),
      })),
    },
    estimate: {
      lines: claim.estimate.lines.map((line) => ({ ...line, amount: text(line.amount) })),
      tax: text(claim.estimate.totals.tax),
      betterment: text(claim.estimate.totals.betterment),
      total: text(claim.estimate.totals.total),
    },
    threshold: {
      ...claim.threshold.result,
      tested: text(claim.threshold.tested),
      salvage: text(claim.threshold.salvage),
      from: text(claim.threshold.from),
    },
    courses: claim.courses.map((course) => ({
      ...course,
      inHand: text(course.inHand),
      cost: texts(course.cost),
      atMost: text(course.atMost),
      statement: course.statement && {
        lines: course.statement.lines.map(({ item, amount }) => ({ item, amount: text(amount) })),
        payment: text(course.statement.payment),
      },
      split: course.split && texts(course.split),
    })),
    closed: claim.closed,
    tips: significant(claim.tips),
  };
