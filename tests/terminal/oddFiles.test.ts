import { describe, expect, it } from 'vitest';
import { EXIT } from '../../src/terminal/exit.ts';
import { run } from '../../src/terminal/run.ts';
import { SHORT } from './scenario.ts';
import { world } from './world.ts';

const vehicle = (lines: string): string => SHORT.replace('\nvehicle:\n', `\nvehicle:\n${lines}`);
const PART = 'life: { typical: 100000 }, shop_price: 400';

/** Files with names and slips that a program might trip over, and how each command is to end with them. */
const ODD: Readonly<Record<string, readonly [text: string, code: number]>> = {
  'needs called as what every object has': [
    `needs: { toString: 4, length: 3, valueOf: yes }\n${SHORT}`,
    EXIT.done,
  ],
  'offers called so': [
    `needs: { hasOwnProperty: 2 }\n${vehicle('  offers: { hasOwnProperty: 3, toString: 4 }\n')}`,
    EXIT.done,
  ],
  'parts and vehicles called so': [
    vehicle(`  components: [{ name: toString, ${PART} }, { name: length, ${PART} }]\n`)
      .replace('2009 wagon', 'toString 2009')
      .replace('2021 hatchback', 'hasOwnProperty 2021'),
    EXIT.done,
  ],
  'keys called so': [vehicle('  length: { a: 1 }\n  toString: 4\n'), EXIT.wrongFile],
  'a list that is a mapping with a length': [
    SHORT.replace(/work_needed:\n(?: {2}- .*\n)+/, 'work_needed: { length: { a: 1 } }\n'),
    EXIT.wrongFile,
  ],
  'an economy without a figure': [vehicle('  fuel: { economy: { how: measured } }\n'), EXIT.wrongFile],
  'a place that is a number': [`claim: { place: 0 }\n${SHORT}`, EXIT.wrongFile],
  'a look at a part that is a number': [
    `look_first: [{ what: a look, costs: 9, component: 3, within: 6, sees: 80, clears: 80 }]\n${SHORT}`,
    EXIT.wrongFile,
  ],
  'nothing worth anything': [
    SHORT.replace(/sells_for: .*/, 'sells_for: { running: 0, as_it_stands: 0 }')
      .replace('17800', '0')
      .replace('down_payment: 2000', 'down_payment: 0'),
    EXIT.done,
  ],
};

describe('a file never ends in a fault of ours', () => {
  const commands = [
    ['check', 'odd.yaml'],
    ['costs', 'odd.yaml'],
    ['bill', 'odd.yaml', 'other', '400'],
    ['report', 'odd.yaml', '--futures', '0'],
    ['report', 'odd.yaml', '--futures', '0', '--json'],
  ];
  it.each(Object.entries(ODD))('%s', async (_, [text, code]) => {
    for (const argv of commands) {
      const made = world({ files: { 'odd.yaml': text } });
      expect(await run(argv, made.effects), `${argv.join(' ')}\n${made.told}`).toBe(code);
      expect(made.printed).not.toContain('NaN');
    }
  });
});
