import { DEFAULTS, type Default } from '../inputs/defaults.ts';
import { UPKEEP_PER_MILE_2019 } from '../inputs/tables.ts';
import { significant } from '../inputs/units.ts';

const EXAMPLE = { running: 3400, asItStands: 900, price: 17_800 } as const;

const percent = (one: Default): string => `${significant(one.value * 100, 6)} %`;
const plain = (one: Default): string => String(one.value);

const range = ({ low, likely, high }: NonNullable<Default['range']>): string =>
  `{ low: ${low}, likely: ${likely}, high: ${high} }`;

/** One default as a line of the file, marked as a comment from its first column; take "# " away and it counts. */
const line = (indent: number, key: string, value: string, why: string): string =>
  `${`# ${' '.repeat(indent)}${key}: ${value}`.padEnd(44)} # ${why}`;

const of = (indent: number, key: string, one: Default, value = plain(one)): string =>
  line(indent, key, value, `${one.unit}; ${one.source}`);

const household = (): string[] => {
  const D = DEFAULTS.household;
  const families = ['energy', 'insurance', 'repairs', 'own_hour', 'vehicles', 'fees'];
  return [
    '# household:',
    of(2, 'look_ahead', D.lookAhead),
    of(2, 'money_earns', D.moneyEarns, percent(D.moneyEarns)),
    of(2, 'price_of_own_hour', D.priceOfOwnHour),
    of(2, 'day_without', D.dayWithout),
    of(2, 'card_rate', D.cardRate, percent(D.cardRate)),
    of(2, 'table_price_ratio', D.tablePriceRatio),
    '#   prices_rise:',
    of(4, 'general', D.general, percent(D.general)),
    ...families.map((family) => line(4, family, percent(D.general), 'a year; as prices in general')),
    '#   at_home:',
    of(4, 'share', D.ownShare, percent(D.ownShare)),
    of(4, 'parts_share', D.partsShare, percent(D.partsShare)),
    of(4, 'shop_hour', D.shopHour),
  ];
};

/** The running costs that any vehicle may state, below its own indentation. */
const running = (): string[] => {
  const D = DEFAULTS.running;
  const upkeep = significant(UPKEEP_PER_MILE_2019.combustion * DEFAULTS.household.tablePriceRatio.value, 12);
  return [
    line(2, 'kind', 'car', 'or suv, truck: the column of the repair table'),
    line(2, 'powertrain', 'combustion', 'or hybrid, plug_in, battery'),
    line(
      2,
      'fuel',
      `{ economy: ${D.milesPerGallon.value} mpg, price: ${D.pricePerGallon.value} }`,
      `a US gallon; ${D.milesPerGallon.source}; give it for both vehicles or for none`,
    ),
    of(2, 'registration_a_year', D.registration),
    of(2, 'inspection_a_year', D.inspection),
    of(2, 'tax_a_year', D.tax),
    of(2, 'parking_a_month', D.parking),
    line(2, 'upkeep_a_mile', String(upkeep), "dollars; the average of the table, at today's prices"),
    of(2, 'repairs_factor', D.repairsFactor),
    of(2, 'usual_repair', D.usualRepair, range(D.usualRepair.range)),
    of(2, 'strands', D.strands, percent(D.strands)),
    line(
      2,
      'guarantee',
      `{ months: ${D.guaranteeMonths.value}, miles: ${D.guaranteeDistance.value} }`,
      D.guaranteeMonths.source,
    ),
    line(
      2,
      'value_falls',
      `{ a_year: ${percent(D.decline)}, a_mile: ${D.declinePerDistance.value} }`,
      D.decline.source,
    ),
    of(2, 'title_factor', D.brandFactor, percent(D.brandFactor)),
    line(
      2,
      'selling',
      `{ cost: ${D.sellingCost.value}, hours: ${D.sellingHours.value}, weeks: ${D.sellingWeeks.value} }`,
      D.sellingHours.source,
    ),
  ];
};

const vehicle = (): string[] => {
  const D = DEFAULTS.vehicle;
  const scrap = EXAMPLE.asItStands * D.scrapOfAsItStands.value;
  const bills = ['insurance', 'registration', 'inspection', 'tax'];
  return [
    'vehicle:',
    '  what: 2009 wagon',
    '  odometer: 171000',
    '  price_when_new: 19000',
    '  sells_for:',
    `    running: ${EXAMPLE.running}`,
    `    as_it_stands: ${EXAMPLE.asItStands}`,
    '    trade_in: 600',
    line(
      4,
      'scrap',
      String(scrap),
      `dollars; ${D.scrapOfAsItStands.source}: half of what it brings as it stands`,
    ),
    '  insurance_a_year: 620',
    ...running(),
    ...bills.map((bill) => of(2, `${bill}_due`, DEFAULTS.running.due)),
    line(2, 'floor', String(scrap), 'dollars; the least it ever brings: as scrap'),
    of(2, 'storage_a_day', D.storage),
    line(
      2,
      'in_a_hurry',
      `{ adds: ${D.hurryAdds.value}, days: ${D.hurryDays.value}, loan_refused: ${percent(D.refused)}, refused_costs: ${D.refusedCosts.value} }`,
      `dollars, days; ${D.hurryAdds.source}`,
    ),
    line(2, 'recall_checked', 'no', "look it up in the maker's list today: the remedy is free"),
    line(2, 'structural_rust', 'none', 'or unknown, found'),
  ];
};

