import { parseArgs } from 'node:util';
import { nearest } from '../engine/scenario/nearest.ts';

/** What the command line asks for. */
export type Request =
  | { readonly command: 'help' }
  | { readonly command: 'version' }
  | { readonly command: CommandName; readonly file: string; readonly options: Options };

export interface Options {
  readonly out: string | null;
  readonly json: boolean;
  readonly force: boolean;
}

export type CommandName = 'new' | 'check' | 'report' | 'costs';

/** Which options each command understands. */
const COMMANDS: Readonly<Record<CommandName, readonly (keyof Options)[]>> = {
  new: [],
  check: [],
  report: ['out', 'json', 'force'],
  costs: ['out', 'force'],
};

const OPTIONS = {
  out: { type: 'string' },
  json: { type: 'boolean' },
  force: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
} as const;

const isCommand = (word: string): word is CommandName => Object.hasOwn(COMMANDS, word);
const didYouMean = (word: string, words: readonly string[], before = ''): string => {
  const close = nearest(word, words);
  return close === null ? '' : ` Did you mean "${before}${close}"?`;
};

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
  if (word === undefined) misuse.push('Say what to do: new, check, report or costs.');
  else if (command === null) {
    misuse.push(`There is no command "${word}".${didYouMean(word, Object.keys(COMMANDS))}`);
  }
  if (command !== null && (file === undefined || file === '')) {
    misuse.push(`"stillworth ${command}" needs a file: stillworth ${command} FILE`);
  }
  if (command !== null && more.length > 0) {
    misuse.push(`One file at a time: ${more.map((m) => `"${m}"`).join(', ')} was not expected.`);
  }

  const seen = new Set<string>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const { name, rawName, value } = token;
    if (!Object.hasOwn(OPTIONS, name)) {
      misuse.push(`There is no option "${rawName}".${didYouMean(name, Object.keys(OPTIONS), '--')}`);
    } else if (command !== null && !(COMMANDS[command] as readonly string[]).includes(name)) {
      misuse.push(`"stillworth ${command}" has no option ${rawName}.`);
    } else if (seen.has(name)) {
      misuse.push(`${rawName} is given twice.`);
    } else if (name === 'out') {
      // Without strict parsing "--out --json" would take "--json" for a file's name.
      const taken = token.inlineValue === false && token.value !== '-' && token.value.startsWith('-');
      if (!value || taken) misuse.push('--out needs the name of a file after it.');
    } else if (value !== undefined) {
      misuse.push(`${rawName} takes no value; leave out "=${value}".`);
    }
    seen.add(name);
  }

  if (misuse.length > 0 || command === null || file === undefined) return { misuse };
  return {
    command,
    file,
    options: {
      out: typeof values.out === 'string' ? values.out : null,
      json: values.json === true,
      force: values.force === true,
    },
  };
};
