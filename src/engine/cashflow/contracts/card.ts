import { FIXED } from '../levels.ts';
import type { Contract, Line } from '../posting.ts';
import { annuityFactor } from './amortisation.ts';

/** What goes on the card is paid back in level payments over two years: a convention of ours, said in the report. */
const CARD_MONTHS = 24;

/** What is still owed `month` months on of 1 put on the card; nothing after two years. */
export const cardOwed = (cardRate: number, month: number): number =>
  month >= CARD_MONTHS
    ? 0
    : annuityFactor(cardRate / 12, CARD_MONTHS - month) / annuityFactor(cardRate / 12, CARD_MONTHS);

/**
 * Cash that savings do not cover, put on a card at the end of month `start`: lent on the day, paid back with interest.
 *
 * @param short what is missing with own hands, `shortAtShop` with a shop doing the work; both at least 0
 * @param cardRate nominal a year, compounded monthly
 */
export const cardCredit =
  (short: number, shortAtShop: number, cardRate: number, start: number, horizon: number): Contract =>
  (sink) => {
    if (short === 0 && shortAtShop === 0) return;
    const line: Line = {
      category: 'loan',
      what: 'on the card, for what savings do not cover',
      path: 'household.card_rate',
      reason: `paid back in ${CARD_MONTHS} level payments`,
    };
    const post = (month: number, share: number): void =>
      sink.post(line, month, short * share, short * share, shortAtShop * share);
    const payment = 1 / annuityFactor(cardRate / 12, CARD_MONTHS);
    const last = Math.min(CARD_MONTHS, horizon - start);
    post(start, -1);
    const [paid, paidAtShop] = [short * payment, shortAtShop * payment];
    sink.series(line, start + 1, start + last, FIXED, paid, paid, paidAtShop);
    if (last < CARD_MONTHS) post(horizon, cardOwed(cardRate, last));
  };

const bridgeLine = (what: string, reason: string): Line => ({
  category: 'loan',
  what,
  path: 'household.card_rate',
  reason,
  role: 'bridge',
});
const LENT = bridgeLine('on the card, until the sale pays', 'what the sale will cover is lent till then');
const REPAID = bridgeLine('card paid back from the sale', 'once the buyer pays, with interest');

/** What 1 put on the card grows to in so many months in which nothing is paid back. */
export const cardGrowth = (cardRate: number, months: number): number => (1 + cardRate / 12) ** months;

/**
 * Cash that is short until a sale pays, put on a card at the end of month `start` and paid back with interest at the end
 * of month `paid`; where the look ends before that, it is still owed then.
 *
 * @param amount with own hands, `atShop` with a shop doing the work; both at least 0
 * @param cardRate nominal a year, compounded monthly
 */
export const cardUntilPaid =
  (
    amount: number,
    atShop: number,
    cardRate: number,
    start: number,
    paid: number,
    horizon: number,
  ): Contract =>
  (sink) => {
    if (amount === 0 && atShop === 0) return;
    const until = Math.min(paid, horizon);
    const growth = cardGrowth(cardRate, until - start);
    sink.post(LENT, start, -amount, -amount, -atShop);
    sink.post(REPAID, until, amount * growth, amount * growth, atShop * growth);
  };
