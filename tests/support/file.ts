/** An invented scenario file as an object, to change one thing of and decide. */
import { stringify } from 'yaml';
import { decide } from '../../src/engine/answer/decide.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';

export type Tree = { [key: string]: unknown };

/** The short form, fresh each time. */
export const shortForm = () => ({
  another_like_ours: 'no',
  big_bills: 'no',
  miles_a_year: 9000,
  spare_each_month: 300,
  savings_for_this: 2500,
  vehicle: {
    what: '2009 wagon',
    odometer: 171000,
    price_when_new: 19000,
    sells_for: { running: 3400, as_it_stands: 900, trade_in: 600 },
    insurance_a_year: 620,
  } as Tree,
  work_needed: [
    { job: 'head gasket', parts: 640, hours: 22, shop_price: 2900, can_wait: 'no' },
    { job: 'front brakes', parts: 140, hours: 4, shop_price: 520, can_wait: 'no', safety: 'yes' },
  ] as Tree[],
  replacement: {
    what: '2021 hatchback',
    odometer: 38000,
    price_with_all_fees: 17800,
    down_payment: 2000,
    loan: { apr: 8.9, months: 66 },
    insurance_a_year: 1350,
  } as Tree,
});

export type File = ReturnType<typeof shortForm> & Tree;

const parsed = (file: Tree) => parseScenario(stringify(file), { file: 'test.yaml', today: '2026-11-25' });

/** The short form with one change, read. Throws with the problems if it is refused. */
export const scenarioOf = (change: (file: File) => void = () => undefined): Scenario => {
  const file: File = shortForm();
  change(file);
  const result = parsed(file);
  if ('problems' in result) throw new Error(result.problems.map((p) => `${p.path}: ${p.message}`).join('\n'));
  return result.scenario;
};

/** The same, decided. */
export const decisionOf = (change?: (file: File) => void): Decision => decide(scenarioOf(change), 'test');

/** What the reader says against a change. */
export const problemsOf = (change: (file: File) => void) => {
  const file: File = shortForm();
  change(file);
  const result = parsed(file);
  return 'problems' in result ? result.problems : [];
};

/** What it warns of. */
export const warningsOf = (change: (file: File) => void) => {
  const file: File = shortForm();
  change(file);
  const result = parsed(file);
  return 'warnings' in result ? result.warnings : [];
};
