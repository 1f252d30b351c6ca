/** The rule's limits are the right ones: with all of them lower or higher, following it costs no less over the same futures. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { drawFutures } from '../../src/engine/simulation/draws.ts';
import { type Subject, subjectOf } from '../../src/engine/simulation/studyDesign.ts';

const SCRAMBLES = 8;
const POINTS = 128;

/** The same subject, the rule paying bills up to so many times its limit. */
const scaled = (subject: Subject, times: number): Subject => {
  const { rule } = subject;
  if (!rule) throw new Error('there is no rule to follow');
  return {
    ...subject,
    rule: {
      ...rule,
      pays: (bill, month, part, mended) => bill <= times * rule.limit(month, part, mended),
    },
  };
};

/** What following the rule costs in each scramble, on average. */
const costs = (subject: Subject): number[] =>
  Array.from({ length: SCRAMBLES }, (_, scramble) => {
    const all = drawFutures(subject, { seed: 14, scramble, from: 0, to: POINTS }).costs.at(-1);
    return (all as Float64Array).reduce((a, b) => a + b, 0) / POINTS;
  });

describe('the rule of the repair limit, big bills and all', () => {
  for (const file of ['short-form.yaml', 'wagon-weekend.yaml'])
    it(`is not bettered by other limits: ${file}`, () => {
      const text = readFileSync(new URL(`../../scenarios/${file}`, import.meta.url), 'utf8');
      const read = parseScenario(text, { file, today: '2026-12-01' });
      if ('problems' in read) throw new Error('a demo is refused');
      const subject = subjectOf(read.scenario);
      expect(subject.walksTo).toBe(null);
      const own = costs(subject);
      expect(costs(scaled(subject, 1))).toStrictEqual(own);
      let differ = 0;
      for (const times of [0.7, 0.85, 1.15, 1.3]) {
        const apart = costs(scaled(subject, times)).map((cost, s) => cost - (own[s] as number));
        const mean = apart.reduce((a, b) => a + b, 0) / SCRAMBLES;
        const spread = apart.reduce((a, b) => a + (b - mean) ** 2, 0) / (SCRAMBLES * (SCRAMBLES - 1));
        expect(mean, `${times} times the limits`).toBeGreaterThan(-3 * Math.sqrt(spread) - 1e-9);
        if (mean !== 0) differ += 1;
      }
      // Limits that never matter could not be wrong.
      expect(differ).toBeGreaterThan(0);
    }, 240_000);
});
