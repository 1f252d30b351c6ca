import * as z from 'zod/mini';
import type { Path } from '../text/problems.ts';

/** The schemas that a schema may stand for, wrappers taken off. */
const bare = (schema: unknown): unknown[] => {
  if (schema instanceof z.ZodMiniOptional) return bare(schema._zod.def.innerType);
  if (schema instanceof z.ZodMiniPipe) return [...bare(schema._zod.def.in), ...bare(schema._zod.def.out)];
  if (schema instanceof z.ZodMiniUnion) return schema._zod.def.options.flatMap(bare);
  return [schema];
};

const child = (schema: unknown, step: string | number): unknown[] =>
  bare(schema).flatMap((one) => {
    if (one instanceof z.ZodMiniObject) {
      const shape: Readonly<Record<string, unknown>> = one.shape;
      return Object.hasOwn(shape, step) ? [shape[step]] : [];
    }
    // What stands for a list or one of its entries is a list only to a position.
    if (one instanceof z.ZodMiniArray) return typeof step === 'number' ? [one._zod.def.element] : [];
    return one instanceof z.ZodMiniRecord ? [one._zod.def.valueType] : [];
  });

/** The keys a mapping may have at a path; none where the schema has no mapping there. */
export const keysAt = (schema: unknown, path: Path): string[] => {
  const there = path.reduce<unknown[]>((all, step) => all.flatMap((one) => child(one, step)), [schema]);
  return there.flatMap(bare).flatMap((one) => (one instanceof z.ZodMiniObject ? Object.keys(one.shape) : []));
};
