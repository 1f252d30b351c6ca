import { expect, it } from 'vitest';
import { isSignOf, readAmount } from '../../src/terminal/amount.ts';

it.each([
  ['1850', 1850, ''],
  ['1,850', 1850, ''],
  ['1 850', 1850, ''],
  ['1,234,567.89', 1234567.89, ''],
  ['$1850', 1850, '$'],
  ['€ 1,850.5', 1850.5, '€'],
  ['1850 EUR', 1850, 'EUR'],
  ['usd 90', 90, 'usd'],
  ['CA$90', 90, 'CA$'],
  ['0', 0, ''],
])('%j is an amount', (typed, value, sign) => {
  expect(readAmount(typed)).toEqual({ value, sign });
});

it.each([
  '',
  '-5',
  '1,85',
  '1.850',
  '18,50',
  '1,8500',
  '.5',
  '1e3',
  'Infinity',
  'NaN',
  '0x10',
  '$5$',
  '1850 a year',
  '1'.repeat(10),
])('%j is none', (typed) => {
  expect(readAmount(typed)).toBeNull();
});

it.each([
  ['$', 'USD', true],
  ['US$', 'USD', true],
  ['usd', 'USD', true],
  ['€', 'USD', false],
  ['€', 'EUR', true],
  ['$', 'CAD', true],
  ['CA$', 'CAD', true],
  ['EUR', 'CAD', false],
])('%s means %s: %s', (sign, currency, means) => {
  expect(isSignOf(sign, currency)).toBe(means);
});
