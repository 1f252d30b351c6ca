import { FIXED } from '../../cashflow/levels.ts';
import { linesOf } from '../../cashflow/lines.ts';
import type { Contract, Line, Sink } from '../../cashflow/posting.ts';
import type { OwnDamage } from '../../scenario/inputs/claim.ts';
import type { RunningCosts } from '../../scenario/inputs/inputs.ts';
import { coverCost, lossesOf } from '../../valuation/cover.ts';
import type { Context } from './context.ts';
import type { Span } from './span.ts';

/** Both kinds of loss that cover of the vehicle itself answers for. */
const KINDS = [
  { kind: 'collision', what: 'own part of a loss, collision', at: 'collision.deductible' },
  { kind: 'comprehensive', what: 'own part of a loss, comprehensive', at: 'comprehensive.deductible' },
] as const;

const INSURED = 'on average: its chance, times what the deductible leaves to pay';
const GONE = 'on average: its chance, times all that a loss takes, for the cover has ended';

type Bearing = Pick<RunningCosts, 'changes' | 'floor'>;

/** The month from which there is no such cover any more; Infinity: it goes on. */
const endOf = (kind: OwnDamage, { changes }: Bearing): number =>
  changes.find(({ coverEnds }) => coverEnds.includes(kind))?.from ?? Infinity;

/** What each year from a month on costs a month, as series between the ends of two months. */
const postYears = (
  sink: Sink,
  line: Line,
  aMonthIn: (year: number) => number,
  from: number,
  [start, end]: readonly [start: number, end: number],
): void => {
  if (start >= end) return;
  let since = start;
  const first = Math.floor((start - from) / 12);
  let aMonth = aMonthIn(first);
  // Years that cost alike, as nearly all do in which it is worth more than the deductible, make one series.
  for (let year = first + 1; from + 12 * year < end; year += 1) {
    const next = aMonthIn(year);
    if (next === aMonth) continue;
    sink.series(line, since + 1, from + 12 * year, FIXED, aMonth, aMonth, aMonth);
    since = from + 12 * year;
    aMonth = next;
  }
  sink.series(line, since + 1, end, FIXED, aMonth, aMonth, aMonth);
};

/**
 * What a loss leaves its owner to pay, on average, every month it is driven: its chance times the part up to the
 * deductible, or, once the cover has ended, times the whole loss less what the wreck still brings. The chances are the
 * household's, so a replacement carries them too, with the deductible of today; its premium is in its own quote. Without
 * it, cover would look dearer than going without, and dropping it free. A deductible is fixed by the contract: it grows
 * with no prices.
 *
 * @param vehicle whose cover may end
 * @param worthAt what it would bring in a month, at least 0: no loss is more than that
 */
export const lossesBorne = (
  vehicle: Bearing,
  worthAt: (month: number) => number,
  span: Span,
  ctx: Context,
): Contract[] => {
  const { ownDamage } = ctx.inputs.vehicle;
  const from = span.start + span.idle;
  // By year; one and the same for both kinds of loss.
  const worths: number[] = [];
  const worthIn = (year: number): number => {
    worths[year] ??= worthAt(from + 12 * year);
    return worths[year] as number;
  };
  const contracts: Contract[] = [];
  const lines = linesOf(span.name, 'vehicle.cover');
  for (const { kind, what, at } of KINDS) {
    const part = ownDamage[kind];
    if (!part || part.chanceAYear === 0) continue;
    const losses = lossesOf(part.totalShare, part.meanLoss);
    const cover = { premium: 0, deductible: part.deductible };
    const claims = part.chanceAYear;
    const insured = (year: number): number => coverCost(cover, { claims, losses, value: worthIn(year) }) / 12;
    const bare = (year: number): number =>
      coverCost(null, { claims, losses, value: Math.max(0, worthIn(year) - vehicle.floor) }) / 12;
    const ends = Math.max(from, Math.min(span.end, endOf(kind, vehicle) - 1));
    contracts.push((sink) => {
      postYears(sink, lines('insurance', what, at, INSURED), insured, from, [from, ends]);
      if (ends < span.end)
        postYears(sink, lines('insurance', what, kind, GONE), bare, from, [ends, span.end]);
    });
  }
  return contracts;
};
