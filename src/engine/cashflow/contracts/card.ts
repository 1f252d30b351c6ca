import type { Contract, Line } from '../posting.ts';
import { annuityFactor } from './amortisation.ts';

/** What goes on the card is paid back in level payments over two years: a convention of ours, said in the report. */
export const CARD_MONTHS = 24;

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
    const payment = 1 / annuityFactor(cardRate / 12, CARD_MONTHS);
    sink.post(line, 0, -short, -short, -shortAtShop);
    const last = Math.min(CARD_MONTHS, horizon);
    for (let m = 1; m <= last; m++)
      sink.post(line, m, short * payment, short * payment, shortAtShop * payment);
    const left = CARD_MONTHS - last;
    if (left === 0) return;
    const owed = payment * annuityFactor(cardRate / 12, left);
    sink.post(line, horizon, short * owed, short * owed, shortAtShop * owed);
  };
