import type { Default, Group, Input } from '../inputs/declared.ts';
import * as HOME from '../inputs/householdInputs.ts';
import { LIKE_OURS } from '../inputs/likeInputs.ts';
import * as OWNED from '../inputs/ownedInputs.ts';
import * as PURCHASE from '../inputs/purchaseInputs.ts';
import { milesAGallon, UPKEEP_PER_MILE_2019 } from '../inputs/tables.ts';
import { significant } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import * as WORK from '../inputs/workInputs.ts';

const EXAMPLE = { running: 3400, asItStands: 900, price: 17_800 } as const;

const percent = (one: Default): string => `${significant(one.value * 100, 6)} %`;

const range = ({ low, likely, high }: NonNullable<Default['range']>): string =>
  `{ low: ${low}, likely: ${likely}, high: ${high} }`;

/** One default as a line of the file, marked as a comment from its first column; take "# " away and it counts. */
const line = (indent: number, key: string, value: string, why: string): string =>
  `${`# ${' '.repeat(indent)}${key}: ${value}`.padEnd(44)} # ${why}`;

type Defaulted = Input & { readonly or: Default };

const hasDefault = (one: Input): one is Defaulted => one.or !== undefined;

/** A default as a household would write it. */
const figure = ({ unit, or }: Defaulted): string => {
  if (or.range) return range(or.range);
  return unit === 'share' || unit === 'rate a year' ? percent(or) : String(or.value);
};

/** A number's line: its default, what that counts, and where it comes from. */
const of = (indent: number, one: Defaulted, value = figure(one)): string =>
  line(indent, one.key, value, `${one.or.unit}; ${one.or.source}`);

/** The lines of those of a group that have a default. */
const all = (indent: number, group: Group): string[] =>
  Object.values(group)
    .filter(hasDefault)
    .map((one) => of(indent, one));

/** A group as a mapping on one line. */
const mapping = (
  indent: number,
  key: string,
  group: Readonly<Record<string, Defaulted>>,
  why: string,
): string => {
  const figures = Object.values(group).map((one) => `${one.key}: ${figure(one)}`);
  return line(indent, key, `{ ${figures.join(', ')} }`, why);
};

const household = (): string[] => {
  const rise = percent(HOME.GENERAL_RISE.general.or);
  return [
    '# household:',
    ...all(2, HOME.HOUSEHOLD),
    ...all(2, HOME.HOUSEHOLD_MORE),
    '#   prices_rise:',
    ...all(4, HOME.GENERAL_RISE),
    ...Object.values(HOME.FAMILIES_RISE).map(({ key }) => line(4, key, rise, 'a year; as prices in general')),
    '#   at_home:',
    ...all(4, HOME.AT_HOME),
  ];
};

/** The running costs that any vehicle may state, below its own indentation. */
const running = (modelYear: number): string[] => {
  const { pricePerGallon: price } = VEHICLE.USUAL_ENERGY;
  const economy = significant(milesAGallon('car', modelYear), 3);
  const upkeep = significant(
    UPKEEP_PER_MILE_2019.combustion * HOME.HOUSEHOLD_MORE.tablePriceRatio.or.value,
    12,
  );
  return [
    line(2, 'kind', 'car', 'or suv, truck: the column of the repair table'),
    line(2, 'powertrain', 'combustion', 'or hybrid, plug_in, battery'),
    line(
      2,
      'fuel',
      `{ economy: ${economy} mpg, price: ${price.value} }`,
      'a US gallon; a table by kind and model year stands in, best given for both vehicles or for none',
    ),
    ...all(2, { ...VEHICLE.A_YEAR, ...VEHICLE.MONTHLY_BILLS }),
    line(2, 'upkeep_a_mile', String(upkeep), "dollars; the average of the table, at today's prices"),
    ...all(2, VEHICLE.REPAIRS),
    mapping(
      2,
      'guarantee',
      { ...VEHICLE.GUARANTEE, miles: VEHICLE.GUARANTEE_DISTANCE.miles },
      VEHICLE.GUARANTEE.months.or.source,
    ),
    mapping(
      2,
      'value_falls',
      { ...VEHICLE.DECLINE, mile: VEHICLE.DECLINE_PER_DISTANCE.miles, ...VEHICLE.RUNNING_ONE },
      VEHICLE.DECLINE.perYear.or.source,
    ),
    of(2, VEHICLE.WORTH.brandFactor),
    mapping(2, 'selling', VEHICLE.SELLING, VEHICLE.SELLING.hours.or.source),
  ];
};

