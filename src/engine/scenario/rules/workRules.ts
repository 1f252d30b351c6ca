import { dangersOf, needsQualified, qualifiedTold } from '../danger/dangers.ts';
import type { Danger } from '../inputs/scenario.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import * as WORK from '../inputs/workInputs.ts';
import { mainFigure } from '../reading/stated.ts';
import { asYesNo } from '../schema/fields.ts';
import { DANGERS } from '../schema/workSchema.ts';
import { nearest } from '../text/nearest.ts';
import { type Finding, type Path, showValue } from '../text/problems.ts';
import { inTable } from './partRules.ts';
import type { Raw } from './rawView.ts';
import { vehiclesOf } from './vehicleRules.ts';

const jobsOf = (raw: Raw): Path[] => raw.each(['work_needed']);

/** Own hours or a shop's price: one of them, or nobody can say what it costs. */
const priced = (raw: Raw, at: Path, known = false): Finding[] => {
  if (raw.has([...at, 'hours']) || raw.has([...at, 'shop_price'])) {
    if (raw.word([...at, 'by']) !== 'own' || raw.has([...at, 'hours'])) return [];
    return [
      {
        kind: 'missing',
        path: [...at, 'hours'],
        message: 'It is to be done with own hands, but the hours are missing.',
        remedy: 'Write "hours:".',
      },
    ];
  }
  if (known) return [];
  return [
    {
      kind: 'missing',
      path: [...at, 'shop_price'],
      message: 'What this work costs is missing.',
      remedy: 'Write "parts:" and "hours:" for own hands, "shop_price:" for a shop, or all three.',
    },
  ];
};

/** Every piece of work has a price. */
export const workPriced = (raw: Raw): Finding[] => [
  ...jobsOf(raw).flatMap((at) => [
    ...priced(raw, at),
    ...(raw.has([...at, 'patch']) ? priced(raw, [...at, 'patch']) : []),
  ]),
  ...vehiclesOf(raw).flatMap((at) => [
    ...raw.each([...at, 'upkeep']).flatMap((item) => priced(raw, item)),
    ...raw.each([...at, 'components']).flatMap((part) => priced(raw, part, inTable(raw, at, part))),
  ]),
  ...['own_repair', 'safe_only', 'rebuild']
    .map((plan) => ['claim', plan])
    .flatMap((at) => (raw.has(at) ? priced(raw, at) : [])),
];

/** Whether a job can wait, for ever or some months; undefined where nothing that can be read says so. */
export const waitsIn = (raw: Raw, at: Path): boolean | undefined => {
  const said = asYesNo(raw.at([...at, 'can_wait']));
  if (said !== null) return said;
  const months = raw.num([...at, 'can_wait'], WORK.CAN_WAIT);
  return months === undefined ? undefined : months > 0;
};

/** A safety job does not wait. */
export const safetyFirst = (raw: Raw): Finding[] =>
  jobsOf(raw).flatMap((at): Finding[] => {
    const wait = raw.at([...at, 'can_wait']);
    if (asYesNo(raw.at([...at, 'safety'])) !== true || !waitsIn(raw, at)) return [];
    return [
      {
        kind: 'unsafe',
        path: [...at, 'can_wait'],
        value: wait,
        message: 'Work that safety needs does not wait.',
        remedy: 'Write "can_wait: no", or take "safety: yes" out if driving without it is safe.',
      },
    ];
  });

/** The dangers a job lists, as far as they are known; undefined where there is no list. A key with nothing behind it is an empty one. */
export const listedDangers = (raw: Raw, at: Path): readonly Danger[] | undefined => {
  const place = [...at, 'dangers'];
  const listed = raw.at(place);
  if (listed === null) return [];
  const words = raw.each(place).map(raw.word);
  return Array.isArray(listed) ? DANGERS.filter((danger) => words.includes(danger)) : undefined;
};

const dangers = (raw: Raw, at: Path): readonly Danger[] =>
  dangersOf(raw.text([...at, 'job']) ?? '', listedDangers(raw, at));

