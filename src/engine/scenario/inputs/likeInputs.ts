/** Another one like the present vehicle: what finding and buying it takes, besides what both are worth. */
import { guess, guessOf, orNone, usual } from './declared.ts';
import { money, share, spec } from './specs.ts';

export const LIKE_OURS = {
  /** As an advertisement has it, tax and fees apart; null: by what ours is worth running. */
  price: orNone('price', money(200_000, 'quoted', 'price of another like ours')),
  /** Asked above what ours would bring in a private sale. */
  above: usual(
    'asked_above',
    share(0, 1, 'guess', 'what a seller of another like ours asks above what ours is worth'),
    guessOf(0.1, 'of what ours is worth running', 'our guess: what a dealer asks above a private sale'),
  ),
  taxAndFees: usual(
    'tax_and_fees',
    share(0, 0.5, 'guess', 'tax and fees on another like ours'),
    guessOf(0.08, 'of its price', 'our guess: sales tax, title and plates; the place decides'),
  ),
  inspectionBefore: usual(
    'inspection_before',
    money(2_000, 'quoted', 'having another like ours looked over'),
    guess(150),
  ),
  catchUp: usual(
    'catch_up',
    money(20_000, 'guess', 'first-year catch-up of another like ours'),
    guess(600, 'our guess: tyres, brakes, fluids in the first year of a used one'),
  ),
  /** What its seller did not say: nobody knows its history as ours is known. */
  hiddenFault: usual('hidden_fault', money(50_000, 'guess', 'hidden fault of another like ours'), {
    ...guess(484.106, 'our guess: one in ten below 80, as many above 1,000'),
    range: { low: 80, likely: 300, high: 1000 },
  }),
  hours: usual(
    'hours_to_find',
    spec('hours', 0, 300, 'guess', 'own hours to find another like ours'),
    guess(12, 'our guess: looking, driving out, the papers'),
  ),
  /** Counted only where ours cannot be driven meanwhile. */
  days: usual(
    'days_to_find',
    spec('days', 0, 120, 'guess', 'days without a vehicle until another like ours is found'),
    guess(7, 'our guess: a week'),
  ),
};
