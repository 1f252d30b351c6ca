import { describe, expect, it } from 'vitest';
import { breaches, crowded, importsOf } from './ladder.ts';
import { RULES } from './rules.ts';
import { sourcesUnder } from './sources.ts';

describe('the ladder of modules', () => {
  it('is kept by every source', () => {
    const sources = sourcesUnder('src');
    expect(sources.size).toBeGreaterThan(20);
    expect(breaches(sources, RULES)).toEqual([]);
    expect(crowded(sources, RULES)).toEqual([]);
  });

  it('has a room for every folder it names', () => {
    const sources = [...sourcesUnder('src').keys()];
    const toCome = ['src/page'];
    const empty = RULES.rungs.flat().filter((room) => !sources.some((path) => path.startsWith(room)));
    expect(empty).toEqual(toCome);
  });
});

/** A small project that breaks every rule once, and what the checker must say of it. */
const BROKEN: readonly (readonly [what: string, files: Record<string, string>, says: string])[] = [
  [
    'an import from a rung above',
    {
      'src/engine/quantity/a.ts': "import { b } from '../scenario/text/b.ts';",
      'src/engine/scenario/text/b.ts': 'export const b = 1;',
    },
    'src/engine/quantity/a.ts imports upwards: src/engine/scenario/text/b.ts',
  ],
  [
    'an import from a higher room of the same floor',
    {
      'src/engine/plans/vehicle/a.ts': "import { b } from '../collision/b.ts';",
      'src/engine/plans/collision/b.ts': 'export const b = 1;',
    },
    'src/engine/plans/vehicle/a.ts imports upwards: src/engine/plans/collision/b.ts',
  ],
  [
    'an upward import of a type alone',
    {
      'src/engine/quantity/a.ts': "import type { B } from '../scenario/text/b.ts';",
      'src/engine/scenario/text/b.ts': 'export type B = 1;',
    },
    'src/engine/quantity/a.ts imports upwards: src/engine/scenario/text/b.ts',
  ],
  [
    'an upward import at run time',
    {
      'src/report/a.ts': "export const a = () => import('../terminal/b.ts');",
      'src/terminal/b.ts': 'export const b = 1;',
    },
    'src/report/a.ts imports upwards: src/terminal/b.ts',
  ],
  [
    'an import from the other shell',
    { 'src/page/a.ts': "import { b } from '../terminal/b.ts';", 'src/terminal/b.ts': 'export const b = 1;' },
    'src/page/a.ts imports from the other shell: src/terminal/b.ts',
  ],
  [
    'a ring of imports, types included',
    {
      'src/report/a.ts': "import { b } from './b.ts';",
      'src/report/b.ts': "export type { C } from './c.ts';",
      'src/report/c.ts': "import type { A } from './a.ts';",
    },
    'a ring of imports: src/report/a.ts -> src/report/b.ts -> src/report/c.ts',
  ],
  [
    'a file that imports itself',
    { 'src/report/a.ts': "import { a } from './a.ts';" },
    'a ring of imports: src/report/a.ts',
  ],
  [
    'a library away from its home',
    { 'src/engine/answer/a.ts': "import { parse } from 'yaml';" },
    'src/engine/answer/a.ts imports yaml, whose home is src/engine/scenario/text and src/engine/scenario/private',
  ],
  [
    'a part of a library away from its home',
    { 'src/report/a.ts': "import * as z from 'zod/mini';" },
    'src/report/a.ts imports zod/mini, whose home is src/engine/scenario/schema',
  ],
  [
    'a library without a home',
    { 'src/terminal/a.ts': "import pad from 'left-side';" },
    'src/terminal/a.ts imports left-side, which has no home',
  ],
  [
    'a system module in the engine',
    { 'src/engine/chance/a.ts': "import { readFileSync } from 'node:fs';" },
    'src/engine/chance/a.ts is pure but imports node:fs',
  ],
  [
    'the clock in the engine',
    { 'src/engine/answer/a.ts': 'export const now = () => new Date();' },
    'src/engine/answer/a.ts is pure but mentions new Date()',
  ],
  [
    'chance in the engine',
    { 'src/engine/chance/a.ts': 'export const draw = () => Math.random();' },
    'src/engine/chance/a.ts is pure but mentions Math.random',
  ],
  [
    'the process in the engine',
    { 'src/engine/scenario/inputs/a.ts': 'export const home = process.env.HOME;' },
    'src/engine/scenario/inputs/a.ts is pure but mentions process.',
  ],
  [
    'the network in the engine',
    { 'src/engine/scenario/inputs/a.ts': "export const rate = () => fetch('x');" },
    'src/engine/scenario/inputs/a.ts is pure but mentions fetch(',
  ],
  [
    'a file that is too long',
    { 'src/report/a.ts': 'export const a = 1;\n'.repeat(301) },
    'src/report/a.ts has 301 lines; 300 at most',
  ],
  [
    'a public surface that does not fit one screen',
    { 'src/index.ts': '\n'.repeat(61) },
    'src/index.ts has 61 lines; 60 at most',
  ],
  [
    'one name for two files of the engine',
    { 'src/engine/chance/a.ts': '', 'src/engine/policy/a.ts': '', 'src/report/a.ts': '' },
    'one name for several files: src/engine/chance/a.ts and src/engine/policy/a.ts',
  ],
  [
    'data apart from the facts',
    { 'src/engine/chance/a.json': '{}', 'src/engine/chance/b.ts': "import a from './a.json';" },
    'src/engine/chance/a.json is data, whose place is src/engine/scenario/facts',
  ],
  [
    'facts that are read in two places',
    {
      'src/engine/scenario/facts/a.json': '{}',
      'src/engine/scenario/places/b.ts': "import a from '../facts/a.json' with { type: 'json' };",
      'src/engine/scenario/danger/c.ts': "import a from '../facts/a.json' with { type: 'json' };",
    },
    'src/engine/scenario/facts/a.json is read by src/engine/scenario/places/b.ts and src/engine/scenario/danger/c.ts',
  ],
  [
    'facts that nobody reads',
    { 'src/engine/scenario/facts/a.json': '{}' },
    'src/engine/scenario/facts/a.json is read by nobody',
  ],
  ['a file on no rung', { 'src/engine/misc/a.ts': '' }, 'src/engine/misc/a.ts stands on no rung'],
  [
    'an import of what is not there',
    { 'src/report/a.ts': "export * from './gone.ts';" },
    'src/report/a.ts imports src/report/gone.ts, which is not there',
  ],
];

