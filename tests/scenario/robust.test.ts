import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeScenario } from '../../src/engine/scenario/text/decode.ts';
import { holds } from './holds.ts';
import { parse, SHORT_FORM } from './scenario.ts';

const SCRAPS = [
  ...[
    'yes',
    'no',
    '-1',
    '0',
    '.nan',
    '.inf',
    '1e400',
    '[]',
    '{}',
    'null',
    '~',
    '""',
    '*a',
    '&a x',
    '!!binary aa',
    '|',
    '>',
  ],
  ...[
    '9,000 miles',
    '3 years',
    '{ value: 1 }',
    '{ low: 1, high: 2 }',
    '2026-13-40',
    '\u0000',
    '\t',
    '\u202e',
    '- ',
    ': ',
    '#',
  ],
  ...[
    '__proto__',
    'constructor',
    '<<',
    'what',
    'loan',
    'lease',
    'cash: yes',
    'components:',
    '[[[[',
    '}}',
    "'",
    '"',
    '%',
    '@',
  ],
];

describe('any text at all', () => {
  it('never throws on garbage', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200, unit: 'binary' }), (text) => void holds(text)),
      { numRuns: 150 },
    );
  });

  it('never throws on a scenario with something else in the place of a word', () => {
    const words = [...SHORT_FORM.matchAll(/[^\s{},]+/g)].map(
      (match) => [match.index, match[0].length] as const,
    );
    const swap = fc.tuple(fc.constantFrom(...words), fc.constantFrom(...SCRAPS));
    fc.assert(
      fc.property(fc.array(swap, { minLength: 1, maxLength: 3 }), (swaps) => {
        const ordered = [...swaps].sort(([a], [b]) => b[0] - a[0]);
        holds(
          ordered.reduce(
            (text, [[at, length], scrap]) => text.slice(0, at) + scrap + text.slice(at + length),
            SHORT_FORM,
          ),
        );
      }),
      { numRuns: 150 },
    );
  });

  it('never throws on a scenario with characters lost', () => {
    const cut = fc.tuple(fc.nat(SHORT_FORM.length), fc.integer({ min: 1, max: 40 }));
    fc.assert(
      fc.property(cut, ([at, length]) => void holds(SHORT_FORM.slice(0, at) + SHORT_FORM.slice(at + length))),
      { numRuns: 100 },
    );
  });

  it('never throws on bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 80 }), (bytes) => {
        const decoded = decodeScenario(bytes);
        if ('text' in decoded) holds(decoded.text);
        else expect(decoded.problems.length).toBeGreaterThan(0);
      }),
      { numRuns: 150 },
    );
  });
});

describe('texts made to take long', () => {
  const size = 40_000;
  const fill = (text: string): string => text.repeat(Math.floor(size / text.length));
  it.each([
    ['ten megabytes', 'x'.repeat(10_000_000)],
    ['one key again and again', fill('a: 1\n')],
    ['a list without end', fill('- 1\n')],
    ['brackets', fill('[')],
    ['dashes', fill('- ')],
    ['spaces', fill(' ')],
    ['aliases', `a: &a 1\nb: [${fill('*a, ')}]`],
    ['anchors', `a: ${fill('&a ')}`],
    ['colons', fill('a: b: ')],
    ['digits', `miles_a_year: "${fill('1')}"`],
  ])('%s: refused within seconds', (_, text) => {
    const start = performance.now();
    const result = parse(text);
    expect('problems' in result && result.problems.length).toBeGreaterThan(0);
    expect(performance.now() - start).toBeLessThan(10_000);
  });

  it('leaves the prototype of things alone', () => {
    parse(`__proto__: { polluted: yes }\nconstructor: { prototype: { polluted: yes } }\n${SHORT_FORM}`);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });
});

describe('encodings', () => {
  const bytes = new TextEncoder().encode(SHORT_FORM);
  const marked = (...mark: number[]): Uint8Array => new Uint8Array([...mark, ...bytes]);

  it('reads UTF-8 with a byte order mark, and without', () => {
    for (const one of [bytes, marked(0xef, 0xbb, 0xbf)]) {
      const decoded = decodeScenario(one);
      expect('text' in decoded && 'scenario' in parse(decoded.text)).toBe(true);
    }
    expect('scenario' in parse(`\ufeff${SHORT_FORM}`)).toBe(true);
  });

  it('names UTF-16 and UTF-32, with a mark or without', () => {
    const wide = new Uint8Array([...bytes].flatMap((byte) => [byte, 0]));
    for (const one of [marked(0xff, 0xfe), marked(0xfe, 0xff), wide, marked(0xff, 0xfe, 0, 0)]) {
      const decoded = decodeScenario(one);
      expect('problems' in decoded && decoded.problems[0]?.kind).toBe('encoding');
    }
  });

  it('reads the line endings of every system', () => {
    for (const end of ['\r\n', '\n'])
      expect('scenario' in parse(SHORT_FORM.replaceAll('\n', end))).toBe(true);
  });
});
