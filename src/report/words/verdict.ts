import type { Decision, OptionResult, Reading } from '../../engine/answer/decision.ts';
import { leastOf } from '../../engine/quantity/least.ts';
import { type Formats, span, stepBeside, stepOf } from '../format.ts';
import { keeping, READINGS, readingWords, replacing } from './optionWords.ts';
import { capital, listed, plainText, type Sentence, strong } from './sentence.ts';
import { cannotTell, findOutFirst } from './sure.ts';
import { tipAt } from './tipping.ts';

/** Two ways within this share of the cheaper one's cost are "about even" in prose. */
const ABOUT_EVEN = 0.01;

type Winner = 'keep' | 'replace' | 'even';

const units = (cents: number): number => cents / 100;

/** Who is cheaper in one reading, or that nobody is. */
const winner = (d: Decision, reading: Reading): Winner => {
  const { keep, replace } = d.bestIn[reading];
  if (!d.difference || !keep || !replace) return 'even';
  const less = Math.min(keep.netPresentCost[reading], replace.netPresentCost[reading]);
  if (Math.abs(d.difference[reading]) <= ABOUT_EVEN * Math.abs(less)) return 'even';
  return d.difference[reading] > 0 ? 'keep' : 'replace';
};

/**
 * The difference in one reading, in currency units. Own time counted it is the mean over the futures drawn, where that
 * stands off the ledger's: what counts is how it goes on average, not how it goes at average inputs.
 */
const apartIn = (d: Decision, reading: Reading): number => {
  const pair = d.chances?.pair;
  return reading === 'counted' && pair?.gapMatters ? pair.mean.value : units(d.difference?.[reading] ?? 0);
};

/** How much less the cheaper way costs, "$4,200"; the step is that of the difference itself. */
export const howMuchLess = (d: Decision, format: Formats, reading: Reading = 'counted'): string =>
  format.round(Math.abs(apartIn(d, reading)));

/** The same a month: the two equivalent monthly costs apart. */
export const lessAMonth = (d: Decision, format: Formats): string => {
  const apart =
    (d.bestReplace?.equivalentMonthlyCost.counted ?? 0) - (d.bestKeep?.equivalentMonthlyCost.counted ?? 0);
  const ledger = units(d.difference?.counted ?? 0);
  const share = ledger === 0 ? 1 : apartIn(d, 'counted') / ledger;
  return format.round(Math.abs(units(apart) * share));
};

/** What a way costs, to the digits its difference from the other lets one see. */
export const costOf = (
  d: Decision,
  option: OptionResult,
  format: Formats,
  reading: Reading = 'counted',
): string => {
  const total = units(option.netPresentCost[reading]);
  const step = d.difference ? stepBeside(total, units(d.difference[reading])) : stepOf(total) / 10;
  return format.round(total, Math.max(1, step));
};

/** What a way works out at a month, to the digits its difference from the other lets one see. */
export const monthlyOf = (d: Decision, option: OptionResult, format: Formats): string => {
  const cost = units(option.equivalentMonthlyCost.counted);
  const apart = units((d.difference?.counted ?? 0) / Math.max(1, d.horizon));
  return format.round(cost, stepBeside(cost, apart));
};

const hands = (d: Decision): string => {
  if ((d.bestKeep?.hours.total ?? 0) <= 0) return '';
  return d.facts.mechanic === '' ? ' with own hands doing the work' : ` if ${d.facts.mechanic} does the work`;
};

/** "; about $2,100 less at shop prices too": the all-shop reading, where it agrees or is a wash. */
const atShopPrices = (d: Decision, format: Formats): string => {
  if (!d.difference || (d.bestKeep?.hours.total ?? 0) <= 0) return '';
  const there = winner(d, 'shop');
  if (there === 'even') return '; about even at shop prices';
  if (there !== d.verdict.cheaper) return '';
  return `; about ${howMuchLess(d, format, 'shop')} less at shop prices`;
};

/** Said before the verdict where the three readings disagree; null where they agree. */
export const disagreement = (d: Decision): string | null => {
  if (!d.verdict.readingsDisagree || !d.difference) return null;
  const cheaperIn = (side: 'keep' | 'replace'): readonly string[] =>
    READINGS.filter((r) =>
      side === 'keep' ? (d.difference?.[r] ?? 0) > 0 : (d.difference?.[r] ?? 0) < 0,
    ).map((r) => readingWords[r]);
  const [keep, replace] = [cheaperIn('keep'), cheaperIn('replace')];
  if (keep.length === 0 || replace.length === 0) return null;
  const why =
    d.difference.shop > 0 === d.difference.counted > 0 ? 'Whether own time counts' : 'Who does the work';
  return `${why} decides this. With ${listed(keep)}, keeping costs less; with ${listed(replace)}, handing it on does.`;
};

