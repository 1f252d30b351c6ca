import { parseCivilDate } from '../../quantity/civilDate.ts';
import { completeScenario } from '../complete/completeScenario.ts';
import * as HOME from '../inputs/householdInputs.ts';
import type { Scenario } from '../inputs/scenario.ts';
import { significant, type Units } from '../inputs/units.ts';
import type { Written } from '../inputs/written.ts';
import { asTold, renamedParts, shownOf, withoutMoney } from '../private/shown.ts';
import { stated } from '../reading/stated.ts';
import { applyRules } from '../rules/applyRules.ts';
import { isMapping, rawView } from '../rules/rawView.ts';
import { findingsOf } from '../schema/issues.ts';
import { type Sparse, scenarioSchema } from '../schema/scenarioSchema.ts';
import { type Locate, readDocument, type Tree } from '../text/document.ts';
import { type Finding, findingId, inOrder, type Problem, pathText, showValue } from '../text/problems.ts';

/** What parsing a scenario needs from outside: the name to print, and the day it is (ISO). */
export interface ParseContext {
  readonly file: string;
  readonly today: string;
}

export type Parsed =
  | {
      readonly scenario: Scenario;
      readonly warnings: readonly Problem[];
      /** Components of the vehicle that are shown under another name than the file's, by the file's. */
      readonly renamed: ReadonlyMap<string, string>;
    }
  | { readonly problems: readonly Problem[] };

/** More than these nobody reads at once. */
const MOST_PROBLEMS = 100;

const DOLLARS: Units = { currency: 'USD', perDollar: 1, distance: 'miles' };

/** The household's units, read ahead of everything else; where they are wrong, the rules say so. */
const unitsOf = (tree: { readonly [key: string]: Tree }): Units => {
  const currency = typeof tree.currency === 'string' ? tree.currency.trim() : DOLLARS.currency;
  const read = tree.per_dollar === undefined ? [] : stated(tree.per_dollar, HOME.PER_DOLLAR, DOLLARS);
  const perDollar = 'value' in read && currency !== 'USD' ? read.value : 1;
  // Where no distance is written the currency tells which unit a household is likely to think in.
  const inKm = tree.km_a_year !== undefined || (tree.miles_a_year === undefined && currency !== 'USD');
  return { currency, perDollar, distance: inKm ? 'km' : 'miles' };
};

const schemas = new Map<string, ReturnType<typeof scenarioSchema>>();

/** The schema in these units, kept from one file to the next: to build it takes longer than to use it. */
const schemaIn = (units: Units): ReturnType<typeof scenarioSchema> => {
  const id = `${units.currency} ${units.perDollar} ${units.distance}`;
  const schema = schemas.get(id) ?? scenarioSchema(units);
  if (schemas.size > 8) schemas.clear();
  schemas.set(id, schema);
  return schema;
};

const placed = (finding: Finding, locate: Locate): Problem => {
  const { path, value, ...rest } = finding;
  const what = rest.kind === 'unknown key' ? 'key' : 'value';
  const { line, column } = locate(path, what);
  return {
    line,
    column,
    path: pathText(path),
    ...rest,
    ...(value === undefined ? {} : { value: showValue(value) }),
  };
};

/** Chances of what is rare, and how they rise. */
const SMALL_BY_NATURE = /^vehicle\.(?:ends|ownDamage)\./;

/** Rates and shares are in percent: 0.074 was most likely meant as 7.4 %. */
const smallRates = ({ quantities }: Scenario): Finding[] =>
  quantities
    .filter(
      ({ key, unit, isDefault, value }) =>
        !isDefault &&
        !SMALL_BY_NATURE.test(key) &&
        (unit === 'share' || unit === 'rate a year') &&
        value > 0 &&
        value < 0.01,
    )
    .map(({ path, value, range }) => ({
      path: range ? `${path}.likely` : path,
      value: range?.likely ?? value,
    }))
    .filter(({ value }) => value > 0)
    .map(({ path, value }) => ({
      kind: 'caution' as const,
      path: path.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step)),
      value: significant(value * 100, 6),
      message: `${significant(value * 100, 6)} % is very little.`,
      remedy: `Rates and shares are in percent. Did you mean ${significant(value * 10_000, 6)} %?`,
    }));

