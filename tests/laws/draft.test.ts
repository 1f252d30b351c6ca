/** What is written of a report before its futures are drawn is what would have been written after. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decideAtAverage, withChances } from '../../src/engine/answer/decide.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { SCRAMBLES, simulateScramble } from '../../src/engine/simulation/draws.ts';
import { draftReport, renderReport } from '../../src/report/render.ts';
import { newDocument } from '../report/page.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

/** A demo before and after few futures are drawn, with more lines at its end. */
const decided = (name: string, more = ''): { readonly before: Decision; readonly after: Decision } => {
  const text = `${readFileSync(new URL(name, folder), 'utf8')}\n${more}`;
  const parsed = parseScenario(text, { file: name, today: '2026-11-25' });
  if ('problems' in parsed) throw new Error(parsed.problems.map((p) => `${p.path}: ${p.message}`).join('\n'));
  const { scenario } = parsed;
  const before = decideAtAverage(scenario, 'test');
  const draws = Array.from({ length: SCRAMBLES }, (_, scramble) =>
    simulateScramble(scenario, { seed: 1, scramble, from: 0, to: 8 }),
  );
  return { before, after: withChances(scenario, before, draws) };
};

const rendered = (decision: Decision, draft: ReturnType<typeof draftReport> | null): string =>
  renderReport(decision, { document: newDocument(), scenarioText: '' }, draft);

describe('a draft', () => {
  it.each(demos)('changes no letter of the report: %s', (name) => {
    const { before, after } = decided(name);
    const draft = draftReport(before, newDocument());
    expect(after.chances).not.toBeNull();
    expect(rendered(after, draft)).toBe(rendered(after, null));
  });

  it('says nothing of who is cheaper, even where the futures say otherwise than the ledger', () => {
    const { before, after } = decided('short-form.yaml');
    const draft = draftReport(before, newDocument());
    const other: Decision = { ...after, verdict: { ...after.verdict, kind: 'replace', cheaper: 'replace' } };
    expect(rendered(other, draft)).not.toBe(rendered(after, draft));
    expect(rendered(other, draft)).toBe(rendered(other, null));
  });

  it('changes no letter where something is private', () => {
    const { before, after } = decided(
      'short-form.yaml',
      'note: what the neighbour said\nprivate: [savings_for_this, spare_each_month, note]',
    );
    expect(rendered(after, draftReport(before, newDocument()))).toBe(rendered(after, null));
  });
});