const settling = (d: Decision, format: Formats): string => {
  const [first] = d.verdict.settledBy;
  const root = first?.roots[0];
  if (!first || !root) return '';
  return ` What would settle it: ${first.quantity.label}. It tips at ${tipAt(first.quantity, root.at, format)}; today's ${format.quantity(first.quantity)} is only an estimate.`;
};

const onlyWay = (d: Decision, option: OptionResult, what: string, format: Formats): Sentence => {
  const without = d.options.find(({ side }) => side === 'without');
  const like = d.options.find(({ side }) => side === 'like');
  const alone = like
    ? 'is the only way open besides getting another like it'
    : without
      ? 'is the only way open that has a vehicle in it'
      : 'is the only way open';
  return [
    `${capital(what)} ${alone}: it costs `,
    strong(`about ${costOf(d, option, format)}`),
    ` over ${span(d.horizon)}, in today's money (${format.round(units(option.equivalentMonthlyCost.counted))} a month).`,
    like ? ` Getting another ${d.facts.vehicleName} costs about ${costOf(d, like, format)}.` : '',
    without ? ` Doing without one costs about ${costOf(d, without, format)}.` : '',
  ];
};

/** What the answer is called where it is none of the two that were asked about. */
const otherwise = (d: Decision, { side, id }: OptionResult): string => {
  if (side === 'without') return 'Doing without a vehicle of your own';
  const payout = id.startsWith('claim/') ? 'taking the money and ' : '';
  return capital(`${payout}getting another ${d.facts.vehicleName}`);
};

/** The mean over the futures drawn, else the ledger's cost; currency units. */
const meanOf = (d: Decision, { id, netPresentCost }: OptionResult): number =>
  d.chances?.ways.find((way) => way.id === id)?.cost.mean.value ?? units(netPresentCost.counted);

/**
 * Said before the pair that was asked about, where another way costs less than either: another one like ours, or doing
 * without. Null where the answer is one of the pair.
 */
export const cheaperOtherwise = (d: Decision, format: Formats): string | null => {
  const { answer, bestKeep, bestReplace } = d;
  if (!answer || answer.side === 'keep' || answer.side === 'replace') return null;
  const pair = [bestKeep, bestReplace].filter((way) => way !== null);
  const next = leastOf(pair, (way) => meanOf(d, way));
  const what = otherwise(d, answer);
  const cost = meanOf(d, answer);
  const over = `over ${span(d.horizon)}`;
  const all =
    cost > 0 ? `about ${format.round(cost, stepOf(cost) / 10)} ${over}` : `nothing ${over}, all in all`;
  if (!next) return `${what} costs least of the ways that are open: ${all}.`;
  const apart = meanOf(d, next) - cost;
  // Ours and another like it have one name.
  const than = next.side === 'keep' ? 'keeping ours' : replacing(d);
  return apart <= ABOUT_EVEN * Math.abs(cost)
    ? `${what} costs about the same as ${than}: ${all}.`
    : `${what} costs least: ${all}, ${format.round(apart)} less than ${than}.`;
};

/** The answer in one sentence, or two. */
export const verdictSentence = (d: Decision, format: Formats): Sentence => {
  const { kind, cheaper } = d.verdict;
  if (kind === 'none')
    return [strong('No way is open'), ' as things stand. What closes each one is said below.'];
  if (kind === 'keepOnly' && d.bestKeep) return onlyWay(d, d.bestKeep, keeping(d), format);
  if (kind === 'replaceOnly' && d.bestReplace) return onlyWay(d, d.bestReplace, replacing(d), format);
  const over = ` over ${span(d.horizon)}`;
  if (cheaper === 'same')
    return [strong('The two cost the same'), `${over}.${settling(d, format)}${findOutFirst(d, format)}`];
  const what = cheaper === 'keep' ? keeping(d) : replacing(d);
  if (kind === 'close' || cannotTell(d)) {
    return [
      strong(kind === 'close' ? 'Too close to call.' : 'Cannot tell.'),
      ` On today's numbers ${what} costs about ${howMuchLess(d, format)} less${over} (${lessAMonth(d, format)} a month).${settling(d, format)}${findOutFirst(d, format)}`,
    ];
  }
  const closing = d.verdict.readingsDisagree ? '' : atShopPrices(d, format);
  return [
    `${capital(what)} costs `,
    strong(`about ${howMuchLess(d, format)} less`),
    `${over} (${lessAMonth(d, format)} a month)${hands(d)}${closing}.`,
  ];
};

/** The verdict without its weights: for the terminal and for tests. */
export const verdictText = (d: Decision, format: Formats): string => plainText(verdictSentence(d, format));
