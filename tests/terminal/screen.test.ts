/** Nothing that a terminal would obey reaches it from a file or from the command line. */

import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { run } from '../../src/terminal/run.ts';
import { claimForm } from '../support/claim.ts';
import { type File, shortForm } from '../support/file.ts';
import { SHORT } from './scenario.ts';
import { type Given, world } from './world.ts';

/** Clears a screen, rings, goes back to the line's start, names the window, turns text round, begins a line anew. */
const EVIL =
  '\u001b[2J\u0007\r\b\u001b]0;mine\u0007\u009b31m\u202e\u2066\u200f\u061c\u2028\ufeffX\u007f\nForged: line';
/** The same where a shell could hand it over. */
const NAME = `a${EVIL}.yaml`;

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that must not be there.
const OBEYED = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/;

const hostile = (change: (file: File) => void = () => undefined): string => {
  const file: File = shortForm();
  const named = (what: string): string => `${what} ${EVIL}`;
  file.title = named('title');
  file.household = {
    look_ahead: 12,
    mechanic: named('Wren'),
    partner: named('Odile'),
    price_of_own_hour: { value: 20, how: 'quoted', source: named('source'), note: named('note') },
  };
  file.not_money = [named('not money')];
  file.vehicle.what = named('2009 wagon');
  file.vehicle.components = [
    {
      name: named('gearbox'),
      life: { typical: 180_000, shape: 3 },
      shop_price: 2300,
      unsafe: 'yes',
      share_of_average: 12,
    },
  ];
  file.vehicle.upkeep = [{ job: named('oil'), every: 6000, parts: 30, shop_price: 80 }];
  for (const job of file.work_needed) job.job = named(String(job.job));
  file.replacement.what = named('2021 hatchback');
  change(file);
  return stringify(file);
};

const claimed = hostile((file) => {
  const claim = claimForm();
  file.claim = { ...claim, what: `claim ${EVIL}`, insurer: `insurer ${EVIL}` };
});

const ran = async (argv: readonly string[], scenario = hostile(), given: Given = {}) => {
  const made = world({ ...given, files: { [NAME]: scenario, folder: null, ...given.files } });
  const code = await run(argv, made.effects);
  const all = made.printed + made.told + made.progress.join('');
  return { ...made, code, all };
};

/** Own line ends are the only controls: those of CSV are pairs. */
const isSafe = (all: string): void => {
  expect(OBEYED.exec(all.replaceAll('\r\n', '\n'))).toBeNull();
  expect(all.split(/\r?\n/).filter((line) => line.startsWith('Forged'))).toEqual([]);
};

