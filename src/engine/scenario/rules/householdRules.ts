import * as HOME from '../inputs/householdInputs.ts';
import * as PURCHASE from '../inputs/purchaseInputs.ts';
import { PRIVATE_MONEY } from '../private/privateMoney.ts';
import { readOutOf } from '../private/readOut.ts';
import { isOwnKey, isWords } from '../private/texts.ts';
import { mainFigure } from '../reading/stated.ts';
import { type Finding, type Path, pathText, showValue } from '../text/problems.ts';
import type { Raw } from './rawView.ts';

const CURRENCY = /^[A-Z]{3}$/;

/** Miles or kilometres, never both: the key sets the unit of the whole file. With neither, a table knows the usual. */
export const distanceGiven = (raw: Raw): Finding[] => {
  const miles = raw.has(['miles_a_year']);
  const km = raw.has(['km_a_year']);
  if (miles && km)
    return [
      {
        kind: 'either or',
        path: ['km_a_year'],
        message: 'The distance a year is given twice, in miles and in km.',
        remedy: 'Keep the one you think in: it sets the unit of the whole file.',
      },
    ];
  return [];
};

/** Nobody wrote how far they drive: the table's figure is used, and that is worth a word. */
export const distanceUsual = (raw: Raw): Finding[] =>
  raw.has(['miles_a_year']) || raw.has(['km_a_year'])
    ? []
    : [
        {
          kind: 'caution',
          path: ['miles_a_year'],
          message: 'The distance a year is not given; what vehicles of its age are driven stands in.',
          remedy: 'Write "miles_a_year:" or "km_a_year:"; much hangs on it.',
        },
      ];

/** Something to compare with: another vehicle, or doing without one. */
export const somethingElse = (raw: Raw): Finding[] =>
  raw.has(['replacement']) || raw.has(['doing_without'])
    ? []
    : [
        {
          kind: 'missing',
          path: ['replacement'],
          message: 'There is nothing to compare with.',
          remedy: 'Write "replacement:" for another vehicle, or "doing_without:" for none.',
        },
      ];

/** The public tables are in dollars: another currency needs its rate. */
export const currencyGiven = (raw: Raw): Finding[] => {
  const written = raw.text(['currency']);
  const perDollar = raw.num(['per_dollar'], HOME.PER_DOLLAR);
  if (written !== undefined && !CURRENCY.test(written))
    return [
      {
        kind: 'not one of',
        path: ['currency'],
        value: written,
        message: `"${showValue(written)}" is not a currency code.`,
        remedy: 'Write the three capital letters of ISO 4217, such as EUR.',
      },
    ];
  const isDollar = written === undefined || written === 'USD';
  if (!isDollar && !raw.has(['per_dollar']))
    return [
      {
        kind: 'missing',
        path: ['per_dollar'],
        message: `How many ${showValue(written)} one US dollar buys is missing.`,
        remedy: 'Write "per_dollar:"; the public tables of upkeep and repairs are in dollars.',
      },
    ];
  if (isDollar && perDollar !== undefined && perDollar !== 1)
    return [
      {
        kind: 'contradiction',
        path: ['per_dollar'],
        value: perDollar,
        message: `${perDollar} US dollars to the US dollar cannot be.`,
        remedy: 'Write "currency:" as well, or take the line out.',
      },
    ];
  return [];
};

/** Private places must exist and hold words, or money that the costs do not rest on. */
export const privateWords = (raw: Raw): Finding[] =>
  raw.each(['private']).flatMap((at): Finding[] => {
    const text = raw.text(at);
    if (text === undefined) return [];
    const path = text.split('.');
    if (!raw.has(path))
      return [
        {
          kind: 'private',
          path: at,
          value: text,
          message: `"${showValue(text)}" is no place in this file.`,
          remedy: 'Write the keys that lead to it, with points between them: household.partner.',
        },
      ];
    const words = raw.text(path) ?? '';
    const needed = readOutOf(path, raw.has).find(({ read }) => read(words) !== null);
    if (needed !== undefined)
      return [
        {
          kind: 'private',
          path: at,
          value: text,
          message: `Something is read out of "${showValue(text)}" that the figures depend on.`,
          remedy: `Write "${needed.key}:" beside it as well.`,
        },
      ];
    if (isWords(path) || isOwnKey(path) || PRIVATE_MONEY.includes(pathText(path))) return [];
    return [
      {
        kind: 'private',
        path: at,
        value: text,
        message: `"${showValue(text)}" cannot be private.`,
        remedy: "The figures depend on it, so it can't be kept out of a report that can be run again.",
      },
    ];
  });

/** The two numbers of a break-even line must be numbers of this file. */
export const twoWayKnown = (raw: Raw): Finding[] => {
  const named = raw.each(['two_way']);
  if (raw.has(['two_way']) && named.length !== 2)
    return [
      {
        kind: 'wrong shape',
        path: ['two_way'],
        message: 'A break-even line lies between two numbers.',
        remedy: 'Name two: two_way: [miles_a_year, replacement.loan.apr].',
      },
    ];
  return named.flatMap((at): Finding[] => {
    const text = raw.text(at);
    if (text === undefined) return [];
    const there = raw.at(text.split('.'));
    if (there !== undefined && (typeof there !== 'object' || (there !== null && mainFigure(there) !== there)))
      return [];
    return [
      {
        kind: 'not one of',
        path: at,
        value: text,
        message: `"${showValue(text)}" is no number of this file.`,
        remedy: 'Write the keys that lead to one, with points between them: replacement.loan.apr.',
      },
    ];
  });
};

/** Where the money earns more elsewhere than the loan costs, borrowing looks like profit. */
export const earnsMoreThanLoan = (raw: Raw): Finding[] => {
  const path: Path = ['household', 'money_earns'];
  const earns = raw.num(path, HOME.HOUSEHOLD.moneyEarns);
  if (earns === undefined) return [];
  return raw.replacements.flatMap((at): Finding[] => {
    const apr = raw.num([...at, 'loan', 'apr'], PURCHASE.LOAN.apr);
    if (apr === undefined || earns <= apr) return [];
    return [
      {
        kind: 'caution',
        path,
        value: raw.at(path),
        message: 'The money earns more here than the loan costs, so that borrowing looks like profit.',
        remedy: 'Is there really such an account? Compare at the rate of the loan as well.',
      },
    ];
  });
};
