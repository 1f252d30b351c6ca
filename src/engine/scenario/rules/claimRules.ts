import * as CLAIM from '../inputs/claimInputs.ts';
import { compare } from '../inputs/comparables.ts';
import * as OWNED from '../inputs/ownedInputs.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { PLACES, placeByCode } from '../places/places.ts';
import { nearest } from '../text/nearest.ts';
import { type Finding, type Path, showValue } from '../text/problems.ts';
import { isMapping, type Raw } from './rawView.ts';

const at = (...keys: Path): Path => ['claim', ...keys];

const contradiction = (raw: Raw, path: Path, message: string, remedy: string): Finding => ({
  kind: 'contradiction',
  path,
  // A whole section shows nothing of what is wrong with it.
  ...(isMapping(raw.at(path)) ? {} : { value: raw.at(path) }),
  message,
  remedy,
});
const missing = (path: Path, message: string, remedy: string): Finding => ({
  kind: 'missing',
  path,
  message,
  remedy,
});

/** A value, or comparables to find one: it is never guessed. */
export const claimValued = (raw: Raw): Finding[] => {
  if (!raw.has(at())) return [];
  const compared = raw.each(at('comparables')).length > 0;
  const [own, other] = raw.units.distance === 'miles' ? ['a_mile', 'a_km'] : ['a_km', 'a_mile'];
  return [
    ...(raw.has(at('value')) || compared
      ? []
      : [
          missing(
            at('value'),
            'What it was worth before the collision is missing.',
            'Write "value:", or "comparables:" with prices of vehicles like it; it is never guessed.',
          ),
        ]),
    ...(raw.has(at(other))
      ? [
          {
            kind: 'wrong unit' as const,
            path: at(other),
            message: `This file is in ${raw.units.distance}.`,
            remedy: `Write "${own}:".`,
          },
        ]
      : compared && !raw.has(at(own))
        ? [
            missing(
              at(own),
              'What the comparables are adjusted with by distance is missing.',
              `Write "${own}:", in money; 0 if their distance is to make no difference.`,
            ),
          ]
        : []),
  ];
};

/** A listed place by its code, or a rule written out: no other place's rule stands in. */
export const placeKnown = (raw: Raw): Finding[] => {
  const code = raw.text(at('place'));
  if (code === undefined || placeByCode(code) !== null) return [];
  const asked = code.toLowerCase();
  const named = PLACES.find(({ name }) => name.toLowerCase() === asked);
  const near =
    named?.code ??
    (/^us-/i.test(code)
      ? nearest(
          code,
          PLACES.map((place) => place.code),
        )
      : null);
  return [
    {
      kind: 'not one of',
      path: at('place'),
      value: code,
      message: `"${showValue(code)}" is not a place whose rule is listed.`,
      remedy: `${near ? `Did you mean "${near}"? Else write` : 'Write'} the rule out: place: { name: ..., total_loss: 75 % }.`,
    },
  ];
};

/** Whose insurer pays decides what must be known: the deductible of the own policy, the fault for the other's. */
export const payerFits = (raw: Raw): Finding[] => {
  const pays = raw.word(at('pays'));
  const findings: Finding[] = [];
  if (pays === 'own' && !raw.has(at('deductible')))
    findings.push(
      missing(
        at('deductible'),
        'Your own insurer pays, but your share of the bill is missing.',
        'Write "deductible:", as the policy has it.',
      ),
    );
  if (pays === 'other' && !raw.has(at('fault')))
    findings.push(
      missing(
        at('fault'),
        "The other driver's insurer pays, but your share of the fault is missing.",
        'Write "fault:", in percent; 0 if none of it is yours.',
      ),
    );
  const onlyOwn: readonly (readonly [string, string])[] = [
    ['deductible', 'A share of the bill (deductible)'],
    ['surcharge', 'Dearer insurance afterwards (surcharge)'],
    ['recovered', 'Money back from the other side'],
  ];
  if (pays === 'other' || pays === 'nobody')
    for (const [key, what] of onlyOwn)
      if (raw.has(at(key)))
        findings.push(
          contradiction(
            raw,
            at(key),
            `${what} belongs to a claim on your own policy.`,
            `Write "pays: own", or take "${key}:" out.`,
          ),
        );
  if (pays !== 'other' && raw.has(at('other_limit')))
    findings.push(
      contradiction(
        raw,
        at('other_limit'),
        "The other driver's policy does not pay here.",
        'Write "pays: other", or take "other_limit:" out.',
      ),
    );
  return findings;
};

/** A lender has a balance, a balance a lender; what only a lender makes happen needs one. */
export const lenderFits = (raw: Raw): Finding[] => {
  if (!raw.has(at())) return [];
  const owed = raw.has(['vehicle', 'loan']);
  const named = raw.has(at('lender'));
  if (owed && !named)
    return [
      missing(
        at('lender'),
        'A loan runs on the vehicle, but its lender is missing: the lender may have to be paid first.',
        'Write "lender: { name: ..., paid_first: yes }", or no if the policy does not name it.',
      ),
    ];
  if (named && !owed)
    return [
      missing(
        ['vehicle', 'loan'],
        'A lender is named, but what is owed is missing.',
        'Write "loan: { owed: ..., apr: ..., months_left: ... }", or take "lender:" out.',
      ),
    ];
  return raw.has(at('gap')) && !owed
    ? [
        contradiction(
          raw,
          at('gap'),
          'Gap cover pays a lender, and nothing is owed.',
          'Write the loan, or take "gap:" out.',
        ),
      ]
    : [];
};

