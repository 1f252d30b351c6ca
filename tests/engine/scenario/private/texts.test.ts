import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  isOwnKey,
  isWords,
  leavesOf,
  namesAComponent,
} from '../../../../src/engine/scenario/private/texts.ts';

interface Shape {
  readonly type?: string | readonly string[];
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly additionalProperties?: Shape | boolean;
}

const schema = JSON.parse(
  readFileSync(new URL('../../../../scenarios/scenario.schema.json', import.meta.url), 'utf8'),
) as Shape;

/** Every place of a file where a text of any kind may stand, and nothing but a text. */
const textPlaces = (shape: Shape, path: readonly string[]): string[] => [
  ...(Array.isArray(shape.type) && shape.type.join() === 'string,number' ? [path.join('.')] : []),
  ...Object.entries(shape.properties ?? {}).flatMap(([key, held]) => textPlaces(held, [...path, key])),
  ...(shape.items ? textPlaces(shape.items, [...path, '0']) : []),
  ...(shape.anyOf ?? []).flatMap((one) => textPlaces(one, path)),
];

/** Texts that are a code, a date, a number with its unit or a place of the file. */
const NO_WORDS =
  /^(currency|private\.0|two_way\.0|go_together\.0\.[ab]|claim\.place)$|\.(like|must_pass_inspection_by|from)$/;

describe('where words stand', () => {
  it('is known of every text that the schema has', () => {
    const places = [...new Set(textPlaces(schema, []))].filter((place) => !NO_WORDS.test(place));
    expect(places.length).toBeGreaterThan(25);
    for (const place of places) {
      const path = place.split('.');
      expect(isWords(path) || namesAComponent(path), place).toBe(true);
    }
  });

  it('is beside every number', () => {
    for (const path of ['vehicle.odometer.source', 'needs.seats.note', 'vehicle.value_falls.0.value.note'])
      expect(isWords(path.split('.')), path).toBe(true);
  });

  it('is no key, number or choice', () => {
    for (const path of [
      'needs.note',
      'vehicle.offers.what',
      'vehicle.odometer',
      'claim.place.tax',
      'note.0.x',
    ])
      expect(isWords(path.split('.')), path).toBe(false);
  });

  it('is a need that the household named, and what offers it', () => {
    expect(isOwnKey(['needs', 'roof_rack'])).toBe(true);
    expect(isOwnKey(['replacement', 1, 'offers', 'roof_rack'])).toBe(true);
    expect(isOwnKey(['needs', 'seats'])).toBe(false);
    expect(isOwnKey(['needs', 'roof_rack', 'at_least'])).toBe(false);
  });

  it('is found in lists and mappings', () => {
    expect(leavesOf({ a: [{ b: 'x' }, 2], c: true, d: null }).map(({ path }) => path.join('.'))).toEqual([
      'a.0.b',
      'a.1',
    ]);
  });
});