describe('the checker itself', () => {
  it.each(BROKEN)('sees %s', (_, files, says) => {
    expect(breaches(new Map(Object.entries(files)), RULES)).toEqual([says]);
  });

  it('sees a rung that holds more than its share', () => {
    const rooms = [
      'engine/quantity',
      'engine/scenario/rules',
      'engine/cashflow',
      'report',
      'library',
      'terminal',
    ];
    const even = new Map(rooms.map((room) => [`src/${room}/a.ts`, 'export const a = 1;\n'.repeat(12)]));
    // Report and library stand on one rung, so together they hold a third.
    expect(crowded(even, RULES)).toEqual(['src/report and src/library: 33 % of all lines; 25 % at most']);
    even.delete('src/library/a.ts');
    expect(crowded(even, RULES)).toEqual([]);
    even.set('src/engine/cashflow/b.ts', 'export const b = 1;\n'.repeat(5));
    expect(crowded(even, RULES)).toEqual(['src/engine/cashflow: 26 % of all lines; 25 % at most']);
  });

  it('finds imports however they are written, and none in comments', () => {
    const source = [
      "import 'one';",
      "import two, { type Three } from 'two';",
      "import {\n  four,\n} from 'four';",
      "export * as five from 'five';",
      "const six = await import('six');",
      "// import 'seven';",
      "/** import { eight } from 'eight'; */",
      "const nine = 'https://nine'; import 'ten';",
    ].join('\n');
    const targets = importsOf('src/a.ts', source).map(({ target }) => target);
    expect(targets).toEqual(['one', 'two', 'four', 'five', 'six', 'ten']);
  });

  it('is silent where nothing is wrong', () => {
    const good = {
      'src/engine/quantity/a.ts': "import { Decimal } from 'decimal.js'; // never Math.random()",
      'src/engine/scenario/text/b.ts':
        "import type { A } from '../../quantity/a.ts'; const says = 'the process. window.';",
      'src/terminal/c.ts': "import { readFileSync } from 'node:fs'; import '../engine/scenario/text/b.ts';",
    };
    expect(breaches(new Map(Object.entries(good)), RULES)).toEqual([]);
  });
});
