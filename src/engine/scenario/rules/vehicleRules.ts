import { energyPriceIn } from '../../quantity/energyUnits.ts';
import * as OWNED from '../inputs/ownedInputs.ts';
import type { Units } from '../inputs/units.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import * as WORK from '../inputs/workInputs.ts';
import { economyOf, economyRange, pricedIn, pricedUnit, usualForm } from '../reading/economy.ts';
import { mainFigure } from '../reading/stated.ts';
import { moneyText } from '../text/amounts.ts';
import { type Finding, type Path, showValue } from '../text/problems.ts';
import { yearOf } from '../text/year.ts';
import type { Raw } from './rawView.ts';

/** The paths of every vehicle in the file. */
export const vehiclesOf = (raw: Raw): Path[] => [
  ...(raw.has(['vehicle']) ? [['vehicle'] as Path] : []),
  ...raw.replacements,
];

/** The model year: as given, or in the vehicle's name; undefined where there is none. */
export const modelYear = (raw: Raw, at: Path): number | undefined => {
  const what = raw.text([...at, 'what']);
  const named = what === undefined ? null : yearOf(what);
  return raw.num([...at, 'year'], VEHICLE.MODEL_YEAR.age) ?? named ?? undefined;
};

const isNew = (raw: Raw, at: Path): boolean => {
  const condition = raw.word([...at, 'condition']);
  if (condition !== undefined) return condition === 'new';
  const odometer = raw.num([...at, 'odometer'], VEHICLE.PRESENT.odometer);
  return odometer !== undefined && odometer <= 100;
};

/** Every vehicle that is not new needs its model year; none is of a year to come (next year's models are sold early). */
export const yearKnown = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((at): Finding[] => {
    const year = modelYear(raw, at);
    const now = Number(raw.date.slice(0, 4));
    if (year !== undefined && year > now + 1)
      return [
        {
          kind: 'out of range',
          path: [...at, raw.has([...at, 'year']) ? 'year' : 'what'],
          value: year,
          message: `${year} is a model year to come.`,
          remedy: `The decision is of ${raw.date}; give the model year.`,
        },
      ];
    const named = raw.text([...at, 'what']) !== undefined;
    if (year !== undefined || raw.has([...at, 'year']) || !named || isNew(raw, at)) return [];
    return [
      {
        kind: 'missing',
        path: [...at, 'year'],
        message: 'The model year is missing.',
        remedy: 'Write "year:", or put it into "what:", such as "2009 wagon".',
      },
    ];
  });

/** Three prices of one day: as it stands is never above running, and a dealer seldom pays more than a person. */
export const salePrices = (raw: Raw): { problems: Finding[]; warnings: Finding[] } => {
  const at: Path = ['vehicle', 'sells_for'];
  const running = raw.num([...at, 'running'], OWNED.SALE.running);
  const asItStands = raw.num([...at, 'as_it_stands'], OWNED.SALE.asItStands);
  const scrap = raw.num([...at, 'scrap'], OWNED.SALE.scrap);
  const above = (key: string, message: string): Finding => ({
    kind: 'contradiction',
    path: [...at, key],
    value: raw.at([...at, key]),
    message,
    remedy: 'Look at the two prices again.',
  });
  const problems: Finding[] = [];
  if (running !== undefined && asItStands !== undefined && asItStands > running)
    problems.push(above('as_it_stands', 'It brings more as it stands than running.'));
  if (scrap !== undefined && running !== undefined && scrap > running)
    problems.push(above('scrap', 'It brings more as scrap than running.'));
  const warnings = (['trade_in', 'trade_in_mended'] as const).flatMap((key): Finding[] => {
    const price = raw.num([...at, key], OWNED.SALE.tradeIn);
    if (price === undefined || running === undefined || price <= running) return [];
    return [
      {
        kind: 'caution',
        path: [...at, key],
        message: `The trade-in, ${moneyText(price, raw.units.currency)}, is above what a private buyer pays, ${moneyText(running, raw.units.currency)}.`,
        remedy: "Part of the other vehicle's price may stand in it: ask for that price without a trade-in.",
      },
    ];
  });
  return { problems, warnings };
};

