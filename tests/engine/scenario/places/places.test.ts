import { describe, expect, it } from 'vitest';
import type { Sourced } from '../../../../src/engine/scenario/facts/fact.ts';
import { GENERAL_RULES } from '../../../../src/engine/scenario/places/claimCustoms.ts';
import { type PlaceRule, toBeChecked } from '../../../../src/engine/scenario/places/placeRule.ts';
import { PLACES, PLACES_STATEMENT, placeByCode } from '../../../../src/engine/scenario/places/places.ts';

const factsOf = (place: PlaceRule): readonly Sourced[] =>
  [place.totalLoss, place.neverAgain, place.settlement, place.tradeIn, place.fault, ...place.notes].flatMap(
    (fact) => fact ?? [],
  );

const named = (code: string): PlaceRule => {
  const place = placeByCode(code);
  if (!place) throw new Error(`${code} is not listed`);
  return place;
};

describe('rules of places', () => {
  it('lists the fifty states and the capital, each once, by its code', () => {
    expect(PLACES).toHaveLength(51);
    expect(new Set(PLACES.map(({ code }) => code)).size).toBe(51);
    expect(new Set(PLACES.map(({ name }) => name)).size).toBe(51);
    expect(PLACES.every(({ code }) => /^US-[A-Z]{2}$/.test(code))).toBe(true);
    expect(named('us-va').name).toBe('Virginia');
    expect(placeByCode('VA')).toBeNull();
    expect(placeByCode('US-ZZ')).toBeNull();
  });

  it.each(PLACES.map((place) => [place.code, place] as const))(
    '%s is complete, dated and sourced',
    (_, place) => {
      expect(place.name.trim()).not.toBe('');
      expect(place.date).toBe('2026-11');
      for (const { source, evidence } of factsOf(place)) {
        expect(source.trim()).not.toBe('');
        // "stated" is for a scenario's own rule: nothing that ships may claim it.
        expect(['read', 'secondary', 'memory']).toContain(evidence);
      }
      const { test } = place.totalLoss;
      if (test.kind === 'percent') {
        expect(Number.isInteger(test.percent)).toBe(true);
        expect(test.percent).toBeGreaterThanOrEqual(50);
        expect(test.percent).toBeLessThanOrEqual(100);
        if (place.neverAgain) expect(place.neverAgain.percent).toBeGreaterThan(test.percent);
      }
      // An operator is known exactly where the law itself was read.
      if (test.kind !== 'insurer decides') {
        expect(test.operator === 'not known').toBe(place.totalLoss.evidence !== 'read');
      }
    },
  );

  it('marks what was not read in the law', () => {
    const read = PLACES.filter(({ totalLoss }) => !toBeChecked(totalLoss)).map(({ code }) => code.slice(3));
    expect(read).toEqual(['AL', 'FL', 'IA', 'MD', 'MI', 'NV', 'OK', 'TX', 'VA']);
    expect(PLACES.filter(({ totalLoss }) => totalLoss.evidence === 'memory')).toHaveLength(13);
    expect(toBeChecked({ source: 'our own file', evidence: 'stated' })).toBe(false);
  });

  it('knows how the tests of the table are spread', () => {
    const kinds = (kind: string) => PLACES.filter(({ totalLoss }) => totalLoss.test.kind === kind).length;
    expect([kinds('percent'), kinds('formula'), kinds('insurer decides')]).toEqual([28, 17, 6]);
  });

  it('says what is known of settlements, trade-ins, fault and scope, and only there', () => {
    const at = (known: (place: PlaceRule) => boolean) =>
      PLACES.filter(known).map(({ code }) => code.slice(3));
    expect(at(({ settlement }) => settlement !== null)).toEqual(['CA', 'NY']);
    expect(at(({ neverAgain }) => neverAgain !== null)).toEqual(['MI', 'VA']);
    expect(at(({ fault }) => fault !== null)).toEqual(['AL', 'DC', 'MD', 'NC', 'VA']);
    expect(at(({ totalLoss }) => totalLoss.leftOut.length > 0)).toEqual(['NV', 'TX', 'VA']);
    expect(at(({ tradeIn }) => tradeIn.credit.kind === 'none')).toEqual(['CA', 'DC', 'HI', 'VA']);
    expect(at(({ tradeIn }) => tradeIn.credit.kind === 'capped')).toEqual(['MI']);
    expect(at(({ tradeIn }) => tradeIn.credit.kind === 'full')).toEqual(['MD']);
    expect(at(({ tradeIn }) => tradeIn.credit.kind === 'no sales tax')).toEqual([
      'AK',
      'DE',
      'MT',
      'NH',
      'OR',
    ]);
    expect(at(({ notes }) => notes.length > 0)).toEqual(['CA', 'IA', 'NV', 'NY', 'TX']);
    expect(
      at(
        ({ totalLoss: { reach } }) =>
          reach.modelYears !== null || reach.valueAtLeast !== null || reach.uninsuredOnly,
      ),
    ).toEqual(['FL', 'IA', 'MI', 'OK']);
    expect(at(({ totalLoss: { note } }) => note !== null)).toEqual([
      'AL',
      'FL',
      'IA',
      'MD',
      'MI',
      'NV',
      'OK',
      'TX',
      'VA',
      'WA',
    ]);
  });

  it('says that local law and the policy decide', () => {
    expect(PLACES_STATEMENT).toContain('Local law and the policy decide');
    expect(PLACES_STATEMENT).toContain('Not legal or tax advice');
    expect(GENERAL_RULES.every(({ words, source }) => words !== '' && source !== '')).toBe(true);
  });
});