/** What the comparables say, where all of it can be read. */
const comparedValue = (raw: Raw): number | undefined => {
  const perUnit = CLAIM.PER_DISTANCE[raw.units.distance];
  const perDistance = raw.num(at(perUnit.key), perUnit);
  const odometer = raw.num(['vehicle', 'odometer'], VEHICLE.PRESENT.odometer);
  const given = raw.each(at('comparables')).map((one) => ({
    price: raw.num([...one, 'price'], CLAIM.COMPARABLE.price) ?? Number.NaN,
    odometer: raw.num([...one, 'odometer'], CLAIM.COMPARABLE.odometer) ?? Number.NaN,
    adjustment: raw.num([...one, 'adjust'], CLAIM.COMPARABLE.adjustment) ?? 0,
  }));
  if (perDistance === undefined || odometer === undefined) return undefined;
  return compare(given, { odometer, perDistance }).mean ?? undefined;
};

/** What cannot be more than something else. */
export const claimBounds = (raw: Raw): Finding[] => {
  const findings: Finding[] = [];
  const value = raw.num(at('value'), CLAIM.SETTLEMENT.value) ?? comparedValue(raw);
  const above = (
    path: Path,
    amount: number | undefined,
    most: number | undefined,
    message: string,
    remedy: string,
  ) => {
    if (amount !== undefined && most !== undefined && amount > most)
      findings.push(contradiction(raw, path, message, remedy));
  };
  above(
    at('salvage'),
    raw.num(at('salvage'), CLAIM.SETTLEMENT.salvage),
    value,
    'The bid for the wreck is above what it was worth whole.',
    `The value says ${value}: one of the two is wrong.`,
  );
  above(
    at('damage_before'),
    raw.num(at('damage_before'), CLAIM.SETTLEMENT.damageBefore),
    value,
    'The damage it had before is above what it was worth.',
    `The value says ${value}: one of the two is wrong.`,
  );
  for (const refund of raw.each(at('refunds'))) {
    const months = raw.num([...refund, 'months'], CLAIM.PREPAID.months);
    above(
      [...refund, 'left'],
      raw.num([...refund, 'left'], CLAIM.PREPAID.left),
      months,
      'More months are left than it was paid for.',
      `It was paid for ${months} months.`,
    );
  }
  above(
    at('tow', 'paid'),
    raw.num(at('tow', 'paid'), CLAIM.TOW.paid),
    raw.num(at('tow', 'costs'), CLAIM.TOW.costs),
    'The insurer pays more of the tow than it costs.',
    'Write at most what it costs.',
  );
  return findings;
};

/** Storage is paid for so many days or until a day; a collision lies behind us. */
export const claimDates = (raw: Raw): Finding[] => {
  const happened = raw.at(at('happened'));
  return [
    ...(typeof happened === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(happened) && happened > raw.date
      ? [
          contradiction(
            raw,
            at('happened'),
            'It happened after the day of the decision.',
            `The decision is taken on ${raw.date}: set "date:", or mend this one.`,
          ),
        ]
      : []),
    ...(raw.has(at('storage', 'paid_days')) && raw.has(at('storage', 'paid_until'))
      ? [
          {
            kind: 'either or' as const,
            path: at('storage', 'paid_until'),
            message: 'How long the insurer pays for storage is given twice.',
            remedy: 'Keep the days or the date.',
          },
        ]
      : []),
  ];
};

/** Days that have passed: said, and nothing is made of them. */
export const claimDatesPast = (raw: Raw): Finding[] => {
  const past = (path: Path, message: string, remedy: string): Finding[] => {
    const date = raw.at(path);
    if (typeof date !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(date) || date >= raw.date) return [];
    return [{ kind: 'caution', path, value: date, message: message.replace('%', date), remedy }];
  };
  return [
    ...raw
      .each(at('answer_by'))
      .flatMap((one) =>
        past(
          [...one, 'date'],
          'The time to answer ended on %, before the day of the decision.',
          'Ask whether it can still be answered.',
        ),
      ),
    ...past(
      at('storage', 'paid_until'),
      'The insurer stopped paying for storage on %.',
      'From then on each day is yours: have it moved.',
    ),
  ];
};

/** With a claim the vehicle is damaged, and so is what a dealer takes in. */
export const tradeInDamaged = (raw: Raw): Finding[] => {
  const path: Path = ['vehicle', 'sells_for', 'trade_in'];
  const price = raw.has(at()) ? raw.num(path, OWNED.SALE.tradeIn) : undefined;
  const asItStands = raw.num(['vehicle', 'sells_for', 'as_it_stands'], OWNED.SALE.asItStands);
  if (price === undefined || asItStands === undefined || price <= asItStands) return [];
  return [
    {
      kind: 'caution',
      path,
      value: raw.at(path),
      message:
        'With a claim, the trade-in is what a dealer gives for it damaged, and here it is above as_it_stands.',
      remedy: 'If it is the price of before the collision, ask again: a damaged one brings less.',
    },
  ];
};