/** One problem for one place and kind: a rule and the schema may both see that something is missing. */
const once = (findings: readonly Finding[]): Finding[] => {
  const seen = new Set<string>();
  return findings.filter((finding) => {
    const id = findingId(finding);
    if (seen.has(id)) return false;
    seen.add(id);
    return true;
  });
};

const notAScenario = (message: string, kind: Problem['kind']): Parsed => ({
  problems: [
    {
      line: 1,
      column: 1,
      path: '',
      kind,
      message,
      remedy: 'A scenario is a list of keys, such as "miles_a_year: 9000".',
    },
  ],
});

/**
 * Reads a scenario: YAML 1.2 text in, a complete scenario with warnings out, or every problem at once, in the order of
 * the text. Never throws, whatever the text; nothing is read from anywhere else.
 */
export const parseScenario = (text: string, context: ParseContext): Parsed => {
  const { tree, locate, problems } = readDocument(text);
  if (problems.length > 0) return { problems: inOrder(problems).slice(0, MOST_PROBLEMS) };
  if (tree === null) return notAScenario('This file is empty.', 'empty');
  if (!isMapping(tree)) return notAScenario('This is not a scenario.', 'wrong shape');
  const units = unitsOf(tree);
  const day = tree.date;
  const date = typeof day === 'string' && parseCivilDate(day) ? day : context.today;
  // What is wrong is found out about the file as it is written, and told of the file as it may be shown.
  const written = checked({ tree, units, date }, context.today);
  const shown = shownOf(text, tree);
  if (shown.problems.length > 0) return { problems: shown.problems };
  const kept: Written = { tree: shown.tree, units, date };
  const told = shown.tree === tree ? written : checked(kept, context.today);
  const found = once(written.problems.length > 0 ? asTold(written.problems, told.problems) : told.problems);
  const read = found.length > 0 ? { problems: found } : completed(kept, told);
  if ('problems' in read)
    return {
      problems: inOrder(read.problems.map((finding) => placed(finding, locate))).slice(0, MOST_PROBLEMS),
    };
  const warnings = [...asTold(written.warnings, told.warnings), ...smallRates(read.scenario)];
  return {
    scenario: withoutMoney(read.scenario, tree),
    warnings: inOrder(once(warnings).map((finding) => placed(finding, locate))),
    renamed: renamedParts(tree, shown.tree),
  };
};

/** A tree as schema and rules find it. */
interface Checked {
  readonly shaped: ReturnType<ReturnType<typeof scenarioSchema>['safeParse']>;
  readonly problems: readonly Finding[];
  readonly warnings: readonly Finding[];
}

const checked = ({ tree, units, date }: Written, today: string): Checked => {
  const schema = schemaIn(units);
  const shaped = schema.safeParse(tree);
  const ruled = applyRules(rawView(tree, units, date, today));
  const shape = shaped.success ? [] : findingsOf(schema, tree, shaped.error.issues);
  return { shaped, problems: once([...shape, ...ruled.problems]), warnings: once(ruled.warnings) };
};

type Read =
  | { readonly scenario: Scenario; readonly warnings: readonly Finding[] }
  | { readonly problems: readonly Finding[] };

const completed = (written: Written, { shaped, problems, warnings }: Checked): Read => {
  if (problems.length > 0 || !shaped.success) return { problems };
  const { scenario, findings } = completeScenario(shaped.data, written.units, written.date);
  return findings.length > 0 ? { problems: findings } : { scenario: { ...scenario, written }, warnings };
};

/** A file's tree read: schema, rules, and everything filled in. Dates are held against the day of the decision. */
export const readTree = (written: Written): Read => completed(written, checked(written, written.date));

/** A tree that was read without a problem, as the schema has it. */
export const sparseOf = ({ tree, units }: Written): Sparse => schemaIn(units).parse(tree);
