import type { Decision } from '../../engine/answer/decision.ts';
import { inWords } from '../format.ts';

/** "about 73", "more than 99", "fewer than one": of a hundred, as far as such a table reaches. */
export const ofHundred = (chance: number): string => {
  const whole = Math.round(100 * chance);
  if (whole >= 100) return 'more than 99';
  return whole < 1 ? 'fewer than one' : `about ${whole}`;
};

const KINDS = { car: 'sedans, wagons and hatchbacks', suv: 'utilities and vans', truck: 'pickups' } as const;

/** What counts as its kind is read from its name, unless the file says. */
const kindWords = ({ kind }: NonNullable<Decision['survival']>): string => KINDS[kind];

const years = (n: number): string => (n === 1 ? 'one year' : `${inWords(n)} years`);

/** "Of sedans, wagons and hatchbacks 17 years old ...": what the table says, what we'd do, and what own hands do for it. */
export const survivalSentences = (d: Decision): string[] => {
  const factor = d.quantities.find(({ key }) => key === 'household.bigBills');
  if (factor?.value === 0)
    return ['Bills so big that they end a vehicle are left out, as the file says: here none ever comes.'];
  const last = d.survival?.years.at(-1);
  if (!d.survival || !last) return [];
  const { age } = d.survival;
  const own = Math.round(100 * last.ours) - Math.round(100 * last.atShop);
  return [
    `Of ${kindWords(d.survival)} ${age === 0 ? 'of this year' : `${age} years old`} ${ofHundred(last.ofItsKind)} in 100 are still on the road ${years(last.year)} on, collision and theft aside: the rest were given up over a bill.`,
    `By what we would pay to keep it, and how far we drive, ours is: ${ofHundred(last.ours)} in 100${own >= 1 ? `; ${ofHundred(last.atShop)} with a shop doing all the work` : ''}.`,
  ];
};
