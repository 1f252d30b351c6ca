import { readdirSync, readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { decide } from '../../src/engine/decision/decide.ts';
import { parseScenario } from '../../src/engine/scenario/parse.ts';
import { scenarioToPassOn } from '../../src/engine/scenario/passOn.ts';
import { embeddedScenario } from '../../src/report/embed.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { isPrivate } from '../../src/report/privacy.ts';
import { renderReport } from '../../src/report/render.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
const textOf = (name: string): string => readFileSync(new URL(name, folder), 'utf8');

const decided = (text: string, today: string) => {
  const parsed = parseScenario(text, { file: 'demo.yaml', today });
  if ('problems' in parsed) throw new Error(parsed.problems.map((p) => `${p.path}: ${p.message}`).join('\n'));
  return decide(parsed.scenario, 'test');
};

const report = (text: string, today: string) => {
  const decision = decided(text, today);
  const { facts } = decision;
  const scenarioText = scenarioToPassOn(text, facts.date, (at) => isPrivate(facts, at));
  const { document } = parseHTML('<!doctype html><html><body></body></html>');
  return { decision, html: renderReport(decision, { document, scenarioText }) };
};

/** The figures of a decision: everything it says in numbers, no words. */
const figures = (decision: ReturnType<typeof decided>) => {
  const { options, difference, breakEvens, crossing } = decisionJson(decision);
  return {
    difference,
    crossing,
    costs: options.map(({ netPresentCost, equivalentMonthlyCost }) => ({
      netPresentCost,
      equivalentMonthlyCost,
    })),
    // A number that is kept private is not listed; once it is gone from the file, its default is, and tips nothing.
    roots: breakEvens.map(({ roots }) => roots).filter((roots) => roots.length > 0),
  };
};

const DAY = '2026-11-25';
const MUCH_LATER = '2031-03-02';

describe('law 12: a saved report, run again, gives its own figures', () => {
  it.each(demos)('%s, years later', (name) => {
    const { decision, html } = report(textOf(name), DAY);
    const again = decided(embeddedScenario(html) as string, MUCH_LATER);
    expect(figures(again)).toEqual(figures(decision));
  });

  it('with names and savings kept private, which leaves neither in the file', () => {
    const text = textOf('short-form.yaml')
      .replace('what: 2009 wagon', 'what: the 2009 Wanderer\n  year: 2009')
      .concat('private: [savings_for_this, spare_each_month, vehicle.what]\n');
    const { decision, html } = report(text, DAY);
    expect(html).not.toContain('Wanderer');
    expect(embeddedScenario(html)).not.toMatch(/2500|300\b/);
    const again = decided(embeddedScenario(html) as string, MUCH_LATER);
    expect(figures(again)).toEqual(figures(decision));
  });

  it('leaves a file that says its day as it was written, and dates one that does not before its first key', () => {
    const none = () => false;
    const plain = '# a note\n\nmiles_a_year: 9000 # by the odometer\n';
    const withDay = scenarioToPassOn(plain, DAY, none);
    expect(withDay).toBe(
      `# a note\n\ndate: ${DAY} # the day this was worked out\nmiles_a_year: 9000 # by the odometer\n`,
    );
    expect(scenarioToPassOn(withDay, MUCH_LATER, none)).toBe(withDay);
  });
});
