import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inFolder, screenOf, stillworth } from './command.ts';

/** A scenario with several things wrong in it, all of which are to be told at once. */
const WRONG = readFileSync('scenarios/short-form.yaml', 'utf8')
  .replace('insurance_a_year', 'insurance_a_yaer')
  .replace(/apr: [\d.]+/, 'apr: a lot');

const RUNS: readonly (readonly [name: string, ...args: string[]])[] = [
  ['help', '--help'],
  ['nothing asked'],
  ['wrong words', 'repotr', 'short-form.yaml', '--jsno', '--out'],
  ['new', 'new', 'mine.yaml'],
  ['new where one is', 'new', 'short-form.yaml'],
  ['check', 'check', 'short-form.yaml'],
  ['check of a wrong file', 'check', 'wrong.yaml'],
  ['report', 'report', 'short-form.yaml'],
  ['report of a wrong file', 'report', 'wrong.yaml'],
  ['json that writes no file', 'report', 'short-form.yaml', '--json', '--out', 'decision.json'],
  ['too many futures', 'report', 'short-form.yaml', '--futures', '2,000,000', '--seed', 'today'],
  ['bill', 'bill', 'van-gearbox.yaml', 'gearbox', '$1,200'],
  ['bill to walk away from', 'bill', 'van-gearbox.yaml', 'gearbox', '3,400'],
  ['bill for anything else', 'bill', 'van-gearbox.yaml', 'anything', 'else', '480', '--json'],
  ['bill for an unknown part', 'bill', 'van-gearbox.yaml', 'gaerbox', '1850'],
  ['bill of no amount', 'bill', 'van-gearbox.yaml', 'gearbox', '1.850'],
  ['costs to a file', 'costs', 'short-form.yaml', '--out', 'costs.csv'],
  ['costs over a file', 'costs', 'short-form.yaml', '--out', 'wrong.yaml'],
];

describe('the command as a person meets it', () => {
  it.each(RUNS)('%s', async (name, ...args) => {
    await inFolder(async (folder) => {
      for (const name of ['short-form.yaml', 'van-gearbox.yaml'])
        copyFileSync(join('scenarios', name), join(folder, name));
      writeFileSync(join(folder, 'wrong.yaml'), WRONG);
      const seen = screenOf(args, stillworth(folder, args));
      await expect(seen).toMatchFileSnapshot(`expected/${name.replaceAll(' ', '-')}.txt`);
    });
  });

  it('costs, line by line', async () => {
    await inFolder(async (folder) => {
      copyFileSync('scenarios/short-form.yaml', join(folder, 'short-form.yaml'));
      const { code, out, err } = stillworth(folder, ['costs', 'short-form.yaml']);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      // The whole file is long; its head shows the columns and the first ways' day.
      await expect(`${out.split('\n').slice(0, 40).join('\n')}\n`).toMatchFileSnapshot(
        'expected/costs-head.csv',
      );
    });
  });

  it('says which version it is', () => {
    const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
    expect(stillworth('.', ['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' });
  });
});

describe('a starting scenario', () => {
  it('is in order as it stands, and gives a report', async () => {
    await inFolder((folder) => {
      expect(stillworth(folder, ['new', 'mine.yaml']).code).toBe(0);
      const checked = stillworth(folder, ['check', 'mine.yaml']);
      expect(checked).toMatchObject({ code: 0, err: '' });
      expect(stillworth(folder, ['report', 'mine.yaml']).code).toBe(0);
    });
  });
});
