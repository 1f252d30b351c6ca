import type { Chances, Estimate, VarianceShare } from '../../engine/analysis/chances.ts';
import { type ShareRow, sharesChart } from '../charts/shares.ts';
import { inWords, percent, roundTo, stepKnown } from '../format.ts';
import type { Html } from '../markup/html.ts';
import { table } from '../tables/table.ts';
import type { Page } from './page.ts';

/** So many are shown by name; the rest goes together. */
const SHOWN = 8;
const UNSEEN = 'too little to measure';

const seen = ({ value, error }: Estimate): boolean => value > 2 * error;

/** A share of the doubt to the digit its error supports. */
const shareWords = (e: Estimate): string => {
  if (!seen(e)) return UNSEEN;
  const step = Math.max(0.01, stepKnown(e.error));
  const share = roundTo(e.value, step);
  return share === 0 ? `under ${percent(step, 0)}` : percent(share, 0);
};

/** "34%, 40% with others"; one of the two where the other says nothing more. */
const bothWords = ({ first, total }: VarianceShare): string => {
  const [alone, together] = [shareWords(first), shareWords(total)];
  if (!seen(total) || total.value <= first.value || alone === together) return alone;
  return seen(first) ? `${alone}, ${together} with others` : `${together} with others`;
};

const shareRow = (s: VarianceShare): ShareRow => ({
  label: s.what,
  alone: s.first.value,
  together: s.total.value,
  words: bothWords(s),
});

/** The unknowns not shown by name, as one: what they do by themselves can be added, the rest cannot. */
const lumped = (rest: readonly VarianceShare[]): readonly ShareRow[] => {
  if (rest.length === 0) return [];
  const together: Estimate = {
    value: rest.reduce((s, r) => s + Math.max(0, r.first.value), 0),
    error: Math.sqrt(rest.reduce((s, r) => s + r.first.error ** 2, 0)),
  };
  const label =
    rest.length === 1 ? 'the one other, by itself' : `the ${inWords(rest.length)} others, by themselves`;
  return [{ label, alone: together.value, together: null, words: shareWords(together) }];
};

/** What carries the doubt: the share of the spread each unknown makes; null where nothing does. */
export const doubtFigure = ({ figure }: Page, c: Chances): Html | null => {
  const all = c.shares.toSorted((a, b) => b.total.value - a.total.value || (a.what < b.what ? -1 : 1));
  const [most] = all;
  if (!most || !seen(most.total)) return null;
  const named = all.filter((s) => seen(s.total)).slice(0, SHOWN);
  const rows = [...named.map(shareRow), ...lumped(all.slice(named.length))];
  return figure({
    id: 'doubt',
    finding: `What carries the doubt: ${most.what}, about ${shareWords(seen(most.first) ? most.first : most.total)} of it.`,
    shows:
      'How much of the spread each unknown makes. Filled: by itself. Outlined: with all it does together with others, so these may come to more than the whole.',
    told: rows.map((r) => `${r.label}: ${r.words}`).join('; '),
    chart: (look) => sharesChart(rows, look),
    table: table({
      caption: 'What carries the doubt',
      head: ['Unknown', 'Kind', 'By itself', 'With others'],
      words: 2,
      rows: all.map((r) => [
        r.what,
        r.kind === 'luck' ? 'luck' : 'a number nobody knows',
        shareWords(r.first),
        shareWords(r.total),
      ]),
    }),
  });
};
