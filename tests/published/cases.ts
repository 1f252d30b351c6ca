/** Runs a file of published cases: one named test a case, each computed by the check it names. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

type Value = number | string | boolean | null | readonly Value[] | { readonly [key: string]: Value };
type Values = { readonly [key: string]: Value };

type Case = {
  readonly id: string;
  readonly source: string;
  readonly section: string;
  readonly provenance: string;
  readonly check: string;
  readonly inputs: Values;
  readonly expected: Values;
  /** One for all figures, or one for each. */
  readonly tolerance: number | { readonly [key: string]: number };
};

/** Reads the inputs of a case, refusing what is not there: a misspelt name must not pass as nothing. */
const reader = (values: Values) => {
  const get = <T extends Value>(name: string): T => {
    const value = values[name];
    if (value === undefined) throw new Error(`the case has no input "${name}"`);
    return value as T;
  };
  const num = (name: string): number => {
    const value = get(name);
    if (typeof value !== 'number') throw new Error(`"${name}" is not a number`);
    return value;
  };
  return {
    get,
    num,
    nums: get<readonly number[]>,
    has: (name: string): boolean => values[name] !== undefined,
  };
};
export type Inputs = ReturnType<typeof reader>;

export type Check = (given: Inputs, expected: Values) => Values;

const agree = (actual: Value | undefined, expected: Value, tolerance: number, path: string): void => {
  if (typeof expected === 'number' && typeof actual === 'number') {
    const off = Math.abs(actual - expected);
    expect(off, `${path}: ${actual}, published ${expected}`).toBeLessThanOrEqual(tolerance);
  } else if (Array.isArray(expected) && Array.isArray(actual)) {
    expect(actual.length, path).toBe(expected.length);
    expected.forEach((value, k) => {
      agree(actual[k], value, tolerance, `${path}[${k}]`);
    });
  } else {
    expect(actual, path).toEqual(expected);
  }
};

/** Every case of tests/published/data/`file`; a case must name a known check, and give exactly what it computes. */
export const publishedCases = (file: string, checks: { readonly [check: string]: Check }): void => {
  const cases = JSON.parse(readFileSync(new URL(`./data/${file}`, import.meta.url), 'utf8')) as Case[];
  for (const { id, source, section, provenance, check, inputs, expected, tolerance } of cases) {
    it(`${id}: ${source}, ${section} [${provenance}]`, () => {
      const compute = checks[check];
      if (!compute) throw new Error(`no check named "${check}"`);
      const actual = compute(reader(inputs), expected);
      expect(Object.keys(actual).sort()).toEqual(Object.keys(expected).sort());
      for (const [name, value] of Object.entries(expected)) {
        agree(actual[name], value, typeof tolerance === 'number' ? tolerance : (tolerance[name] ?? 0), name);
      }
    });
  }
  it(`every check of ${file} is used by a case`, () => {
    expect(Object.keys(checks).filter((check) => !cases.some((c) => c.check === check))).toEqual([]);
  });
};
