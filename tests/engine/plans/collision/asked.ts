/** What tests of a claim ask of it: its ways, their results, and the view of it. */
import { claimView } from '../../../../src/engine/analysis/claimView.ts';
import type { OptionResult } from '../../../../src/engine/answer/decision.ts';
import { claimWays } from '../../../../src/engine/evaluation/collisionOptions.ts';
import { resultOf } from '../../../../src/engine/evaluation/results.ts';
import { contextOf, EXPECTED, type Future } from '../../../../src/engine/plans/vehicle/context.ts';
import type { hit } from './collision.ts';

export type Hit = ReturnType<typeof hit>;
export const ctxOf = ({ inputs, facts }: Hit, future: Future = EXPECTED) =>
  contextOf(inputs, facts, future, 'to the cent');
export const waysFor = (one: Hit) => claimWays(ctxOf(one));
export const results = (one: Hit): OptionResult[] => {
  const ctx = ctxOf(one);
  return claimWays(ctx).open.map((way) => resultOf(way.build(ctx), ctx));
};
export const viewOf = (one: Hit) => claimView(waysFor(one), results(one), ctxOf(one));
export const named = <T extends { readonly id: string }>(all: readonly T[], id: string): T => {
  const found = all.find((each) => each.id.startsWith(id));
  if (!found) throw new Error(`No ${id} among ${all.map((each) => each.id).join(', ')}`);
  return found;
};
export const whyOf = (one: Hit, id: string): string | undefined =>
  waysFor(one).closed.find((each) => each.id === id)?.why;
/** In cents: a category's cash, in one month or in all. */
export const sumOf = (result: OptionResult, category: string, month: number | null = null): number =>
  result.ledger
    .filter((row) => row.category === category && (month === null || row.month === month))
    .reduce((sum, row) => sum + row.amount.cash, 0);