/** A list of values runs forward in time. */
export const valueTable = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((vehicle): Finding[] => {
    const at = [...vehicle, 'value_falls'];
    const months = raw.each(at).map((point) => raw.num([...point, 'months'], VEHICLE.POINT.month));
    const back = months.findIndex(
      (month, i) => i > 0 && month !== undefined && month <= (months[i - 1] ?? -1),
    );
    if (back > 0)
      return [
        {
          kind: 'contradiction',
          path: [...at, back, 'months'],
          value: months[back],
          message: 'The months of these values do not rise.',
          remedy: 'List them from the nearest to the farthest.',
        },
      ];
    if (Array.isArray(raw.at(at)) && months.length === 0)
      return [
        {
          kind: 'empty',
          path: at,
          message: 'This list is empty.',
          remedy: 'Give values, or a percentage a year.',
        },
      ];
    return [];
  });

/** Money for a distance is in the file's own unit. */
export const distanceKeys = (raw: Raw): Finding[] => {
  const [own, other] = raw.units.distance === 'miles' ? ['a_mile', 'a_km'] : ['a_km', 'a_mile'];
  const wrong = (path: Path, key: string): Finding[] =>
    raw.has(path)
      ? [
          {
            kind: 'wrong unit',
            path,
            message: `This file is in ${raw.units.distance}.`,
            remedy: `Write "${key}:".`,
          },
        ]
      : [];
  return vehiclesOf(raw).flatMap((at) => [
    ...wrong([...at, 'value_falls', other], own),
    ...wrong([...at, `upkeep_${other}`], `upkeep_${own}`),
  ]);
};

/** What stands beside a price names another currency than the household's. */
export const wrongCurrency = (names: readonly string[], units: Units): boolean =>
  names.some((name) => ![units.currency.toLowerCase(), '$', '€', '£'].includes(name.toLowerCase()));

/** Economy in a unit that its drive uses, within what vehicles do; its price by the same kind of unit. */
export const fuelFits = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((vehicle): Finding[] => {
    const at = [...vehicle, 'fuel'];
    const powertrain = raw.word([...vehicle, 'powertrain']) ?? 'combustion';
    const usual = usualForm(raw.units.distance, powertrain === 'battery');
    const given = raw.stated([...at, 'economy'], VEHICLE.FUEL.economy);
    const economy = given ? economyOf(given, usual) : { ...usual, value: 0 };
    const findings: Finding[] = [];
    const path = [...at, 'economy'];
    const wrong = (kind: Finding['kind'], where: Path, message: string, remedy: string) =>
      findings.push({ kind, path: where, value: raw.at(where), message, remedy });
    const fits = powertrain === 'battery' ? 'mi/kWh or kWh/100km' : 'mpg, l/100km or km/l';
    if (!economy) wrong('wrong unit', path, 'This is not a unit of economy we know.', `Write it in ${fits}.`);
    else if (given) {
      const electric = economy.energy === 'kWh';
      if (electric !== (powertrain === 'battery') && powertrain !== 'plug_in')
        wrong(
          'wrong unit',
          path,
          `This unit does not fit a ${showValue(powertrain)} vehicle.`,
          `Write it in ${fits}.`,
        );
      else {
        const { min, max } = economyRange(economy);
        const points = given.range ? [given.range.low, given.range.high] : [economy.value];
        if (points.some((value) => value < min || value > max))
          wrong(
            'out of range',
            path,
            'No vehicle has such an economy.',
            `Allowed in this unit: ${min} to ${max}.`,
          );
      }
    }
    const price = raw.stated([...at, 'price'], VEHICLE.FUEL.price);
    if (!price || !economy) return findings;
    const unit = pricedUnit(price, economy.energy);
    const fitting = unit !== null && energyPriceIn(price.value, unit, economy.energy) !== null;
    if (!fitting || wrongCurrency(pricedIn(price), raw.units))
      wrong(
        'wrong unit',
        [...at, 'price'],
        'The price does not fit the economy.',
        `Give the price of one ${economy.energy} in ${raw.units.currency}.`,
      );
    return findings;
  });