const vehicle = (): string[] => {
  const scrap = EXAMPLE.asItStands * OWNED.SALE.scrap.or.value;
  return [
    'vehicle:',
    '  what: 2009 wagon',
    '  odometer: 171000',
    '  price_when_new: 19000',
    '  sells_for:',
    `    running: ${EXAMPLE.running}`,
    `    as_it_stands: ${EXAMPLE.asItStands}`,
    '    trade_in: 600',
    line(4, 'broken_down', String(EXAMPLE.asItStands), 'dollars; as it stands, where it needs work today'),
    line(
      4,
      'scrap',
      String(scrap),
      `dollars; ${OWNED.SALE.scrap.or.source}: half of what it brings as it stands`,
    ),
    '  insurance_a_year: 620',
    '  ## changes: what is another figure from a date on: [{ from: year-month, insurance_a_year: 480, why: a cover is dropped }]',
    ...running(2009),
    ...all(2, VEHICLE.DUE),
    line(2, 'floor', String(scrap), 'dollars; the least it ever brings: as scrap'),
    ...all(2, OWNED.STANDING),
    mapping(2, 'in_a_hurry', OWNED.HURRY, `dollars, days; ${OWNED.HURRY.adds.or.source}`),
    line(2, 'recall_checked', 'no', "look it up in the maker's list today: the remedy is free"),
    '  ## structural_rust: none, unknown or found; nobody has said',
  ];
};

const work = (): string[] => [
  'work_needed:',
  '  - job: head gasket',
  '    parts: 640',
  '    hours: 22',
  '    shop_price: 2900',
  '    can_wait: no                            # no, yes, or so many months: never assumed',
  line(4, 'may_be_driven', 'to_the_shop', 'or yes, no; the job itself says it unless told'),
  line(4, 'by', 'own', 'own hands where hours are given, else shop'),
  of(4, { ...WORK.NOT_CURED.chance, key: 'not_cured' }, `{ chance: ${WORK.NOT_CURED.chance.or.value} }`),
  of(4, { ...WORK.MORE_FOUND.chance, key: 'more_found' }, `{ chance: ${WORK.MORE_FOUND.chance.or.value} }`),
  mapping(4, 'left', WORK.LEFT, WORK.LEFT.aMonth.or.source),
  of(4, WORK.JOB.buyerPays, String(WORK.JOB.buyerPays.or.value)),
  of(4, WORK.JOB.daysWithout),
  '  - { job: front brakes, parts: 140, hours: 4, shop_price: 520, can_wait: no, safety: yes }',
];

/** Another one like it, which is there unless told. */
const likeOurs = (): string[] => ['# another_like_ours:', ...all(2, LIKE_OURS)];

/** How the future is drawn. */
const chance = (): string[] => ['# chance:', ...all(2, HOME.CHANCE)];

const replacement = (today: string): string[] => {
  const { price } = EXAMPLE;
  const worth = PURCHASE.OFFER.worthDayAfter.or;
  const floor = VEHICLE.WORTH.floor.or;
  const fees = LIKE_OURS.taxAndFees.or;
  return [
    'replacement:',
    '  what: 2021 hatchback',
    '  odometer: 38000',
    `  price_with_all_fees: ${price}`,
    '  down_payment: 2000',
    '  loan:',
    '    apr: 8.9 %',
    '    months: 66',
    of(4, PURCHASE.LOAN.firstPayment),
    '  insurance_a_year: 1350',
    line(
      2,
      'price_when_new',
      String(PURCHASE.usualWhenNew(price, Number(today.slice(0, 4)) - 2021)),
      `dollars; our guess: its price and ${PURCHASE.DEARER_WHEN_NEW * 100} % for each year of its age`,
    ),
    line(
      2,
      'worth_day_after',
      String(PURCHASE.usualWorthDayAfter(price, fees.value)),
      `dollars; ${worth.source}: ${percent(worth)} of its price without ${percent(fees)} of tax and fees`,
    ),
    of(2, PURCHASE.OFFER.rebate),
    ...all(2, PURCHASE.FIRST_YEAR),
    line(
      2,
      'floor',
      String(significant(price * floor.value, 12)),
      `dollars; ${percent(floor)} of its price, our guess`,
    ),
    ...running(2021),
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
    ...all(0, HOME.BIG_BILLS),
    '',
    ...household(),
    '',
    ...vehicle(),
    '',
    ...work(),
    '',
    '## One replacement, or a list of them; bought with "loan:", "cash: yes" or "lease:".',
    ...replacement(today),
    '',
    ...likeOurs(),
    '',
    ...chance(),
    '',
  ].join('\n');
