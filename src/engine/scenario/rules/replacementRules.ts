import * as PURCHASE from '../inputs/purchaseInputs.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import { asYesNo } from '../schema/fields.ts';
import type { Finding, Path } from '../text/problems.ts';
import type { Raw } from './rawView.ts';

const missing = (path: Path, message: string, remedy: string): Finding => ({
  kind: 'missing',
  path,
  message,
  remedy,
});

const eachReplacement = (raw: Raw, rule: (at: Path) => Finding[]): Finding[] =>
  raw.replacements.flatMap(rule);

/** How it is paid for: one way, and what that way needs. */
export const paidOneWay = (raw: Raw): Finding[] =>
  eachReplacement(raw, (at) => {
    const ways = ['loan', 'lease'].filter((key) => raw.has([...at, key]));
    if (asYesNo(raw.at([...at, 'cash'])) === true) ways.push('cash');
    const [way] = ways;
    if (way === undefined)
      return [
        missing(
          [...at, 'loan'],
          'How it is paid for is missing.',
          'Write "loan: { apr: ..., months: ... }", "cash: yes" or "lease:".',
        ),
      ];
    if (ways.length > 1)
      return [
        {
          kind: 'either or',
          path: [...at, ways[1] ?? way],
          message: `It is paid for in two ways: ${ways.join(' and ')}.`,
          remedy: 'Keep one; list the same vehicle twice to compare both.',
        },
      ];
    const down = raw.has([...at, 'down_payment']);
    if (way === 'loan' && !down)
      return [
        missing(
          [...at, 'down_payment'],
          'The cash down payment is missing.',
          'Write "down_payment:"; 0 if there is none.',
        ),
      ];
    if (way !== 'loan' && down)
      return [
        {
          kind: 'either or',
          path: [...at, 'down_payment'],
          message: `A ${way === 'cash' ? 'cash purchase' : 'lease'} has no down payment.`,
          remedy:
            way === 'cash' ? 'Take it out, or give the loan.' : 'Write it as "due_at_signing:" of the lease.',
        },
      ];
    return [];
  });

/** One price: all in, or with tax and fees beside it. A lease may do without. */
export const pricedOnce = (raw: Raw): Finding[] =>
  eachReplacement(raw, (at) => {
    const allIn = raw.has([...at, 'price_with_all_fees']);
    const bare = raw.has([...at, 'price']);
    if (allIn && bare)
      return [
        {
          kind: 'either or',
          path: [...at, 'price'],
          message: 'The price is given twice, with and without fees.',
          remedy: 'Keep "price_with_all_fees:", or "price:" with "sales_tax:" and "fees:".',
        },
      ];
    if (!allIn && !bare && !raw.has([...at, 'lease']))
      return [
        missing(
          [...at, 'price_with_all_fees'],
          'The price is missing.',
          'Write "price_with_all_fees:"; ask for it in writing.',
        ),
      ];
    const twice = ['sales_tax', 'fees'].find((key) => allIn && raw.has([...at, key]));
    if (twice === undefined) return [];
    return [
      {
        kind: 'either or',
        path: [...at, twice],
        message: 'The price already has all fees in it.',
        remedy: `Write "price:" without them, or take "${twice}:" out.`,
      },
    ];
  });