describe('what reaches a terminal', () => {
  it.each([
    ['check', ['check', NAME]],
    ['report', ['report', NAME, '--futures', '0']],
    ['report with its futures', ['report', NAME, '--futures', '1024']],
    ['report --json', ['report', NAME, '--json', '--futures', '0']],
    ['report --out', ['report', NAME, '--futures', '0', '--out', `b${EVIL}.html`]],
    ['costs', ['costs', NAME]],
    ['costs --out', ['costs', NAME, '--out', `b${EVIL}.csv`]],
    ['bill', ['bill', NAME, 'gearbox', '1850']],
    ['bill --json', ['bill', NAME, 'gearbox', '1850', '--json']],
    ['new', ['new', `b${EVIL}.yaml`]],
  ])('%s shows names, and obeys none', async (_, argv) => {
    const { all, code, told } = await ran(argv, hostile(), { terminal: true });
    expect(code, told).toBe(0);
    isSafe(all);
    expect(all.length).toBeGreaterThan(20);
  });

  it.each([
    ['check', ['check', NAME]],
    ['report', ['report', NAME, '--futures', '0']],
    ['report --json', ['report', NAME, '--json', '--futures', '0']],
    ['costs', ['costs', NAME]],
  ])('%s, after a collision', async (_, argv) => {
    const { all, code } = await ran(argv, claimed);
    expect(code).toBe(0);
    isSafe(all);
  });

  it.each([
    ['a command', [EVIL]],
    ['an option', ['check', NAME, `--${EVIL}`]],
    ['more files', ['check', NAME, EVIL]],
    ['an amount', ['bill', NAME, 'gearbox', EVIL]],
    ['a component', ['bill', NAME, `g${EVIL}`, '1850']],
    ['a beginning of two', ['bill', NAME, '', '1850']],
    ['a sign', ['bill', NAME, 'gearbox', '1850 XTS']],
    ['a number', ['report', NAME, '--futures', EVIL]],
    ['a seed', ['report', NAME, `--seed=${EVIL}`]],
    ['a value for what takes none', ['report', NAME, `--json=${EVIL}`]],
    ['no such file', ['check', `no${EVIL}`]],
    ['no such file to make', ['new', NAME]],
    ['a file that is there', ['costs', NAME, '--out', NAME]],
  ])('%s that is wrong is told safely', async (_, argv) => {
    const { all, code } = await ran(argv);
    expect(code).toBe(2);
    isSafe(all);
    expect(all.length).toBeGreaterThan(20);
  });

  it('every problem of a file is told on a line of its own', async () => {
    const wrong = hostile((file) => {
      file[`key ${EVIL}`] = 1;
      file.vehicle[`insurance ${EVIL}`] = EVIL;
      file.vehicle.odometer = EVIL;
      file.household = { partner: [EVIL], [EVIL]: { [EVIL]: EVIL } };
      file.work_needed.push({ job: EVIL, can_wait: EVIL });
    });
    const { all, code, told } = await ran(['check', NAME], wrong);
    expect(code).toBe(1);
    isSafe(all);
    for (const line of told.trimEnd().split('\n')) expect(line).toMatch(/^a\\u001b\[2J.*:\d+:\d+: /);
  });

  it('a fault of ours is told with whatever words it has', async () => {
    const made = world();
    const files = { ...made.effects.files, writeWhole: () => Promise.reject(new Error(EVIL)) };
    expect(await run(['new', NAME], { ...made.effects, files })).toBe(3);
    expect(OBEYED.exec(made.told)).toBeNull();
    expect(made.told).toContain(String.raw`\u001b[2J`);
  });

  it('JSON says the very same names', async () => {
    const { printed } = await ran(['report', NAME, '--json', '--futures', '0']);
    expect(JSON.stringify(JSON.parse(printed))).toContain(JSON.stringify(`2009 wagon ${EVIL}`).slice(1, -1));
  });

  it('a joined sign in a name is a word', async () => {
    const { printed } = await ran(['check', 'van \u{1f468}\u200d\u{1f527}.yaml'], '', {
      files: { 'van \u{1f468}\u200d\u{1f527}.yaml': hostile() },
    });
    expect(printed).toMatch(/^van \u{1f468}\u200d\u{1f527}\.yaml is in order/u);
  });

  it('our own stress on the first line stays, and nobody else’s', async () => {
    const bold = hostile((file) => {
      file.vehicle.what = '2009 \u001b[1mwagon';
    });
    const { printed } = await ran(['report', NAME, '--futures', '0'], bold, { colour: true });
    expect(printed.split('\u001b').map((piece) => /^\[\d+m/.exec(piece)?.[0])).toEqual([
      undefined,
      '[1m',
      '[22m',
    ]);
    expect(printed.startsWith('\u001b[1m')).toBe(true);
  });
});

describe('"nothing was written"', () => {
  const FAULT = () => Promise.reject(new Error('made up'));

  it('is not said by a fault that comes after the file', async () => {
    const made = world({ files: { 'mine.yaml': hostile() } });
    expect(await run(['costs', 'mine.yaml', '--out', 'mine.csv'], { ...made.effects, out: FAULT })).toBe(3);
    expect(made.files.has('mine.csv')).toBe(true);
    expect(made.told).toMatch(/itself, not of your file\. mine\.csv was written\.\n/);
    expect(made.told).not.toContain('Nothing was written');
  });

  it('is said by one that comes before', async () => {
    const made = world({ files: { 'mine.yaml': hostile() } });
    const files = { ...made.effects.files, writeWhole: FAULT };
    expect(await run(['costs', 'mine.yaml', '--out', 'mine.csv'], { ...made.effects, files })).toBe(3);
    expect(made.told).toContain('itself, not of your file. Nothing was written.\n');
  });

  it('is not said of what was printed half, and what was written is named', async () => {
    const { told } = await ran(['costs', NAME, '--out', 'mine.csv'], SHORT, { printFails: 'ENOSPC' });
    expect(told).toBe('standard output: the disk is full; not all of it was printed; mine.csv was written\n');
  });

  it('is said once of a file that could not be begun', async () => {
    for (const [code, words] of [
      ['ENOSPC', 'the disk is full'],
      ['EACCES', 'permission denied'],
      ['ENOENT', 'there is no such folder to write to'],
    ] as const) {
      const { told } = await ran(['new', 'b.yaml'], hostile(), { writeFails: code });
      expect(told).toBe(`b.yaml: ${words}; nothing was written\n`);
    }
  });
});
