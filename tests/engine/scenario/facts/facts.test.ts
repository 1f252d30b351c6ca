/**
 * What the compiler cannot see in a file of data: a word that its type does not have, a field that it does not know, a
 * source left empty. The compiler sees to it that no schema here lets pass what the file's type cannot hold.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { DangerFile } from '../../../../src/engine/scenario/danger/dangerWords.ts';
import type { WornParts } from '../../../../src/engine/scenario/inputs/partTable.ts';
import type { PublicTables } from '../../../../src/engine/scenario/inputs/tables.ts';
import type { CustomsFile } from '../../../../src/engine/scenario/places/claimCustoms.ts';
import type { ClaimFile, TotalLossFile } from '../../../../src/engine/scenario/places/usPlaces.ts';

const folder = new URL('../../../../src/engine/scenario/facts/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const contentOf = (name: string): unknown => JSON.parse(readFileSync(new URL(name, folder), 'utf8'));

const text = z.string().regex(/^\S(?:.*\S)?$/);
const date = z.string().regex(/^(?:19|20)\d\d(?:-(?:0[1-9]|1[0-2]))?$/);
const positive = z.number().positive();
/** What ships with the program is never what a household has stated. */
const sourced = { source: text, evidence: z.enum(['read', 'secondary', 'memory']) };
const head = { about: text, unit: text, date };

const fact = <Value extends z.ZodType>(value: Value) =>
  z.strictObject({ ...head, ...sourced, note: text.exactOptional(), value });
const byKind = <Value extends z.ZodType>(value: Value) =>
  z.strictObject({ car: value, suv: value, truck: value });
const byPowertrain = <Value extends z.ZodType>(value: Value) =>
  z.strictObject({ combustion: value, hybrid: value, plug_in: value, battery: value });

const publicTables = z.strictObject({
  upkeep: fact(byPowertrain(positive)),
  repairs: fact(
    z.strictObject({
      byKind: byKind(positive),
      byPowertrain: byPowertrain(positive),
      a: z.array(z.number().nonnegative()).nonempty(),
      aRisesAYearAfter: positive,
      b: positive,
      highestPriceNew: positive,
    }),
  ),
  decline: fact(positive.lt(1)),
  economy: fact(
    z.strictObject({
      years: z.array(positive.int()).nonempty(),
      car: z.array(positive).nonempty(),
      suv: z.array(positive).nonempty(),
      truck: z.array(positive).nonempty(),
    }),
  ),
  repairPrices2019: fact(positive),
  repairPrices2025July: fact(positive),
  milesAYear: fact(byKind(z.array(positive.int()).nonempty())),
  onTheRoad: fact(byKind(z.array(positive.max(1)).nonempty())),
}) satisfies z.ZodType<PublicTables>;

const wornParts = z.strictObject({
  ...head,
  lifeSource: text,
  priceSource: text,
  evidence: sourced.evidence,
  note: text,
  parts: z.array(
    z.strictObject({
      names: z.array(text).nonempty(),
      miles: byPowertrain(positive.nullable()),
      dollars: positive,
    }),
  ),
}) satisfies z.ZodType<WornParts>;

const code = z.string().regex(/^US-[A-Z]{2}$/);
const operator = z.enum(['>=', '>']);
const percent = z.number().int().min(1).max(100);
const usTotalLoss = z.strictObject({
  ...head,
  places: z.record(
    code,
    z.strictObject({
      name: text,
      test: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('percent'), percent, operator: operator.exactOptional() }),
        z.strictObject({ kind: z.literal('formula'), operator: operator.exactOptional() }),
        z.strictObject({ kind: z.literal('insurer decides') }),
      ]),
      leftOut: z
        .array(
          z.enum([
            'paint',
            'electronics',
            'towing',
            'storage',
            'rental',
            'lost market value',
            'hail damage',
            'sales tax',
          ]),
        )
        .nonempty()
        .exactOptional(),
      reach: z
        .strictObject({
          modelYears: z.union([positive.int(), z.literal('recent')]).exactOptional(),
          valueAtLeast: positive.exactOptional(),
          uninsuredOnly: z.boolean().exactOptional(),
        })
        .exactOptional(),
      note: text.exactOptional(),
      neverAgain: z.strictObject({ percent, operator, ...sourced }).exactOptional(),
      ...sourced,
    }),
  ),
}) satisfies z.ZodType<TotalLossFile>;

