import { remember } from '../../quantity/remember.ts';
import type { Offer } from './presentVehicle.ts';

/** A name as part of an id: lower case, words joined by hyphens. */
export const slug = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '') || 'unnamed';

/** Ids of the replacements, told apart by a number where two have the same name. */
export const replacementIds = remember(
  (names: readonly string[]): readonly string[] =>
    names.map((name, i) => {
      const id = slug(name);
      return names.some((other, j) => j !== i && slug(other) === id) ? `${id}-${i + 1}` : id;
    }),
  ([a], [b]) => a === b,
  4,
);

const LET_GO_WORDS: Record<Offer['letGo'], string> = {
  private: 'sell it privately',
  'as it stands': 'sell it as it stands',
  'trade-in': 'trade it in',
  scrap: 'scrap it',
};

/** How the old one goes, in words. */
export const letGoWords = (offer: Offer): string =>
  offer.mended ? `mend it, then ${LET_GO_WORDS[offer.letGo]}` : LET_GO_WORDS[offer.letGo];

/** The words with a capital first letter. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** So many months, in words. */
export const months = (count: number): string => (count === 1 ? '1 month' : `${count} months`);