/** Where only qualified work will do, the own-hands price is withdrawn, and a shop's is needed. */
export const qualifiedWork = (raw: Raw): { problems: Finding[]; warnings: Finding[] } => {
  const problems: Finding[] = [];
  const warnings: Finding[] = [];
  for (const at of jobsOf(raw)) {
    const said = (key: string): boolean | undefined => asYesNo(raw.at([...at, key])) ?? undefined;
    const told = qualifiedTold(said('qualified_only'), said('own_hands'));
    const found = dangers(raw, at);
    const usual = needsQualified(found, undefined);
    if (told === false && usual)
      warnings.push({
        kind: 'caution',
        path: [...at, raw.has([...at, 'qualified_only']) ? 'qualified_only' : 'own_hands'],
        message: `This touches ${found.join(', ')}, where a mistake can kill.`,
        remedy: 'Leave it at that only if whoever does it is qualified for it.',
      });
    if (!(told ?? usual)) continue;
    if (!raw.has([...at, 'shop_price']))
      problems.push({
        kind: 'unsafe',
        path: [...at, 'shop_price'],
        message: "Only qualified work will do here, and a shop's price is missing.",
        remedy: 'Write "shop_price:"; the own-hands price is not used for such work.',
      });
    else if (raw.has([...at, 'hours']))
      warnings.push({
        kind: 'caution',
        path: [...at, 'hours'],
        message: 'Only qualified work will do here: the own hours are not used.',
        remedy: "The shop's price stands in.",
      });
  }
  return { problems, warnings };
};

/** Work renews components that exist, of the same vehicle. */
export const renewsKnown = (raw: Raw): Finding[] => [
  ...jobsOf(raw).flatMap((job) => renewsOf(raw, job, ['vehicle'])),
  ...vehiclesOf(raw).flatMap((at) => raw.each([...at, 'upkeep']).flatMap((item) => renewsOf(raw, item, at))),
];

const renewsOf = (raw: Raw, work: Path, vehicle: Path): Finding[] => {
  const names = raw.each([...vehicle, 'components']).flatMap((part) => raw.text([...part, 'name']) ?? []);
  return raw.each([...work, 'renews']).flatMap((at): Finding[] => {
    const name = raw.text(at);
    if (name === undefined || names.includes(name)) return [];
    const near = nearest(name, names);
    return [
      {
        kind: 'not one of',
        path: at,
        value: name,
        message: `"${showValue(name)}" is no component of the vehicle.`,
        remedy: near
          ? `Did you mean "${near}"?`
          : names.length > 0
            ? `Components: ${names.map(showValue).join(', ')}.`
            : 'Name it under its "components:" first.',
      },
    ];
  });
};

/** Upkeep falls due by something, and was not last done in the future. */
export const upkeepDue = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((vehicle) => {
    const odometer = raw.num([...vehicle, 'odometer'], VEHICLE.PRESENT.odometer);
    return raw.each([...vehicle, 'upkeep']).flatMap((at): Finding[] => {
      const done = raw.num([...at, 'last_done'], VEHICLE.PRESENT.odometer);
      if (done !== undefined && odometer !== undefined && done > odometer)
        return [
          {
            kind: 'contradiction',
            path: [...at, 'last_done'],
            value: raw.at([...at, 'last_done']),
            message: 'It was last done at a reading the odometer has not reached.',
            remedy: `The odometer says ${odometer}; or write "don't know".`,
          },
        ];
      if (raw.has([...at, 'every']) || raw.has([...at, 'or_months'])) return [];
      return [
        {
          kind: 'missing',
          path: [...at, 'every'],
          message: 'When this falls due is missing.',
          remedy: 'Write "every:" (a distance), "or_months:", or both.',
        },
      ];
    });
  });

/** What a part has run is counted as its life is. */
export const sameClock = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((vehicle) =>
    raw.each([...vehicle, 'components']).flatMap((at): Finding[] => {
      const inMonths = (path: Path): boolean | undefined => {
        const value = mainFigure(raw.at(path) ?? null);
        return typeof value === 'string' ? /month|year/i.test(value) : undefined;
      };
      const life = inMonths([...at, 'life', 'typical']) ?? false;
      const run = inMonths([...at, 'run']);
      if (run === undefined || run === life) return [];
      return [
        {
          kind: 'wrong unit',
          path: [...at, 'run'],
          value: raw.at([...at, 'run']),
          message: 'What it has run is not counted as its life is.',
          remedy: `Give it in ${life ? 'months' : raw.units.distance}.`,
        },
      ];
    }),
  );

/** A price that has run out on the day of the decision. */
export const datesPast = (raw: Raw): Finding[] => {
  const past = (path: Path, what: string, remedy = 'Ask again before you rely on it.'): Finding[] => {
    const date = raw.at(path);
    if (typeof date !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(date) || date >= raw.date) return [];
    return [
      {
        kind: 'caution',
        path,
        value: date,
        message: `${what} ended on ${date}, before the day of the decision.`,
        remedy,
      },
    ];
  };
  return [
    ...jobsOf(raw).flatMap((at) => past([...at, 'quote_ends'], "The shop's price")),
    ...raw.replacements.flatMap((at) => past([...at, 'offer_ends'], 'The offer')),
    ...past(
      ['vehicle', 'must_pass_inspection_by'],
      'The time to pass inspection',
      'Until it passes it may not be used; the answer says so first.',
    ),
  ];
};
