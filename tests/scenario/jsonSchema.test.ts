import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { scenarioJsonSchema } from '../../src/engine/scenario/schema/jsonSchema.ts';

const file = new URL('../../scenarios/scenario.schema.json', import.meta.url);
const current = `${JSON.stringify(scenarioJsonSchema(), null, 2)}\n`;

type Schema = { readonly [key: string]: unknown };
const isSchema = (node: unknown): node is Schema => typeof node === 'object' && node !== null;

/** Every schema of a property, with the path to it. */
const properties = (node: unknown, path = ''): [string, Schema][] => {
  if (!isSchema(node)) return [];
  const own = isSchema(node.properties)
    ? Object.entries(node.properties).flatMap(([key, below]): [string, Schema][] =>
        isSchema(below) ? [[`${path}.${key}`, below], ...properties(below, `${path}.${key}`)] : [],
      )
    : [];
  const inside = [
    node.items,
    ...Object.values(isSchema(node.definitions) ? node.definitions : {}),
    ...(Array.isArray(node.anyOf) ? node.anyOf : []),
  ];
  return [...own, ...inside.flatMap((below) => properties(below, path))];
};

describe('scenario.schema.json', () => {
  it('is made from the schema', () => {
    if (process.env.UPDATE === '1') writeFileSync(file, current);
    expect(readFileSync(file, 'utf8'), 'stale: run UPDATE=1 npx vitest run tests/scenario').toBe(current);
  });

  it('allows no unknown keys, and says what each key is', () => {
    const schema = scenarioJsonSchema();
    expect(schema.additionalProperties).toBe(false);
    const silent = properties(schema).filter(
      ([path, one]) =>
        one.description === undefined &&
        one.anyOf === undefined &&
        one.type !== 'array' &&
        !/\.(value|how|source|note|low|likely|high|min|max)$/.test(path),
    );
    expect(silent.map(([path]) => path)).toEqual([]);
  });

  it('asks for what is never assumed', () => {
    const found = new Map(properties(scenarioJsonSchema()));
    expect(found.get('.vehicle')?.required).toEqual(
      expect.arrayContaining(['insurance_a_year', 'odometer', 'price_when_new', 'sells_for']),
    );
    expect(found.get('.vehicle.sells_for')?.required).toEqual(['running', 'as_it_stands']);
  });
});
