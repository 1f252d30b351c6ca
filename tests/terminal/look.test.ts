import { describe, expect, it } from 'vitest';
import { run } from '../../src/terminal/run.ts';
import { SHORT } from './scenario.ts';
import { world } from './world.ts';

const ran = async (...argv: readonly string[]) => {
  const made = world({ files: { 'mine.yaml': SHORT } });
  const code = await run([...argv, ...(argv[0] === 'report' ? ['--futures', '0'] : [])], made.effects);
  return { code, ...made };
};
const jsonOf = async (...more: readonly string[]) => {
  const { printed } = await ran('report', 'mine.yaml', '--json', ...more);
  return JSON.parse(printed) as {
    difference: string;
    quantities: { path: string; value: number; note: string }[];
  };
};

describe('a look at other numbers', () => {
  it('gives what the file would give with them in it, and leaves the file alone', async () => {
    const looked = await jsonOf('--set', 'vehicle.odometer=210000', '--set', 'miles_a_year=7000');
    const typed = SHORT.replace(/^( *odometer: ).*$/m, '$1210000').replace(
      /^miles_a_year: .*$/m,
      'miles_a_year: 7000',
    );
    expect(typed).not.toBe(SHORT);
    const made = world({ files: { 'mine.yaml': typed } });
    await run(['report', 'mine.yaml', '--json', '--futures', '0'], made.effects);
    expect(looked.difference).toBe((JSON.parse(made.printed) as typeof looked).difference);
    expect(looked.difference).not.toBe((await jsonOf()).difference);
  });

  it('reaches a figure that holds from a date on', async () => {
    const changing = (figure: number) =>
      SHORT.replace(
        '\nvehicle:\n',
        `\nvehicle:\n  changes: [{ from: 2028-04, insurance_a_year: ${figure} }]\n`,
      );
    const difference = async (text: string, ...more: readonly string[]) => {
      const made = world({ files: { 'mine.yaml': text } });
      await run(['report', 'mine.yaml', '--json', '--futures', '0', ...more], made.effects);
      return (JSON.parse(made.printed) as { difference: string }).difference;
    };
    const looked = await difference(changing(500), '--set', 'vehicle.changes.0.insurance_a_year=300');
    expect(looked).toBe(await difference(changing(300)));
    expect(looked).not.toBe(await difference(changing(500)));
  });

  it('says so beside the number, in the report and on the terminal', async () => {
    const { quantities } = await jsonOf('--set', 'vehicle.odometer=210000');
    expect(quantities.find(({ path }) => path === 'vehicle.odometer')?.note).toMatch(
      /^only a look: otherwise [\d,]+ miles$/,
    );
    const { told, files } = await ran('report', 'mine.yaml', '--set', 'vehicle.odometer=210000');
    expect(told).toMatch(
      /^Only a look: odometer, .* 210000 instead of [\d,]+ miles\. mine\.yaml is as it was\.$/m,
    );
    expect(files.get('mine.yaml')).toBe(SHORT);
    expect([...files.keys()].sort()).toEqual(['mine-look.html', 'mine.yaml']);
  });

  it('takes a number the file does not give, with its unit', async () => {
    const { quantities } = await jsonOf('--set', 'another_like_ours.price=2500');
    expect(quantities.find(({ path }) => path === 'another_like_ours.price')?.value).toBe(2500);
    expect((await ran('bill', 'mine.yaml', 'other', '400', '--set', 'vehicle.odometer=300000 km')).code).toBe(
      0,
    );
    expect((await ran('costs', 'mine.yaml', '--set', 'vehicle.odometer=210000')).code).toBe(0);
  });

  it.each([
    [
      'vehicle.odmeter=1',
      'The scenario has no number at "vehicle.odmeter". Did you mean "vehicle.odometer"?',
    ],
    ['vehicle.what=1', 'The scenario has no number at "vehicle.what".'],
    ['vehicle.odometer=far', '--set vehicle.odometer=far: vehicle.odometer.value: "far" is not a distance'],
    ['replacement.down_payment=99999', 'The down payment is above the price.'],
    ['vehicle.odometer', '--set takes a place of the file and a figure'],
  ])('refuses %s', async (set, words) => {
    const { code, printed, told } = await ran('report', 'mine.yaml', '--set', set);
    expect({ code, printed }).toEqual({ code: 2, printed: '' });
    expect(told).toContain(words);
  });
});
