import { describe, expect, it } from 'vitest';
import { run } from '../../src/terminal/run.ts';
import { SHORT } from './scenario.ts';
import { type Given, world } from './world.ts';

/** Runs a command on a sound scenario. A report draws no futures unless told, so that it is quick. */
const ran = async (argv: readonly string[], given: Given = {}) => {
  const made = world({ ...given, files: { 'mine.yaml': SHORT, ...given.files } });
  const quick = argv.includes('report') && !argv.includes('--futures') ? ['--futures', '0'] : [];
  const code = await run([...argv, ...quick], made.effects);
  return { code, ...made };
};

describe('a run', () => {
  it('prints help and version to standard output', async () => {
    const help = await ran(['--help']);
    expect(help).toMatchObject({ code: 0, told: '' });
    expect(help.printed).toMatch(/^stillworth 1\.2\.3\n/);
    expect(await ran(['--version'])).toMatchObject({ code: 0, told: '', printed: '1.2.3\n' });
  });

  it('tells misuse on standard error and where to find help', async () => {
    const { code, printed, told } = await ran(['chekc', 'mine.yaml']);
    expect({ code, printed, told }).toEqual({
      code: 2,
      printed: '',
      told: 'There is no command "chekc". Did you mean "check"?\nAll there is: stillworth --help\n',
    });
  });

  it.each(['check', 'report', 'costs'])('%s says what keeps it from reading', async (command) => {
    expect(await ran([command, 'mine.yaml'], { readFails: 'EACCES' })).toMatchObject({
      code: 2,
      printed: '',
      told: 'mine.yaml: permission denied\n',
    });
  });

  it.each(['check', 'report', 'costs'])('%s tells every problem of a wrong scenario', async (command) => {
    const wrong = 'miles_a_year: -1\nvehicle: 3\n';
    const { code, printed, told, files } = await ran([command, 'mine.yaml'], {
      files: { 'mine.yaml': wrong },
    });
    expect({ code, printed }).toEqual({ code: 1, printed: '' });
    expect(told.split('\n').length).toBeGreaterThan(3);
    for (const line of told.trimEnd().split('\n')) expect(line).toMatch(/^mine\.yaml:\d+:\d+: /);
    expect([...files.keys()]).toEqual(['mine.yaml']);
  });

  it('checks, and counts what was given and what was not', async () => {
    const { code, printed } = await ran(['check', 'mine.yaml']);
    expect(code).toBe(0);
    expect(printed).toMatch(/^mine\.yaml is in order: \d+ numbers given, \d+ taken from the defaults\.\n$/);
  });

  it('reports: the answer, a file, and where it is', async () => {
    const { code, printed, files } = await ran(['report', 'mine.yaml']);
    expect(code).toBe(0);
    expect(printed).toMatch(/\n\nReport: mine\.html\n$/);
    expect(printed.split('\n').length).toBeGreaterThan(5);
    expect(files.get('mine.html')).toMatch(/^<!doctype html>[\s\S]*<\/html>\s*$/);
  });

  it('makes the first line stand out on a terminal, and only there', async () => {
    const plain = await ran(['report', 'mine.yaml']);
    const strong = await ran(['report', 'mine.yaml'], { colour: true });
    expect(plain.printed).not.toContain('\u001b');
    expect(strong.printed.replace('\u001b[1m', '').replace('\u001b[22m', '')).toBe(plain.printed);
    expect(strong.printed.indexOf('\u001b[22m')).toBeLessThan(strong.printed.indexOf('\n'));
  });

  it('breaks its lines between words on a terminal', async () => {
    const { printed } = await ran(['report', 'mine.yaml'], { columns: 40 });
    const plain = await ran(['report', 'mine.yaml']);
    for (const line of printed.split('\n')) expect(line.length).toBeLessThanOrEqual(40);
    expect(printed.replaceAll('\n  ', ' ')).toBe(plain.printed);
  });

  it('reads its input with -, and needs to be told where a report goes then', async () => {
    expect(await ran(['check', '-'], { input: SHORT })).toMatchObject({ code: 0, told: '' });
    expect(await ran(['report', '-'], { input: SHORT })).toMatchObject({ code: 2, printed: '' });
    expect(await ran(['report', '-', '--json'], { input: SHORT })).toMatchObject({ code: 0, told: '' });
    const named = await ran(['report', '-', '--out', 'a.html'], { input: SHORT });
    expect(named.code).toBe(0);
    expect(named.files.has('a.html')).toBe(true);
  });

  it('prints the decision as JSON and writes nothing', async () => {
    const { code, printed, told, files } = await ran(['report', '--json', 'mine.yaml']);
    expect({ code, told }).toEqual({ code: 0, told: '' });
    const decision = JSON.parse(printed);
    expect(decision.options[0]).toMatchObject({
      id: expect.any(String),
      netPresentCost: expect.stringMatching(/^-?\d+\.\d\d$/),
      equivalentMonthlyCost: expect.stringMatching(/^-?\d+\.\d\d$/),
    });
    expect(decision.difference).toMatch(/^-?\d+\.\d\d$/);
    expect([...files.keys()]).toEqual(['mine.yaml']);
    expect(await ran(['report', '--json', 'mine.yaml', '--out', 'a'])).toMatchObject({
      code: 2,
      printed: '',
    });
  });

  it('draws futures as told, and says so where their number was carried up', async () => {
    const few = ['report', 'mine.yaml', '--json', '--futures'];
    const { code, told, printed } = await ran([...few, '1,024', '--seed', '5']);
    expect({ code, told }).toEqual({ code: 0, told: '' });
    expect(JSON.parse(printed).chances.seed).toBe(5);
    expect((await ran([...few, '1000'])).code).toBe(2);
    expect((await ran([...few, '1025'])).told).toBe(
      'Drawing 2,048 futures, not 1,025: 16 sets of 128, and a set is a power of two.\n',
    );
    expect(JSON.parse((await ran([...few, '0'])).printed).chances).toBeNull();
  });

  it('keeps in the report what it was told about drawing, and nothing where that is what the file says', async () => {
    const kept = async (...told: string[]) =>
      (await ran(['report', 'mine.yaml', ...told])).files.get('mine.html');
    expect(await kept('--futures', '0', '--seed', '5')).toContain(
      'chance: { seed: 5, futures: 0 } # drawn so',
    );
    const own = { files: { 'mine.yaml': `chance: { futures: 0 }\n${SHORT}` } };
    expect((await ran(['report', 'mine.yaml', '--seed', '1'], own)).files.get('mine.html')).not.toContain(
      'drawn so',
    );
  });

  it('answers a shop: pay, do it at home, or let it go', async () => {
    const cheap = await ran(['bill', 'mine.yaml', 'other', '$5']);
    expect(cheap).toMatchObject({ code: 0, told: '' });
    expect(cheap.printed).toMatch(/^(PAY|OUR OWN HANDS): .*the shop asks \$5 /im);
    const dear = await ran(['bill', 'mine.yaml', 'anything', 'else', '900,000']);
    expect(dear.printed).toMatch(/^LET IT GO: .*the shop asks \$900,000 /im);
    const { printed } = await ran(['bill', 'mine.yaml', 'any', '5', '--json']);
    expect(JSON.parse(printed)).toMatchObject({ amount: 5, answer: 'own hands', by: expect.any(Number) });
  });

  it('asks a shop’s caller for what it cannot make out', async () => {
    expect(await ran(['bill', 'mine.yaml', 'wing', '5'])).toMatchObject({
      code: 2,
      printed: '',
      told: 'The scenario has no component "wing". It names none: say "anything else".\n',
    });
    expect(await ran(['bill', 'mine.yaml', 'other', '5 EUR'])).toMatchObject({
      code: 2,
      printed: '',
      told: 'The scenario counts in USD, and "EUR" is another currency\'s sign.\n',
    });
    const alone = SHORT.slice(0, SHORT.indexOf('replacement:'));
    const without = `${alone}doing_without: { a_day: 20, days_a_month: 20 }\n`;
    expect(await ran(['bill', 'mine.yaml', 'other', '5'], { files: { 'mine.yaml': without } })).toMatchObject(
      {
        code: 2,
        printed: '',
        told: 'There is nothing to weigh a bill against: keeping it is not open, or no replacement is.\n',
      },
    );
  });

  it('writes costs to standard output, or to a file that is not there yet', async () => {
    const { printed } = await ran(['costs', 'mine.yaml']);
    const filed = await ran(['costs', 'mine.yaml', '--out', 'a.csv']);
    expect(filed).toMatchObject({ code: 0, printed: 'Wrote a.csv\n' });
    expect(filed.files.get('a.csv')).toBe(printed);
    const there = { files: { 'a.csv': 'theirs' } };
    expect(await ran(['costs', 'mine.yaml', '--out', 'a.csv'], there)).toMatchObject({ code: 2 });
    const forced = await ran(['costs', 'mine.yaml', '--out', 'a.csv', '--force'], there);
    expect(forced.files.get('a.csv')).toBe(printed);
  });

  it('starts a scenario where nothing stands', async () => {
    const { code, files, printed } = await ran(['new', 'other.yaml']);
    expect(code).toBe(0);
    expect(printed).toContain('stillworth report other.yaml');
    expect(await ran(['new', '-'])).toMatchObject({ code: 0, printed: files.get('other.yaml') });
    const refused = await ran(['new', 'mine.yaml']);
    expect(refused).toMatchObject({ code: 2, printed: '' });
    expect(refused.told).toContain('mine.yaml: there is already a file of that name');
    expect(refused.files.get('mine.yaml')).toBe(SHORT);
  });

  it('keeps private words and comments out of the report it writes', async () => {
    const text = `# Only Wren knows.\nprivate: [household.mechanic]\n${SHORT}`;
    const { files } = await ran(['report', 'mine.yaml'], { files: { 'mine.yaml': text } });
    expect(files.get('mine.html')).not.toMatch(/Wren/);
    expect(files.get('mine.html')).toContain('mechanic: the mechanic');
  });

  it('keeps them out of all that it prints, and knows a part by its private name all the same', async () => {
    const text = `private: [household.mechanic, vehicle.components.0.name]\n${SHORT.replace(
      'work_needed:',
      `  components:\n    - { name: "Wren's turbo", life: { typical: 180000 }, shop_price: 900 }\nwork_needed:`,
    ).replace('front brakes', "wren's front brakes")}`;
    const world = { files: { 'mine.yaml': text } };
    const bill = await ran(['bill', 'mine.yaml', "wren's turbo", '50'], world);
    expect(bill).toMatchObject({ code: 0, told: '' });
    expect(bill.printed).toContain('for the part 1');
    for (const args of [
      ['bill', 'mine.yaml', 'hose', '50'],
      ['bill', 'mine.yaml', 'part', '50', '--json'],
      ['check', 'mine.yaml'],
      ['costs', 'mine.yaml'],
      ['report', 'mine.yaml'],
      ['report', 'mine.yaml', '--json'],
    ]) {
      const { printed, told, files } = await ran(args, world);
      expect(`${printed}${told}${files.get('mine.html') ?? ''}`, args.join(' ')).not.toMatch(/wren|turbo/i);
    }
  });

  it('ends quietly when nobody reads on, and loudly when its output cannot be written', async () => {
    expect(await ran(['--help'], { printFails: 'EPIPE' })).toMatchObject({ code: 0, told: '' });
    expect(await ran(['--help'], { printFails: 'ENOSPC' })).toMatchObject({
      code: 2,
      told: 'standard output: the disk is full; not all of it was printed\n',
    });
  });

  it('owns up to its own faults', async () => {
    const made = world({ files: { 'mine.yaml': SHORT } });
    const broken = {
      ...made.effects,
      today: () => {
        throw new TypeError('no calendar');
      },
    };
    expect(await run(['check', 'mine.yaml'], broken)).toBe(3);
    expect(made.told).toMatch(/^A fault of stillworth 1\.2\.3 itself[\s\S]*no calendar/);
  });
});
