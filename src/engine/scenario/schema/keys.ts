import * as z from 'zod';
import type { Path } from '../problems.ts';

/** The schemas that a schema may stand for, wrappers taken off. */
const bare = (schema: unknown): unknown[] => {
  if (schema instanceof z.ZodOptional) return bare(schema.unwrap());
  if (schema instanceof z.ZodPipe) return [...bare(schema.in), ...bare(schema.out)];
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(bare);
  return [schema];
};

const child = (schema: unknown, step: string | number): unknown[] =>
  bare(schema).flatMap((one) => {
    if (one instanceof z.ZodObject) {
      const shape: Readonly<Record<string, unknown>> = one.shape;
      return Object.hasOwn(shape, step) ? [shape[step]] : [];
    }
    if (one instanceof z.ZodArray) return [one.element];
    return one instanceof z.ZodRecord ? [one.valueType] : [];
  });

/** The keys a mapping may have at a path; none where the schema has no mapping there. */
export const keysAt = (schema: unknown, path: Path): string[] => {
  const there = path.reduce<unknown[]>((all, step) => all.flatMap((one) => child(one, step)), [schema]);
  return there.flatMap(bare).flatMap((one) => (one instanceof z.ZodObject ? Object.keys(one.shape) : []));
};
