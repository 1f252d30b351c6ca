import type { Decision } from '../engine/answer/decision.ts';
import type { Facts } from '../engine/scenario/inputs/scenario.ts';
import { isWithin } from '../engine/scenario/private/privateMoney.ts';

/** True when a path of the scenario file, or anything it stands in, is marked private. */
export const isPrivate = (facts: Facts, path: string): boolean =>
  facts.private.some((marked) => isWithin(path, marked));

/**
 * The decision as it may be passed on. Private words were out of the scenario before anything was decided, and private
 * money was not read: what is left is to say nothing of the default that stands in for such a number.
 */
export const withoutPrivate = (d: Decision): Decision => {
  const shown = (q: { readonly path: string }): boolean => !isPrivate(d.facts, q.path);
  return d.facts.private.length === 0
    ? d
    : {
        ...d,
        quantities: d.quantities.filter(shown),
        breakEvens: d.breakEvens.filter((b) => shown(b.quantity)),
        swings: d.swings.filter((s) => shown(s.quantity)),
        breakEvenLine:
          d.breakEvenLine && shown(d.breakEvenLine.x) && shown(d.breakEvenLine.y) ? d.breakEvenLine : null,
        verdict: { ...d.verdict, settledBy: d.verdict.settledBy.filter((b) => shown(b.quantity)) },
      };
};
