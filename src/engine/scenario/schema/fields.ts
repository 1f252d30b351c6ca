import * as z from 'zod/mini';
import { parseCivilDate } from '../../quantity/civilDate.ts';
import type { Range } from '../../quantity/range.ts';
import type { Spec } from '../inputs/specs.ts';
import type { Units } from '../inputs/units.ts';
import type { Fault } from '../reading/measure.ts';
import { unitWords } from '../reading/measure.ts';
import { mainFigure, rangeWords, type Stated, stated } from '../reading/stated.ts';
import { nearest } from '../text/nearest.ts';
import { showValue } from '../text/problems.ts';
import { atMost } from './listLength.ts';

// No code is compiled at run time: the page's content policy forbids it, and a file is read once.
z.config({ jitless: true });

/** A custom issue carries its fault along; issues.ts turns it into a problem at its place. */
export interface FaultParams {
  readonly fault: Omit<Fault, 'at'>;
}

/** A field read by our own function, described to editors by `json`. */
export const field = <T>(
  read: (raw: unknown) => { readonly ok: T } | readonly Fault[],
  json: Record<string, unknown>,
) =>
  z
    .pipe(
      z.unknown(),
      z.transform((raw: unknown, context): T => {
        const result: { readonly ok: T } | readonly Fault[] =
          raw === undefined
            ? [{ kind: 'missing', message: 'This is missing.', remedy: String(json.remedy ?? '') }]
            : read(raw);
        if ('ok' in result) return result.ok;
        for (const { at, ...fault } of result)
          context.issues.push({
            code: 'custom',
            input: raw,
            message: fault.message,
            params: { fault } satisfies FaultParams,
            ...(at === undefined ? {} : { path: [at] }),
          });
        return z.NEVER;
      }),
    )
    .register(z.globalRegistry, { ...json, remedy: undefined });

export const json = (description: string, remedy: string, shape: Record<string, unknown>) => ({
  description,
  remedy,
  ...shape,
});

const SAID = {
  how: { enum: ['quoted', 'measured', 'guess'] },
  source: { type: 'string' },
  note: { type: 'string' },
};
const FIGURE = { type: ['number', 'string'] };

/** Shapes that many keys share, for editors; jsonSchema.ts puts them into the schema once. */
export const SHARED_SHAPES = {
  said: {
    description: 'A number, and how you know it.',
    type: 'object',
    properties: { value: FIGURE, ...SAID },
    required: ['value'],
    additionalProperties: false,
  },
  range: {
    description:
      'A number nobody knows exactly: one in ten is lower than "low", half lie below "likely", one in ten is higher than "high".',
    type: 'object',
    properties: { low: FIGURE, likely: FIGURE, high: FIGURE, min: FIGURE, max: FIGURE, ...SAID },
    required: ['low', 'likely', 'high'],
    additionalProperties: false,
  },
};
const ANNOTATED = { $ref: '#/definitions/said' };
const RANGE = { $ref: '#/definitions/range' };

/** A number as an editor may see it: alone, with what is said of it, or as a range where one may stand. */
const shapesOf = (spec: Spec): Record<string, unknown>[] => [
  { type: 'number' },
  { type: 'string' },
  ANNOTATED,
  ...(spec.exact === undefined ? [RANGE] : []),
];

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A quantity: a number, a text with its unit, `{value, how, source, note}` or a range; becomes `Stated`. */
export const num = (spec: Spec, units: Units) => {
  const describe = `${capital(spec.words)}: ${unitWords(spec, units)}, ${rangeWords(spec, units)}.`;
  return field<Stated>(
    (raw) => {
      const read = stated(raw, spec, units);
      return Array.isArray(read) ? (read as Fault[]) : { ok: read as Stated };
    },
    json(describe, `Give ${unitWords(spec, units)}.`, { anyOf: shapesOf(spec) }),
  );
};

/** A quantity that is never one number: a range and nothing else. */
export const ranged = (spec: Spec, units: Units, description: string) =>
  field<Stated & { readonly range: Range }>(
    (raw) => {
      const read = stated(raw, spec, units);
      if (Array.isArray(read)) return read as Fault[];
      const { range, ...rest } = read as Stated;
      if (range) return { ok: { ...rest, range } };
      return [
        {
          kind: 'not a range',
          value: raw,
          message: 'One number says too little here: nobody knows the month.',
          remedy: 'Give three points: { low: 6, likely: 12, high: 24 }.',
        },
      ];
    },
    json(description, 'Give { low, likely, high }.', { anyOf: [RANGE] }),
  );

const YES: readonly unknown[] = ['yes', 'true', true];
const NO: readonly unknown[] = ['no', 'false', false];
const lower = (raw: unknown): unknown => (typeof raw === 'string' ? raw.trim().toLowerCase() : raw);

/** A word as it was meant: YAML may hand yes and no over as true and false. */
const asWord = (raw: unknown): unknown => (typeof raw === 'boolean' ? (raw ? 'yes' : 'no') : lower(raw));

/** Reads yes, no, true or false; null for anything else. */
export const asYesNo = (raw: unknown): boolean | null => {
  const word = lower(raw);
  if (YES.includes(word)) return true;
  return NO.includes(word) ? false : null;
};

/** Yes or no; YAML 1.2 hands both over as texts. */
export const yesNo = (description: string) =>
  field<boolean>(
    (raw) => {
      const ok = asYesNo(raw);
      return ok === null
        ? [
            {
              kind: 'not one of',
              value: raw,
              message: `"${showValue(raw)}" is neither yes nor no.`,
              remedy: 'Write yes or no.',
            },
          ]
        : { ok };
    },
    json(description, 'Write yes or no.', { enum: [true, false, 'yes', 'no'] }),
  );

