import type { Contract, Line } from '../posting.ts';
import { annuityFactor } from './amortisation.ts';

/** What goes on the card is paid back in level payments over two years: a convention of ours, said in the report. */
const CARD_MONTHS = 24;

/** What is still owed at the end of `month` of 1 put on the card at month 0; nothing after two years. */
export const cardOwed = (cardRate: number, month: number): number =>
  month >= CARD_MONTHS
    ? 0
    : annuityFactor(cardRate / 12, CARD_MONTHS - month) / annuityFactor(cardRate / 12, CARD_MONTHS);

/**
 * Cash of the day that savings do not cover, put on a card: lent on the day, paid back with interest.
 *
 * @param short what is missing with own hands, `shortAtShop` with a shop doing the work; both at least 0
 * @param cardRate nominal a year, compounded monthly
 */
export const cardCredit =
  (short: number, shortAtShop: number, cardRate: number, horizon: number): Contract =>
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
    const last = Math.min(CARD_MONTHS, horizon);
    post(0, -1);
    for (let m = 1; m <= last; m++) post(m, payment);
    if (last < CARD_MONTHS) post(horizon, cardOwed(cardRate, horizon));
  };