const work = (): string[] => {
  const D = DEFAULTS.work;
  return [
    'work_needed:',
    '  - job: head gasket',
    '    parts: 640',
    '    hours: 22',
    '    shop_price: 2900',
    '    can_wait: no                            # no, yes, or so many months: never assumed',
    line(4, 'may_be_driven', 'to_the_shop', 'or yes, no; the job itself says it unless told'),
    line(4, 'by', 'own', 'own hands where hours are given, else shop'),
    of(4, 'not_cured', D.chanceNotCured, `{ chance: ${D.chanceNotCured.value} }`),
    of(4, 'more_found', D.chanceMoreFound, `{ chance: ${D.chanceMoreFound.value} }`),
    line(
      4,
      'left',
      `{ a_month: ${D.leftAMonth.value}, value_lost: ${D.valueLost.value} }`,
      D.leftAMonth.source,
    ),
    of(4, 'buyer_pays', D.buyerPays),
    of(4, 'days_without', D.daysWithout),
    '  - { job: front brakes, parts: 140, hours: 4, shop_price: 520, can_wait: no, safety: yes }',
  ];
};

/** How the future is drawn. */
const chance = (): string[] => {
  const D = DEFAULTS.chance;
  return [
    '# chance:',
    of(2, 'seed', D.seed),
    of(2, 'futures', D.futures),
    of(2, 'may_run_dry', D.mayRunDry, percent(D.mayRunDry)),
    of(2, 'months_without_income', D.monthsWithoutIncome),
  ];
};

const replacement = (): string[] => {
  const D = DEFAULTS.purchase;
  const { price } = EXAMPLE;
  const worth = significant(price * D.worthDayAfter.value, 12);
  const floor = significant(price * DEFAULTS.running.floorOfPrice.value, 12);
  return [
    'replacement:',
    '  what: 2021 hatchback',
    '  odometer: 38000',
    `  price_with_all_fees: ${price}`,
    '  down_payment: 2000',
    '  loan:',
    '    apr: 8.9 %',
    '    months: 66',
    of(4, 'first_payment', D.firstPayment),
    '  insurance_a_year: 1350',
    line(2, 'price_when_new', String(price), 'dollars; taken as its price'),
    line(
      2,
      'worth_day_after',
      String(worth),
      `dollars; ${D.worthDayAfter.source}: ${percent(D.worthDayAfter)} of its price`,
    ),
    of(2, 'rebate', D.rebate),
    of(2, 'inspection_before', D.inspectionBefore),
    of(2, 'catch_up', D.catchUp),
    line(
      2,
      'floor',
      String(floor),
      `dollars; ${percent(DEFAULTS.running.floorOfPrice)} of its price, our guess`,
    ),
    ...running(),
  ];
};

/**
 * A scenario to start from: the short form filled with an invented household, and every default beside it as a
 * comment, made from the defaults themselves. It is a complete scenario as it stands.
 *
 * @param today the day of the decision, ISO.
 */
export const startingScenario = (today: string): string =>
  [
    '## Mend it, or hand it on and take a payment? The figures are invented: put yours in their place.',
    '## A line that begins with "# " shows a default. Take "# " away (and from the key it stands under) to change it.',
    '## A figure may carry its unit and whose it is:  { value: 640, how: quoted, source: the shop on the corner }',
    '## What nobody knows exactly may be a range of three points, each with its unit; one in ten lies below low, one in ten',
    '## above high:  { low: 7500, likely: 9000, high: 10500 }   or   { low: 22 mpg, likely: 25 mpg, high: 27 mpg }',
    `date: ${today}`,
    'miles_a_year: 9000                          # or km_a_year: it sets the unit of the whole file',
    'spare_each_month: 300',
    'savings_for_this: 2500',
    '',
    ...household(),
    '',
    ...vehicle(),
    '',
    ...work(),
    '',
    '## One replacement, or a list of them; bought with "loan:", "cash: yes" or "lease:".',
    ...replacement(),
    '',
    ...chance(),
    '',
  ].join('\n');