/** The most characters a text of a file may have. */
export const LONGEST_WORDS = 2_000;

/** Words: one line or several, never empty. */
export const words = (description: string, remedy = 'Write it in words.') =>
  field<string>(
    (raw) => {
      if (typeof raw !== 'string' && typeof raw !== 'number')
        return [
          {
            kind: 'wrong shape',
            ...(raw === null ? {} : { value: raw }),
            message: raw === null ? 'Nothing is written here.' : `${showValue(raw)} is not a text.`,
            remedy,
          },
        ];
      const text = String(raw).trim();
      if (text === '') return [{ kind: 'wrong shape', message: 'Nothing is written here.', remedy }];
      return text.length > LONGEST_WORDS
        ? [
            {
              kind: 'too large',
              message: `This text has ${text.length} characters.`,
              remedy: `At most ${LONGEST_WORDS}.`,
            },
          ]
        : { ok: text };
    },
    json(description, remedy, { type: ['string', 'number'] }),
  );

/** One of a few words. */
export const oneOf = <const T extends string>(names: readonly T[], description: string) =>
  field<T>(
    (raw) => {
      const ok = names.find((name) => name === asWord(raw));
      if (ok !== undefined) return { ok };
      const near = typeof raw === 'string' ? nearest(raw, names) : null;
      return [
        {
          kind: 'not one of',
          value: raw,
          message: `"${showValue(raw)}" is not one of the words allowed here.`,
          remedy: `${near ? `Did you mean "${near}"? ` : ''}Allowed: ${names.join(', ')}.`,
        },
      ];
    },
    json(description, `Allowed: ${names.join(', ')}.`, {
      enum: names.includes('yes' as T) ? [true, false, ...names] : names,
    }),
  );

const notADate = (raw: unknown): Fault => ({
  kind: 'not a date',
  value: raw,
  message: `"${showValue(raw)}" is not a date.`,
  remedy: 'Write year-month-day, such as 2026-03-31.',
});

/** An ISO date. */
export const date = (description: string) =>
  field<string>(
    (raw) => (typeof raw === 'string' && parseCivilDate(raw) ? { ok: raw } : [notADate(raw)]),
    json(description, 'Write year-month-day, such as 2026-03-31.', { type: 'string', format: 'date' }),
  );

/** A date, or months from the day of the decision. */
export const dateOrMonths = (spec: Spec, units: Units, description: string) =>
  field<string | Stated>(
    (raw) => {
      if (typeof raw === 'string' && /^\d{4}-/.test(raw))
        return parseCivilDate(raw) ? { ok: raw } : [notADate(raw)];
      const read = stated(raw, spec, units);
      return Array.isArray(read) ? (read as Fault[]) : { ok: read as Stated };
    },
    json(description, 'Write a date or a number of months.', { type: ['string', 'number'] }),
  );

/** A quantity, or one of a few words that stand for something else ("no", "don't know"). */
export const numOr = <const T extends string>(
  spec: Spec,
  units: Units,
  spoken: Readonly<Record<string, T>>,
  description: string,
) =>
  field<Stated | T>(
    (raw) => {
      const word = asWord(raw);
      const found = typeof word === 'string' && Object.hasOwn(spoken, word) ? spoken[word] : undefined;
      if (found !== undefined) return { ok: found };
      const read = stated(raw, spec, units);
      if (!Array.isArray(read)) return { ok: read as Stated };
      const allowed = [...new Set(Object.keys(spoken))].slice(0, 2).join(', ');
      return (read as Fault[]).map((fault) => ({
        ...fault,
        remedy: `Write ${allowed} or ${unitWords(spec, units)} (${rangeWords(spec, units)}).`,
      }));
    },
    json(description, `Write ${Object.keys(spoken).slice(0, 2).join(', ')} or ${unitWords(spec, units)}.`, {
      anyOf: [{ type: ['number', 'string', 'boolean'] }, ANNOTATED],
    }),
  );

const IN_MONTHS = /\b(?:months?|years?|yrs?|mo)\b/i;

/** A distance or a time: "140,000 miles", "48 months"; a bare number has clock null and counts as it stands. */
export type Clocked = Stated & { readonly clock: 'distance' | 'months' | null };

/** A number that may be counted in distance or in months, told apart by its unit. */
export const clocked = (distance: Spec, months: Spec, units: Units, description: string) =>
  field<Clocked>(
    (raw) => {
      const inner = mainFigure(raw);
      const inMonths = typeof inner === 'string' && IN_MONTHS.test(inner);
      const read = stated(raw, inMonths ? months : distance, units);
      if (Array.isArray(read)) return read as Fault[];
      const clock = inMonths ? 'months' : typeof inner === 'string' ? 'distance' : null;
      return { ok: { ...(read as Stated), clock } };
    },
    json(description, 'Give a distance, or a number of months.', {
      anyOf: shapesOf(distance),
    }),
  );

/** A mapping with these keys and no others. */
export const mapping = <S extends z.core.$ZodLooseShape>(shape: S, description: string) =>
  z.strictObject(shape).register(z.globalRegistry, { description });

/** A list; a key with nothing behind it is an empty one. */
export const list = <S extends z.core.SomeType>(item: S, most = 100) =>
  z.pipe(
    z.transform((raw: unknown) => (raw === null ? [] : raw)),
    z.array(item).check(atMost(most)),
  );

/** Something that need not be there. */
export const maybe = <S extends z.core.SomeType>(schema: S) => z.optional(schema);

/** The most characters a key of the reader's own choosing may have. */
export const LONGEST_KEY = 60;

/** Keys of the reader's own choosing, with values of one kind. */
export const record = <S extends z.core.SomeType>(value: S, description: string) =>
  z.record(z.string().check(z.maxLength(LONGEST_KEY)), value).register(z.globalRegistry, { description });
