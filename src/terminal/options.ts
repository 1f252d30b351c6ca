import { nearest } from '../engine/scenario/text/nearest.ts';
import { FEWEST, MOST } from './futures.ts';
import { grouped, wholeNumber } from './number.ts';

export interface Options {
  readonly out: string | null;
  readonly json: boolean;
  readonly force: boolean;
  /** How many futures to draw, 0 for none; null: as many as the scenario says. */
  readonly futures: number | null;
  /** What the futures are drawn from; null: what the scenario says. */
  readonly seed: number | null;
  /** Numbers changed for a look, as typed: "vehicle.odometer=180000". */
  readonly set: readonly string[];
}

/** Every option there is, as `parseArgs` wants them. */
export const OPTIONS = {
  out: { type: 'string' },
  json: { type: 'boolean' },
  force: { type: 'boolean' },
  futures: { type: 'string' },
  seed: { type: 'string' },
  set: { type: 'string', multiple: true },
  help: { type: 'boolean', short: 'h' },
  version: { type: 'boolean' },
} as const;

/** What `parseArgs` makes of one option on the command line. */
export interface OptionToken {
  readonly name: string;
  readonly rawName: string;
  readonly value: string | undefined;
  readonly inlineValue: boolean | undefined;
}

const LAST_SEED = 2 ** 32 - 1;

const VALUES: Readonly<Record<string, { needs: string; wrong: (value: string) => string | null }>> = {
  out: { needs: 'the name of a file', wrong: () => null },
  set: {
    needs: 'a place of the file and a figure',
    wrong: (value) =>
      /^[^=\s]+=./.test(value)
        ? null
        : `--set takes a place of the file and a figure, such as --set vehicle.odometer=180000; "${value}" is not.`,
  },
  futures: {
    needs: 'a number',
    wrong: (value) => {
      const futures = wholeNumber(value);
      return futures === 0 || (futures !== null && futures >= FEWEST && futures <= MOST)
        ? null
        : `--futures takes a whole number from ${grouped(FEWEST)} to ${grouped(MOST)}, or 0 for none; "${value}" is not.`;
    },
  },
  seed: {
    needs: 'a number',
    wrong: (value) => {
      const seed = wholeNumber(value);
      return seed !== null && seed <= LAST_SEED
        ? null
        : `--seed takes a whole number from 0 to ${grouped(LAST_SEED)}; "${value}" is not.`;
    },
  },
};

/**
 * What is wrong with the options, one line for each.
 *
 * @param command null where that is wrong already: then only options that no command has are told
 * @param allowed the options it understands
 */
export const optionMisuse = (
  tokens: readonly OptionToken[],
  command: string | null,
  allowed: readonly string[],
): string[] => {
  const seen = new Set<string>();
  return tokens.flatMap((token) => {
    const { name, rawName } = token;
    const again = seen.has(name);
    seen.add(name);
    if (!Object.hasOwn(OPTIONS, name)) {
      // "-50" reads as options; as an amount it is no better.
      if (/^\d/.test(name)) return again ? [] : [`${rawName} is neither an option nor an amount.`];
      const close = nearest(name, Object.keys(OPTIONS));
      return `There is no option "${rawName}".${close === null ? '' : ` Did you mean "--${close}"?`}`;
    }
    if (command !== null && !allowed.includes(name))
      return `"stillworth ${command}" has no option ${rawName}.`;
    if (again && name !== 'set') return `${rawName} is given twice.`;
    return valueMisuse(token) ?? [];
  });
};

const valueMisuse = ({ name, rawName, value, inlineValue }: OptionToken): string | null => {
  const kind = VALUES[name];
  if (kind === undefined)
    return value === undefined ? null : `${rawName} takes no value; leave out "=${value}".`;
  // Without strict parsing "--out --json" would take "--json" for a file's name.
  const taken = inlineValue === false && value !== '-' && value?.startsWith('-') === true;
  return !value || taken ? `--${name} needs ${kind.needs} after it.` : kind.wrong(value);
};

/** The options' values, once nothing is wrong with them. */
export const optionsOf = (values: Readonly<Record<string, unknown>>): Options => {
  const typed = (name: string): string | null => {
    const value = values[name];
    return typeof value === 'string' ? value : null;
  };
  const [futures, seed] = [typed('futures'), typed('seed')];
  return {
    out: typed('out'),
    json: values.json === true,
    force: values.force === true,
    futures: futures === null ? null : wholeNumber(futures),
    seed: seed === null ? null : wholeNumber(seed),
    set: Array.isArray(values.set) ? values.set.map(String) : [],
  };
};