/** Amounts and terms that cannot both be. */
export const termsFit = (raw: Raw): Finding[] =>
  eachReplacement(raw, (at) => {
    const findings: Finding[] = [];
    const against = (path: Path, message: string, remedy: string) =>
      findings.push({ kind: 'contradiction', path, value: raw.at(path), message, remedy });
    const priceKey = raw.has([...at, 'price']) ? 'price' : 'price_with_all_fees';
    const price = raw.num([...at, priceKey], PURCHASE.PRICE.price);
    const down = raw.num([...at, 'down_payment'], PURCHASE.OFFER.downPayment);
    if (price !== undefined && down !== undefined && down > price)
      against([...at, 'down_payment'], 'The down payment is above the price.', 'Look at the two again.');
    const rebate = raw.num([...at, 'rebate'], PURCHASE.OFFER.rebate);
    if (price !== undefined && rebate !== undefined && rebate > price)
      against([...at, 'rebate'], 'The rebate is above the price.', 'Look at the two again.');
    const months = raw.num([...at, 'loan', 'months'], PURCHASE.LOAN.months);
    const first = raw.num([...at, 'loan', 'first_payment'], PURCHASE.LOAN.firstPayment);
    if (months !== undefined && first !== undefined && first > months)
      against(
        [...at, 'loan', 'first_payment'],
        'The first payment comes after the term.',
        'Give the month of the first payment; 1 is usual.',
      );
    const residual = raw.num([...at, 'lease', 'residual'], PURCHASE.LEASE.residual);
    const starts = raw.num([...at, 'lease', 'starts_from'], PURCHASE.LEASE.startsFrom);
    if (residual !== undefined && starts !== undefined && residual > starts)
      against(
        [...at, 'lease', 'residual'],
        'The residual is above the price the lease starts from.',
        'Look at the two again.',
      );
    if (raw.has([...at, 'low_rate_instead']) && !raw.has([...at, 'loan']))
      against(
        [...at, 'low_rate_instead'],
        'A low rate instead of the rebate needs a loan.',
        'Give the loan, or take it out.',
      );
    return findings;
  });

/** A lease's allowance and overage, each in one unit. */
export const leaseDistance = (raw: Raw): Finding[] =>
  eachReplacement(raw, (at) => {
    if (!raw.has([...at, 'lease'])) return [];
    const pairs = [
      ['miles_a_year', 'km_a_year', 'The distance the lease allows'],
      ['over_a_mile', 'over_a_km', 'The price of distance over the allowance'],
    ] as const;
    return pairs.flatMap(([miles, km, what]): Finding[] => {
      const both = [miles, km].filter((key) => raw.has([...at, 'lease', key]));
      if (both.length === 1) return [];
      const own = raw.units.distance === 'miles' ? miles : km;
      if (both.length === 0)
        return [missing([...at, 'lease', own], `${what} is missing.`, `Write "${own}:".`)];
      return [
        {
          kind: 'either or',
          path: [...at, 'lease', km],
          message: `${what} is given twice.`,
          remedy: 'Keep one.',
        },
      ];
    });
  });

/** A used vehicle has been driven. */
export const usedIsDriven = (raw: Raw): Finding[] =>
  eachReplacement(raw, (at) => {
    if (raw.has([...at, 'odometer']) || raw.word([...at, 'condition']) === 'new') return [];
    return [
      missing([...at, 'odometer'], 'The odometer is missing.', 'Write "odometer:", or "condition: new".'),
    ];
  });

/** A guarantee's distance, in one unit. */
export const oneGuarantee = (raw: Raw): Finding[] =>
  [['vehicle'] as Path, ...raw.replacements].flatMap((at): Finding[] =>
    raw.has([...at, 'guarantee', 'miles']) && raw.has([...at, 'guarantee', 'km'])
      ? [
          {
            kind: 'either or',
            path: [...at, 'guarantee', 'km'],
            message: 'The distance of the guarantee is given twice.',
            remedy: 'Keep one.',
          },
        ]
      : [],
  );

/** A loan of more than eight years outlives most of what it buys. */
export const longLoan = (raw: Raw): Finding[] =>
  eachReplacement(raw, (at) => {
    const path = [...at, 'loan', 'months'];
    const months = raw.num(path, PURCHASE.LOAN.months);
    if (months === undefined || months <= 96) return [];
    return [
      {
        kind: 'caution',
        path,
        value: months,
        message: `${months} months is a long time to pay for a vehicle.`,
        remedy: 'Is it the term of the offer?',
      },
    ];
  });

/** An odometer that belongs to another kind of vehicle than its condition says. */
export const newIsNew = (raw: Raw): Finding[] =>
  eachReplacement(raw, (at) => {
    const odometer = raw.num([...at, 'odometer'], VEHICLE.PRESENT.odometer);
    if (raw.word([...at, 'condition']) !== 'new' || odometer === undefined || odometer <= 1_000) return [];
    return [
      {
        kind: 'contradiction',
        path: [...at, 'condition'],
        value: 'new',
        message: `A vehicle that has run ${odometer} ${raw.units.distance} is not new.`,
        remedy: 'Write "condition: used"; it has repairs of its own.',
      },
    ];
  });
