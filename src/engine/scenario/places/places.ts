import type { PlaceRule, Sourced } from './placeRule.ts';
import { US_PLACES } from './usPlaces.ts';

/** Stands with every use of a place's rule. */
export const PLACES_STATEMENT =
  'Rules of places as set down in 2026-11, each with its source; rows not read in the law itself say "check this". ' +
  'Local law and the policy decide. Most tests settle what is written on the papers, not what an insurer must pay: ' +
  'an insurer may call a total loss below them. Not legal or tax advice.';

/** Rules and customs that are not one place's. */
export const GENERAL_RULES: readonly (Sourced & { readonly words: string })[] = [
  {
    words:
      'Where repair and salvage together come to more than the value, insurers usually call it a total loss; ' +
      'some add expected supplements, the rental and the lost market value to the repair.',
    source: 'usage; as a law in Va. Code 46.2-1600',
    evidence: 'read',
  },
  {
    words:
      'Instead of money the insurer may offer a comparable vehicle: same maker, same year or newer, like body, ' +
      'options and mileage, as good or better, to be seen nearby, with taxes and transfer fees paid and nothing ' +
      'to pay but your share.',
    source:
      'NAIC model regulation MDL-902 (Unfair Property/Casualty Claims Settlement Practices), section 8(A)',
    evidence: 'secondary',
  },
  {
    words:
      'A lender named in the policy is paid first, up to what it is owed; the owner has the rest, and still ' +
      'owes what is short.',
    source: 'loss-payable clause of auto policies, general insurance texts',
    evidence: 'secondary',
  },
];

/** Every place that ships with the program; any other is written out in the scenario. */
export const PLACES: readonly PlaceRule[] = US_PLACES;

const byCode = new Map(PLACES.map((place) => [place.code, place]));

/** The rule of a place by its code ("US-VA", in capitals or not); null where it is not listed: nothing is guessed. */
export const placeByCode = (code: string): PlaceRule | null => byCode.get(code.toUpperCase()) ?? null;
