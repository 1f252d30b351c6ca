import { parseArgs } from 'node:util';
import { nearest } from '../engine/scenario/text/nearest.ts';
import { type Amount, readAmount } from './amount.ts';
import { OPTIONS, type Options, optionMisuse, optionsOf } from './options.ts';

/** What the command line asks for. */
export type Request =
  | { readonly command: 'help' }
  | { readonly command: 'version' }
  | {
      readonly command: 'new' | 'check' | 'report' | 'costs';
      readonly file: string;
      readonly options: Options;
    }
  | {
      readonly command: 'bill';
      readonly file: string;
      readonly component: string;
      readonly amount: Amount;
      readonly options: Options;
    };

/** Which options each command understands. */
const COMMANDS = {
  new: [],
  check: [],
  report: ['out', 'json', 'force', 'futures', 'seed', 'set'],
  costs: ['out', 'force', 'set'],
  bill: ['json', 'set'],
} as const satisfies Readonly<Record<string, readonly (keyof Options)[]>>;

const isCommand = (word: string): word is keyof typeof COMMANDS => Object.hasOwn(COMMANDS, word);

/**
 * Reads the command line. Everything wrong with it is told at once: `misuse` holds one line for each, and each says
 * what to do. Asking for help wins over whatever else is wrong.
 */
export const readArguments = (argv: readonly string[]): Request | { readonly misuse: readonly string[] } => {
  const { values, positionals, tokens } = parseArgs({
    args: [...argv],
    options: OPTIONS,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  if (values.help === true) return { command: 'help' };
  if (values.version === true) return { command: 'version' };

  const [word, file, ...more] = positionals;
  const command = word !== undefined && isCommand(word) ? word : null;
  const misuse: string[] = [];
  if (word === undefined) misuse.push('Say what to do: new, check, report, costs or bill.');
  else if (command === null) {
    const close = nearest(word, Object.keys(COMMANDS));
    misuse.push(`There is no command "${word}".${close === null ? '' : ` Did you mean "${close}"?`}`);
  }
  // A component's name may be several words, with or without quotation marks around them.
  const component = more.slice(0, -1).join(' ');
  const typed = more.at(-1) ?? '';
  const amount = readAmount(typed);
  if (command === 'bill') {
    if (!file || component === '') {
      misuse.push(
        '"stillworth bill" needs a file, a component and an amount: stillworth bill FILE COMPONENT AMOUNT',
      );
    } else if (amount === null) {
      misuse.push(`"${typed}" is not an amount: write it like 1850, 1,850 or 1850.50.`);
    }
  } else if (command !== null) {
    if (!file) misuse.push(`"stillworth ${command}" needs a file: stillworth ${command} FILE`);
    if (more.length > 0) {
      misuse.push(`One file at a time: ${more.map((m) => `"${m}"`).join(', ')} was not expected.`);
    }
  }
  const given = tokens.filter((token) => token.kind === 'option');
  misuse.push(...optionMisuse(given, command, command === null ? [] : COMMANDS[command]));

  if (misuse.length > 0 || command === null || !file) return { misuse };
  const options = optionsOf(values);
  if (command !== 'bill') return { command, file, options };
  return amount === null ? { misuse } : { command, file, component, amount, options };
};
