import { describe, expect, it } from 'vitest';
import { readArguments } from '../../src/terminal/arguments.ts';

const plain = { out: null, json: false, force: false };

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
    [['--help'], { command: 'help' }],
    [['report', '-h', '--nonsense'], { command: 'help' }],
    [['--version'], { command: 'version' }],
  ])('%j is understood', (argv, request) => {
    expect(readArguments(argv)).toEqual(request);
  });

  it.each([
    [[], 'Say what to do: new, check, report or costs.'],
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
  });
});
