/** Whatever is handed in, a public function gives an answer that is one, or says what is wanted; and it ends. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as library from '../../src/index.ts';
import { scenario as soundScenario } from '../../src/library/scenario.ts';
import { scenarioOf } from '../support/file.ts';
import { CALLS, call } from './calls.ts';

const names = Object.keys(CALLS) as (keyof typeof CALLS)[];
/** These take a scenario, and some seconds for a few hundred of it. */
const SLOW: readonly string[] = [
  'answersInSteps',
  'decide',
  'decideAtAverage',
  'evaluate',
  'firstAnswer',
  'simulateScramble',
  'withChances',
  'withTips',
];

const JUNK: readonly unknown[] = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  0,
  -0,
  -1,
  -7,
  0.5,
  2.5,
  1e-308,
  1e15,
  1e308,
  -1e308,
  '',
  '5',
  'frei',
  '2026-02-30',
  true,
  null,
  undefined,
  10n,
  Symbol('junk'),
  [],
  [Number.NaN],
  ['5'],
  {},
  { unit: 0 },
  () => Number.NaN,
  () => '5',
  () => 0,
];

type Path = readonly (string | number)[];

/** Every place within arguments; columns of draws as one. */
const placesIn = (value: unknown, at: Path = []): Path[] =>
  typeof value === 'object' && value !== null && !ArrayBuffer.isView(value)
    ? [at, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...at, key]))]
    : [at];

/** A copy with something else in one place. */
const withAt = (value: unknown, path: Path, other: unknown): unknown => {
  const [step, ...rest] = path;
  if (step === undefined) return other;
  if (Array.isArray(value))
    return value.map((item, i) => (String(i) === step ? withAt(item, rest, other) : item));
  const object = value as Record<string, unknown>;
  return { ...object, [step]: withAt(object[step], rest, other) };
};

const placeOf = (value: unknown, path: Path): unknown =>
  path.reduce((inner, step) => (inner as Record<string | number, unknown>)[step], value);

const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null && !ArrayBuffer.isView(value)
      ? Object.values(value).flatMap(numbersIn)
      : [];

/** The call ends in an answer of numbers, or in an error of the right kind that has words. */
const isTold = (name: (typeof names)[number], args: readonly unknown[]): void => {
  let answer: unknown;
  try {
    answer = call(name, args);
  } catch (error) {
    expect(error instanceof TypeError || error instanceof RangeError, `${name}: ${String(error)}`).toBe(true);
    expect((error as Error).message).not.toBe('');
    expect((error as Error).message.startsWith(name), String(error)).toBe(true);
    return;
  }
  expect(numbersIn(answer).filter((n) => !Number.isFinite(n))).toEqual([]);
};

describe('every public function', () => {
  it('is among those tried', () => {
    const functions = Object.entries(library).filter(([, value]) => typeof value === 'function');
    expect([...names].sort()).toEqual(functions.map(([name]) => name).sort());
  });

  it.each(names)('%s answers as it should where nothing is wrong', (name) => {
    expect(numbersIn(call(name, CALLS[name])).filter((n) => !Number.isFinite(n))).toEqual([]);
  });

  it.each(names.filter((name) => !SLOW.includes(name)))('%s takes no junk in any place', (name) => {
    const args = CALLS[name];
    for (const place of placesIn(args).slice(1))
      for (const junk of JUNK) isTold(name, withAt(args, place, junk) as unknown[]);
    isTold(name, []);
  });

  it.each(names.filter((name) => !SLOW.includes(name)))('%s takes no two pieces of it either', (name) => {
    const args = CALLS[name];
    const place = fc.constantFrom(...placesIn(args).slice(1));
    const junk = fc.oneof(fc.constantFrom(...JUNK), fc.double(), fc.integer(), fc.string());
    fc.assert(
      fc.property(place, junk, place, junk, (a, first, b, second) => {
        const once = withAt(args, a, first) as unknown[];
        // What is no longer there cannot be replaced in turn.
        const there = placesIn(once).some((path) => path.join('.') === b.join('.'));
        isTold(name, there ? (withAt(once, b, second) as unknown[]) : once);
      }),
      { numRuns: 80 },
    );
  });

  /** A schedule's rows are not looked at: what settles it is in what is owed. */
  const unread = (place: Path): boolean => place.includes('rows') || place.at(-1) === 'payment';

  it.each(names.filter((name) => !SLOW.includes(name)))(
    '%s takes no text for a number, and no NaN',
    (name) => {
      const args = CALLS[name];
      const read = placesIn(args).filter((place) => name !== 'payoffAt' || !unread(place));
      for (const place of read.filter((place) => typeof placeOf(args, place) === 'number')) {
        expect(() => call(name, withAt(args, place, '5') as unknown[]), place.join('.')).toThrow(TypeError);
        expect(() => call(name, withAt(args, place, Number.NaN) as unknown[]), place.join('.')).toThrow(
          RangeError,
        );
      }
    },
  );

  it('reads what a scenario says was written before anything is typed into it', () => {
    const given = scenarioOf();
    const places = placesIn(given.written, ['written']).slice(1);
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.constantFrom(...JUNK), (place, junk) => {
        try {
          soundScenario(withAt(given, place, junk), 'scenario');
        } catch (error) {
          expect(error instanceof TypeError || error instanceof RangeError, String(error)).toBe(true);
          expect((error as Error).message).toContain('scenario.written');
        }
      }),
      { numRuns: 500 },
    );
  });

  it('takes no time longer than a file may make it, and every time that one has', () => {
    const place = ['0', 'inputs', 'replacement', '0', 'payment', 'months'];
    for (const months of [1e15, 1e308, 1201, -7])
      expect(() => call('firstAnswer', withAt(CALLS.firstAnswer, place, months) as unknown[])).toThrow(
        'replacement.0.payment.months',
      );
    for (const file of readdirSync('scenarios').filter((name) => name.endsWith('.yaml'))) {
      const read = library.parseScenario(readFileSync(`scenarios/${file}`, 'utf8'), {
        file,
        today: '2026-11-25',
      });
      if (!('scenario' in read)) throw new Error(`${file} has problems`);
      expect(() => soundScenario(read.scenario, file)).not.toThrow();
    }
  });

  it('tells in its own terms what arithmetic underneath cannot do', () => {
    const place = ['0', 'inputs', 'replacement', '0', 'lowRateInstead'];
    isTold('decide', withAt(CALLS.decide, place, []) as unknown[]);
  });

  it.each(SLOW)('%s takes none in a place of a scenario', (name) => {
    const known = name as (typeof names)[number];
    const args = CALLS[known];
    fc.assert(
      fc.property(fc.constantFrom(...placesIn(args).slice(1)), fc.constantFrom(...JUNK), (place, junk) => {
        isTold(known, withAt(args, place, junk) as unknown[]);
      }),
      { numRuns: 12 },
    );
  });
});