const credit = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['full', 'none', 'no sales tax', 'not known']) }),
  z.strictObject({
    kind: z.literal('capped'),
    from: z.number().int(),
    cap: positive,
    risesAYear: positive,
    lastCap: positive,
  }),
]);
const usClaims = z.strictObject({
  ...head,
  places: z.record(
    code,
    z.strictObject({
      settlement: z
        .strictObject({
          tax: z.enum(['before salvage', 'after salvage', 'not paid', 'not known']),
          fees: z.enum(['paid', 'not known']),
          ...sourced,
        })
        .exactOptional(),
      tradeIn: z.strictObject({ credit, note: text.exactOptional(), ...sourced }).exactOptional(),
      notes: z
        .array(z.strictObject({ words: text, ...sourced }))
        .nonempty()
        .exactOptional(),
    }),
  ),
  tradeInElsewhere: z.strictObject({ credit, note: text, ...sourced }),
  faults: z.array(
    z.strictObject({
      places: z.array(code).nonempty(),
      rule: z.enum(['in proportion', 'nothing from half', 'nothing above half', 'nothing if any']),
      ...sourced,
    }),
  ),
}) satisfies z.ZodType<ClaimFile>;

const claimCustoms = z.strictObject({
  about: text,
  date,
  customs: z.array(z.strictObject({ words: text, ...sourced })),
}) satisfies z.ZodType<CustomsFile>;

/** Words set apart by commas; braces close before they open again; nothing but small letters and the marks. */
const words = z.array(z.string().regex(/^(?:@[a-z ]+|(?:[a-z0-9' ,*]|\{[a-z0-9' ,*]+\})+)$/)).nonempty();
const row = z.strictObject({
  what: text,
  words,
  with: words.exactOptional(),
  not: words.exactOptional(),
  dangers: z.array(
    z.enum([
      'airbag',
      'high-voltage',
      'structure',
      'fuel',
      'lifting',
      'brakes',
      'steering',
      'exhaust',
      'battery',
    ]),
  ),
});
const dangerWords = z.strictObject({
  about: text,
  date,
  ...sourced,
  lists: z.record(text, words),
  unsafe: z.array(row),
  care: z.array(row),
}) satisfies z.ZodType<DangerFile>;

const SCHEMAS: Readonly<Record<string, z.ZodType>> = {
  'publicTables.json': publicTables,
  'wornParts.json': wornParts,
  'usTotalLoss.json': usTotalLoss,
  'usClaims.json': usClaims,
  'claimCustoms.json': claimCustoms,
  'dangerWords.json': dangerWords,
};

describe('the facts', () => {
  it('are all checked here', () => expect(files.sort()).toEqual(Object.keys(SCHEMAS).sort()));

  it.each(files)('%s has what its type says, and nothing else', (name) => {
    expect(SCHEMAS[name]?.safeParse(contentOf(name)).error?.issues ?? []).toEqual([]);
  });

  it('a typo in them is seen', () => {
    const broken = readFileSync(new URL('usTotalLoss.json', folder), 'utf8');
    const typos: readonly (readonly [string, string])[] = [
      ['"leftOut"', '"leftout"'],
      ['"formula"', '"formular"'],
      ['"read"', '"red"'],
      ['"percent": 75', '"percent": 7.5'],
      ['"US-WY"', '"US-Wy"'],
    ];
    for (const [right, wrong] of typos) {
      expect(broken).toContain(right);
      expect(usTotalLoss.safeParse(JSON.parse(broken.replace(right, wrong))).success, wrong).toBe(false);
    }
  });

  it('speak only of places that the table of tests lists', () => {
    const { places } = usTotalLoss.parse(contentOf('usTotalLoss.json'));
    const claims = usClaims.parse(contentOf('usClaims.json'));
    const spokenOf = [...Object.keys(claims.places), ...claims.faults.flatMap((fault) => fault.places)];
    expect(spokenOf.filter((place) => !(place in places))).toEqual([]);
  });

  it('name only lists of words that there are, and use each', () => {
    const { lists, unsafe, care } = dangerWords.parse(contentOf('dangerWords.json'));
    const named = [...unsafe, ...care]
      .flatMap((one) => [one.words, one.with ?? [], one.not ?? []])
      .concat(Object.values(lists))
      .flat()
      .flatMap((entry) => (entry.startsWith('@') ? entry.slice(1) : []));
    expect([...new Set(named)].sort()).toEqual(Object.keys(lists).sort());
  });
});
