import { decide } from '../../src/engine/answer/decide.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Facts, Quantity } from '../../src/engine/scenario/inputs/scenario.ts';

/**
 * An invented household: an old wagon with a tired head gasket against a financed hatchback. Its numbers are chosen so
 * that each part of a report has something to say: the three readings disagree, one way overtakes the other, savings
 * fall short on one side. A test that needs an odder decision changes a field of this one.
 */
const HOUSEHOLD = `title: Mend the 2009 wagon, or hand it on?
invented: yes
date: 2026-11-25
miles_a_year: { value: 9000, how: measured, source: 'odometer, two inspections' }
savings_for_this: { value: 2500, how: measured, source: 'bank, 20 November 2026' }
spare_each_month: 300
household: { mechanic: Ren, partner: Ada, price_of_own_hour: 12, at_home: { share: 70 } }
vehicle:
  what: 2009 wagon
  odometer: 171000
  price_when_new: 19000
  sells_for: { running: 1000, as_it_stands: 900, trade_in: { value: 600, how: quoted, source: 'dealer, 18 November 2026' } }
  insurance_a_year: { value: 620, how: measured, source: last bill }
  repairs_a_year: { value: 2200, how: guess, source: 'fleet average by age' }
  fuel: { economy: { value: 24 mpg, how: measured, source: fill-ups since May } }
  inspection_due: 5
work_needed:
  - { job: head gasket, parts: { value: 1240, how: quoted, source: parts counter }, hours: { value: 22, how: guess, source: first time at this job }, shop_price: 3400, can_wait: yes, left: { a_month: 60 }, first_time: yes }
  - { job: front brakes, parts: 140, hours: 4, shop_price: 520, can_wait: no, safety: yes, quote_ends: 2026-12-20, someone_else_pays: 'recall list checked, none open' }
already_spent:
  - { what: last year's tyres, amount: 420, returns: 0 }
replacement:
  what: 2021 hatchback
  odometer: 38000
  price_with_all_fees: 13900
  worth_day_after: 13600
  down_payment: 2000
  loan: { apr: 8.9, months: 66 }
  offer_ends: 2026-12-15
  insurance_a_year: { value: 1080, how: guess, source: a friend pays this }
  fuel: { economy: 33 mpg }
  repairs_a_year: 240
not_money: [crash protection, the dog fits in the back]
big_bills: no
`;

const parsed = parseScenario(HOUSEHOLD, { file: 'fixture.yaml', today: '2026-11-25' });
if ('problems' in parsed) throw new Error(parsed.problems.map((p) => `${p.path}: ${p.message}`).join('\n'));

/** What is decided for it at average inputs. */
export const decision: Decision = decide(parsed.scenario, '0.1.0');
export const facts: Facts = decision.facts;
export const quantities: readonly Quantity[] = decision.quantities;

export const quantity = (key: string): Quantity => {
  const found = quantities.find((one) => one.key === key);
  if (!found) throw new Error(`no quantity ${key}`);
  return found;
};

/** The scenario text embedded with it: short, and awkward on purpose. */
export const scenarioText = `# An invented household.
miles_a_year: 9000
vehicle:
  what: 2009 wagon   # "quoted" & <angled>
`;
