import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { decide } from '../../src/engine/answer/decide.ts';
import type { Decision, Notice } from '../../src/engine/answer/decision.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { embeddedScenario } from '../../src/report/embed.ts';
import { costsCsv } from '../../src/report/exports/costs.ts';
import { saidDates } from '../../src/report/format.ts';
import { read, render, text } from './page.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

const decided = (scenario: string): Decision => {
  const parsed = parseScenario(scenario, { file: 'demo.yaml', today: '2026-11-25' });
  if (!('scenario' in parsed)) throw new Error(JSON.stringify(parsed.problems));
  return decide(parsed.scenario, '0.0.0');
};

describe.each(files)('the report of %s', (file) => {
  const scenario = readFileSync(new URL(file, folder), 'utf8');
  const d = decided(scenario);
  const page = render(d, scenario);
  const body = read(page);

  it('is small, whole and says no nonsense', () => {
    expect(gzipSync(page, { level: 9 }).length).toBeLessThan(60_000);
    expect(text(page).match(/\b(NaN|undefined|null|Infinity|\[object)\b/)).toBeNull();
    const more = (d.claim ? 3 : 0) + (d.cover && d.cover.parts.length > 0 ? 1 : 0);
    expect([...body.querySelectorAll('section')].length).toBe(10 + more);
  });

  it('holds its scenario', () => {
    expect(embeddedScenario(page)).toBe(scenario);
  });

  it('says every notice, and safety first', () => {
    const words = text(page);
    // What the named work costs goes before the full stop.
    const said = (notice: Notice): string => saidDates(notice.text).replace(/\.$/, '');
    for (const notice of d.notices) expect(words).toContain(said(notice));
    for (const notice of d.notices.filter((n) => n.place === 'first')) {
      expect(body.querySelector('.first')?.textContent).toContain(said(notice));
      if (notice.cost) expect(body.querySelector('.first')?.textContent).toMatch(/\([$€]\d/);
    }
  });

  it('prints the very totals of the decision', () => {
    const ledger = body.querySelector('#arithmetic')?.textContent ?? '';
    for (const option of [d.bestKeep, d.bestReplace])
      if (option)
        expect(ledger).toContain(
          (option.netPresentCost.counted / 100).toLocaleString('en', { minimumFractionDigits: 2 }),
        );
  });

  it('has an answer of a few lines, and a row for every posting', () => {
    const lines = answerLines(d);
    expect(lines.length).toBeGreaterThanOrEqual(4);
    expect(lines.length).toBeLessThanOrEqual(14);
    expect(costsCsv(d).trimEnd().split('\r\n')).toHaveLength(
      1 + d.options.reduce((n, o) => n + o.ledger.length, 0),
    );
  });
});
