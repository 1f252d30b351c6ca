/** Scenarios and inputs from callers nobody has read yet. Each throws as `wants.ts` says; a file's text never does. */
import { parseCivilDate } from '../engine/quantity/civilDate.ts';
import { LONGEST_HORIZON } from '../engine/quantity/month.ts';
import * as parse from '../engine/scenario/file/parse.ts';
import * as starting from '../engine/scenario/file/starting.ts';
import type {
  BillChange,
  DoneBy,
  EndOfLife,
  Inputs,
  Payment,
  Replacement,
} from '../engine/scenario/inputs/inputs.ts';
import { inputAt } from '../engine/scenario/inputs/lens.ts';
import type { EnergyStated, Quantity, Scenario } from '../engine/scenario/inputs/scenario.ts';
import type { VehicleKind } from '../engine/scenario/inputs/tables.ts';
import type { Written } from '../engine/scenario/inputs/written.ts';
import * as problems from '../engine/scenario/text/problems.ts';
import { guarded } from './guarded.ts';
import { TIME_LIMITS } from './times.ts';
import { all, choice, flag, holds, list, number, orNull, row, text, type Want, whole } from './wants.ts';

/** A day of the calendar as ISO 8601 has it. */
const day: Want = all(
  text,
  holds<string>(
    'a day of the calendar is wanted, such as 2026-11-25',
    (value) => parseCivilDate(value) !== null,
  ),
);

/**
 * Reads a scenario: YAML 1.2 text in, a complete scenario with warnings out, or every problem at once. Whatever the text
 * says is no error; TypeError or RangeError where `text` is none or `today` is no ISO day.
 */
export const parseScenario = guarded(
  'parseScenario',
  { text, context: row({ file: text, today: day }) },
  parse.parseScenario,
);

/** A scenario to start from, complete as it stands. TypeError or RangeError unless `today` is an ISO day. */
export const startingScenario = guarded('startingScenario', { today: day }, starting.startingScenario);

/** One line: `file:line:column: path: what is wrong. What to do.` TypeError for what is no problem. */
export const problemText = guarded(
  'problemText',
  { file: text, problem: row({ line: whole(1), column: whole(1), path: text, message: text, remedy: text }) },
  problems.problemText,
);

const words = <K extends string>(known: Readonly<Record<K, true>>): Want => choice(...Object.keys(known));

/** Where inputs hold a choice, which there are; the compiler keeps them in step with the types. */
const CHOICES: Readonly<Record<string, Want>> = {
  bodyStyle: words<VehicleKind>({ car: true, suv: true, truck: true }),
  by: words<DoneBy>({ own: true, shop: true }),
  stated: words<EnergyStated>({ per100: true, perUnit: true }),
  condition: words<Replacement['condition']>({ new: true, used: true }),
  afterwards: words<Extract<Payment, { kind: 'lease' }>['afterwards']>({ again: true, buy: true }),
  clock: words<Inputs['vehicle']['components'][number]['clock']>({ distance: true, months: true }),
  repairIs: words<Inputs['vehicle']['components'][number]['repairIs']>({ renewal: true, patch: true }),
};

/** What may be called by a number: "2", for a part. */
const NAMES: readonly string[] = ['name', 'what', 'why'] satisfies (
  | keyof EndOfLife
  | keyof Replacement
  | keyof BillChange
)[];

/** Every number of the inputs is one, every time as long as a file may make it; no text stands where a number would; what is chosen is spelt as it should be. */
const sound = (value: unknown, at: string, name: string): void => {
  if (typeof value === 'string') {
    if (Object.hasOwn(CHOICES, name)) CHOICES[name]?.(value, at);
    else if (!NAMES.includes(name) && value.trim() !== '' && !Number.isNaN(Number(value)))
      number()(value, at);
  } else if (typeof value === 'object' && value !== null) {
    for (const [inner, one] of Object.entries(value)) sound(one, `${at}.${inner}`, inner);
  } else if (value !== null && typeof value !== 'boolean') number(TIME_LIMITS.get(name))(value, at);
};

/** Inputs as `parseScenario` makes them, or with other numbers in them. */
export const inputs: Want = (value, at) => {
  row({
    household: row({ lookAhead: whole(1, LONGEST_HORIZON), moneyEarns: number({ above: -1 }) }),
    vehicle: row({}),
    workNeeded: list(row({})),
    replacement: list(row({})),
    doingWithout: orNull(row({})),
    anotherLikeOurs: orNull(row({})),
    usualLike: row({}),
    claim: orNull(row({})),
  })(value, at);
  sound(value, at, '');
};

/** What stands beside the inputs: taken as it comes from `parseScenario`. */
export const facts: Want = (value, at) => {
  row({
    date: day,
    perDollar: number({ above: 0 }),
    sunk: list(row({ amount: number(), returns: number() })),
    jobs: list(row({ name: text, alreadySpent: number() })),
    chance: row({
      seed: whole(0),
      futures: whole(0),
      mayRunDry: number({ from: 0, to: 1 }),
      monthsWithoutIncome: number({ from: 0 }),
      setAside: orNull(number()),
      looks: list(
        row({ costs: number(), component: whole(0), within: number(), sees: number(), clears: number() }),
      ),
    }),
  })(value, at);
};

/** What a file can hold: text, numbers, yes or no, nothing, lists and mappings of these. */
const plain: Want = (value, at) => {
  if (value === null || ['string', 'number', 'boolean'].includes(typeof value)) return;
  if (Array.isArray(value)) list(plain)(value, at);
  else row(Object.fromEntries(Object.keys(Object(value)).map((key) => [key, plain])))(value, at);
};

/** A file's tree that reads without a problem: the solver types numbers into it and reads it anew. */
const readable: Want = (value, at) => {
  const read = parse.readTree(value as Written);
  const [problem] = 'problems' in read ? read.problems : [];
  if (problem === undefined) return;
  const place = [`${at}.tree`, problems.pathText(problem.path)].filter((part) => part !== '').join('.');
  throw new RangeError(`${place}: ${problem.message} ${problem.remedy}`);
};

const written: Want = all(
  row({
    date: day,
    units: row({ currency: text, perDollar: number({ above: 0 }), distance: choice('miles', 'km') }),
    tree: all(row({}), plain),
  }),
  readable,
);

/** A whole number is tried at every value it may take. */
const MOST_VALUES = 2000;

const quantity: Want = all(
  row({
    key: text,
    value: number(),
    min: number(),
    max: number(),
    integer: flag,
    moves: list(row({ key: text, times: number(), plus: number() })),
  }),
  holds<Quantity>(
    `a whole number that may take ${MOST_VALUES} values at most is wanted`,
    ({ integer, min, max }) => !integer || (Number.isInteger(min) && max - min < MOST_VALUES),
  ),
);

/** A scenario as `parseScenario` makes it, or with other numbers in it: every place that a quantity moves is there. */
export const scenario: Want = (value, at) => {
  row({
    facts,
    inputs,
    quantities: list(quantity),
    written: orNull(written),
  })(value, at);
  const { quantities, inputs: given } = value as Scenario;
  for (const { moves } of quantities) for (const { key } of moves) inputAt(given, key);
};
