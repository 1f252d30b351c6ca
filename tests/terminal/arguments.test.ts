import { describe, expect, it } from 'vitest';
import { readArguments } from '../../src/terminal/arguments.ts';

const plain = { out: null, json: false, force: false, futures: null, seed: null, set: [] };

describe('the command line', () => {
  it.each([
    [['new', 'mine.yaml'], { command: 'new', file: 'mine.yaml', options: plain }],
    [['check', '-'], { command: 'check', file: '-', options: plain }],
    [['report', 'a.yaml'], { command: 'report', file: 'a.yaml', options: plain }],
    [
      ['report', '--json', 'a.yaml', '--force'],
      { command: 'report', file: 'a.yaml', options: { ...plain, json: true, force: true } },
    ],
    [
      ['--out', 'b.html', 'report', 'a.yaml'],
      { command: 'report', file: 'a.yaml', options: { ...plain, out: 'b.html' } },
    ],
    [
      ['costs', 'a.yaml', '--out=-x.csv'],
      { command: 'costs', file: 'a.yaml', options: { ...plain, out: '-x.csv' } },
    ],
    [['check', '--', '--odd-name'], { command: 'check', file: '--odd-name', options: plain }],
    [
      ['report', 'a.yaml', '--set', 'vehicle.odometer=180000', '--set=replacement.loan.apr=7 %'],
      {
        command: 'report',
        file: 'a.yaml',
        options: { ...plain, set: ['vehicle.odometer=180000', 'replacement.loan.apr=7 %'] },
      },
    ],
    [
      ['report', 'a.yaml', '--futures', '4,096', '--seed=7'],
      { command: 'report', file: 'a.yaml', options: { ...plain, futures: 4096, seed: 7 } },
    ],
    [
      ['report', 'a.yaml', '--futures=0', '--seed', '4294967295'],
      { command: 'report', file: 'a.yaml', options: { ...plain, futures: 0, seed: 4294967295 } },
    ],
    [
      ['bill', 'a.yaml', 'gearbox', '$1,850'],
      {
        command: 'bill',
        file: 'a.yaml',
        component: 'gearbox',
        amount: { value: 1850, sign: '$' },
        options: plain,
      },
    ],
    [
      ['bill', '-', 'water', 'pump', '640.50', '--json'],
      {
        command: 'bill',
        file: '-',
        component: 'water pump',
        amount: { value: 640.5, sign: '' },
        options: { ...plain, json: true },
      },
    ],
    [['--help'], { command: 'help' }],
    [['report', '-h', '--nonsense'], { command: 'help' }],
    [['--version'], { command: 'version' }],
  ])('%j is understood', (argv, request) => {
    expect(readArguments(argv)).toEqual(request);
  });

  it.each([
    [[], 'Say what to do: new, check, report, costs or bill.'],
    [['repotr', 'a.yaml'], 'There is no command "repotr". Did you mean "report"?'],
    [['drive', 'a.yaml'], 'There is no command "drive".'],
    [['constructor', 'a.yaml'], 'There is no command "constructor".'],
    [['check'], '"stillworth check" needs a file: stillworth check FILE'],
    [['check', ''], '"stillworth check" needs a file: stillworth check FILE'],
    [['check', 'a', 'b', 'c'], 'One file at a time: "b", "c" was not expected.'],
    [['report', 'a', '--jsno'], 'There is no option "--jsno". Did you mean "--json"?'],
    [['report', 'a', '-x'], 'There is no option "-x".'],
    [['report', 'a', '--__proto__'], 'There is no option "--__proto__".'],
    [['check', 'a', '--json'], '"stillworth check" has no option --json.'],
    [['report', 'a', '--force', '--force'], '--force is given twice.'],
    [['report', 'a', '--out'], '--out needs the name of a file after it.'],
    [['report', 'a', '--out='], '--out needs the name of a file after it.'],
    [['report', 'a', '--out', '--json'], '--out needs the name of a file after it.'],
    [['report', 'a', '--json=yes'], '--json takes no value; leave out "=yes".'],
    [['report', 'a', '--futures'], '--futures needs a number after it.'],
    [['report', 'a', '--futures', '--json'], '--futures needs a number after it.'],
    [
      ['report', 'a', '--futures', '1023'],
      '--futures takes a whole number from 1,024 to 1,048,576, or 0 for none; "1023" is not.',
    ],
    [
      ['report', 'a', '--futures', '1,048,577'],
      '--futures takes a whole number from 1,024 to 1,048,576, or 0 for none; "1,048,577" is not.',
    ],
    [
      ['report', 'a', '--futures', '5e3'],
      '--futures takes a whole number from 1,024 to 1,048,576, or 0 for none; "5e3" is not.',
    ],
    [['report', 'a', '--seed', '1.5'], '--seed takes a whole number from 0 to 4,294,967,295; "1.5" is not.'],
    [['report', 'a', '--seed=-1'], '--seed takes a whole number from 0 to 4,294,967,295; "-1" is not.'],
    [
      ['report', 'a', '--seed', '4294967296'],
      '--seed takes a whole number from 0 to 4,294,967,295; "4294967296" is not.',
    ],
    [['costs', 'a', '--seed', '1'], '"stillworth costs" has no option --seed.'],
    [['bill', 'a', '--futures', '0', 'b', '1'], '"stillworth bill" has no option --futures.'],
    [
      ['bill'],
      '"stillworth bill" needs a file, a component and an amount: stillworth bill FILE COMPONENT AMOUNT',
    ],
    [
      ['bill', 'a', 'gearbox'],
      '"stillworth bill" needs a file, a component and an amount: stillworth bill FILE COMPONENT AMOUNT',
    ],
    [['bill', 'a', 'gearbox', '1,85'], '"1,85" is not an amount: write it like 1850, 1,850 or 1850.50.'],
    [['bill', 'a', 'gearbox', 'dear'], '"dear" is not an amount: write it like 1850, 1,850 or 1850.50.'],
  ])('%j is misuse', (argv, line) => {
    expect(readArguments(argv)).toEqual({ misuse: [line] });
  });

  it('tells everything that is wrong at once', () => {
    expect(readArguments(['chekc', '--forse', '--jsn'])).toEqual({
      misuse: [
        'There is no command "chekc". Did you mean "check"?',
        'There is no option "--forse". Did you mean "--force"?',
        'There is no option "--jsn". Did you mean "--json"?',
      ],
    });
    expect(readArguments(['bill', 'a.yaml', 'gearbox', '-50'])).toEqual({
      misuse: [
        '"stillworth bill" needs a file, a component and an amount: stillworth bill FILE COMPONENT AMOUNT',
        '-5 is neither an option nor an amount.',
        '-0 is neither an option nor an amount.',
      ],
    });
  });
});
