import { RUNNING, type Spec } from './specs.ts';

/** A bill that a vehicle may have and that nobody can guess: not given, it is left out. */
export interface Bill {
  /** Where it stands below a vehicle in the file. */
  readonly key: 'registration_a_year' | 'inspection_a_year' | 'tax_a_year' | 'parking_a_month';
  readonly spec: Spec;
  /** At the beginning of a sentence. */
  readonly words: string;
  readonly period: 'a year' | 'a month';
}

export const BILLS: readonly Bill[] = [
  {
    key: 'registration_a_year',
    spec: RUNNING.registration,
    words: 'The cost of registration',
    period: 'a year',
  },
  { key: 'inspection_a_year', spec: RUNNING.inspection, words: 'The cost of inspection', period: 'a year' },
  { key: 'tax_a_year', spec: RUNNING.tax, words: 'The vehicle tax', period: 'a year' },
  { key: 'parking_a_month', spec: RUNNING.parking, words: 'The cost of parking', period: 'a month' },
];

export type BillKey = Bill['key'];