/** Economy known for one vehicle only makes the guess for the other decide. */
export const fuelOnBothSides = (raw: Raw): Finding[] => {
  const vehicles = vehiclesOf(raw);
  const given = vehicles.map((at) => raw.has([...at, 'fuel', 'economy']));
  const drives = new Set(vehicles.map((at) => raw.word([...at, 'powertrain']) ?? 'combustion'));
  const uneven = given.includes(true) || drives.size > 1;
  return vehicles.flatMap((at, i): Finding[] => {
    if (!uneven || given[i]) return [];
    return [
      {
        kind: 'caution',
        path: [...at, 'fuel', 'economy'],
        message: 'What it uses is not given, and a guess stands in while the other vehicle has its own.',
        remedy: 'Write "fuel: { economy: ... }" for each vehicle.',
      },
    ];
  });
};

/** A list of jobs on one side and the average of everything on the other are two ways of counting. */
export const upkeepOnBothSides = (raw: Raw): Finding[] => {
  const vehicles = vehiclesOf(raw);
  const listed = vehicles.map((at) => raw.has([...at, 'upkeep']));
  if (!listed.includes(true)) return [];
  return vehicles.flatMap((at, i): Finding[] =>
    listed[i]
      ? []
      : [
          {
            kind: 'caution',
            path: [...at, 'upkeep'],
            message:
              'Its upkeep counts at the average of everything, while another vehicle has a list of jobs.',
            remedy: 'Write "upkeep:" for each vehicle, or for none.',
          },
        ],
  );
};

/** Prices of energy in different units beside each other: a price without its unit may belong to the other one. */
export const energyUnitsAlike = (raw: Raw): Finding[] => {
  const units = vehiclesOf(raw).map((at) => {
    const economy = mainFigure(raw.at([...at, 'fuel', 'economy']));
    return typeof economy === 'string' ? economy : '';
  });
  const litres = units.some((text) => /l\s*\/\s*100|km\s*\/\s*l/i.test(text));
  const gallons = units.some((text) => /mpg/i.test(text));
  if (!litres || !gallons) return [];
  return vehiclesOf(raw).flatMap((at): Finding[] => {
    const path = [...at, 'fuel', 'price'];
    const price = mainFigure(raw.at(path));
    if (typeof price !== 'number') return [];
    return [
      {
        kind: 'caution',
        path,
        value: price,
        message:
          'One vehicle counts in gallons and another in litres, and this price does not say which it is for.',
        remedy: 'Write "3.40 per gallon" or "0.90 per litre".',
      },
    ];
  });
};

/** An old vehicle of which no repairs are expected makes keeping it look free. */
export const someRepairs = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((at): Finding[] => {
    const age = Number(raw.date.slice(0, 4)) - (modelYear(raw, at) ?? Number(raw.date.slice(0, 4)));
    const factor = raw.num([...at, 'repairs_factor'], VEHICLE.REPAIRS.scale);
    const aYear = raw.num([...at, 'repairs_a_year'], VEHICLE.REPAIRS.statedAYear);
    const none =
      aYear === 0 || (factor === 0 && aYear === undefined) || (factor === 0 && aYear !== undefined);
    if (!none || raw.each([...at, 'components']).length > 0) return [];
    if (at[0] === 'vehicle' && age < 10) return [];
    const key = aYear === 0 ? 'repairs_a_year' : 'repairs_factor';
    return [
      {
        kind: 'caution',
        path: [...at, key],
        value: raw.at([...at, key]),
        message: 'No future repairs are counted for this vehicle.',
        remedy: 'Take the line out to count the average, or name the parts under "components:".',
      },
    ];
  });

/** Named parts take their share out of the average, never more than all of it. */
export const componentShares = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((vehicle): Finding[] => {
    const at = [...vehicle, 'components'];
    const parts = raw.each(at);
    const { shareOfAverage: one } = WORK.FAILURE;
    const shares = parts.map((part) => raw.num([...part, one.key], one) ?? one.or.value);
    const sum = shares.reduce((a, b) => a + b, 0);
    if (sum <= 1 + 1e-9) return [];
    return [
      {
        kind: 'contradiction',
        path: at,
        message: `These parts take ${Math.round(sum * 100)} % of the average repairs away.`,
        remedy: `Give each a smaller "share_of_average:" (${one.or.value * 100} % unless told): together at most 100 %.`,
      },
    ];
  });
