import { readdirSync, readFileSync } from 'node:fs';
import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { decide } from '../../src/engine/answer/decide.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import { type DrawnOtherwise, scenarioToPassOn } from '../../src/engine/scenario/private/passOn.ts';
import { SCRAMBLES, simulateScramble } from '../../src/engine/simulation/draws.ts';
import { embeddedScenario } from '../../src/report/embed.ts';
import { decisionJson } from '../../src/report/exports/json.ts';
import { renderReport } from '../../src/report/render.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
const textOf = (name: string): string => readFileSync(new URL(name, folder), 'utf8');

const scenarioOf = (text: string, today: string): Scenario => {
  const parsed = parseScenario(text, { file: 'demo.yaml', today });
  if ('problems' in parsed) throw new Error(parsed.problems.map((p) => `${p.path}: ${p.message}`).join('\n'));
  return parsed.scenario;
};

const decided = (text: string, today: string) => decide(scenarioOf(text, today), 'test');

const report = (text: string, today: string, decision = decided(text, today), drawn: DrawnOtherwise = {}) => {
  const { facts } = decision;
  const scenarioText = scenarioToPassOn(text, facts.date, drawn);
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

/** Decided with the futures that its scenario asks for. */
const drawnFrom = (scenario: Scenario) => {
  const { seed, futures } = scenario.facts.chance;
  const points = { seed, from: 0, to: futures / SCRAMBLES };
  const draws = Array.from({ length: futures === 0 ? 0 : SCRAMBLES }, (_, scramble) =>
    simulateScramble(scenario, { ...points, scramble }),
  );
  return decide(scenario, 'test', draws);
};

/** The scenario with seed and futures told beside it, as on a command line. */
const told = ({ inputs, facts, quantities, written }: Scenario, drawn: DrawnOtherwise): Scenario => ({
  inputs,
  quantities,
  written,
  facts: { ...facts, chance: { ...facts.chance, ...drawn } },
});

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

  it.each([
    ['beside a file that says nothing of it', '', { seed: 77, futures: 256 }],
    [
      'beside one that does',
      'chance: { seed: 3, futures: 1024, may_run_dry: 10 % } # ours\n',
      { seed: 77, futures: 256 },
    ],
    ['with the file as it is', 'chance: { seed: 3, futures: 256 }\n', {}],
    ['with no futures at all', '', { futures: 0 }],
  ])('with the seed and the number of futures that were told, %s', (_, chance, drawn) => {
    const text = chance + textOf('short-form.yaml');
    const scenario = told(scenarioOf(text, DAY), drawn);
    const { decision, html } = report(text, DAY, drawnFrom(scenario), drawn);
    const again = scenarioOf(embeddedScenario(html) as string, MUCH_LATER);
    expect(again.facts.chance).toEqual(scenario.facts.chance);
    const second = drawnFrom(again);
    expect(second.chances).toEqual(decision.chances);
    expect(second.walkAway).toEqual(decision.walkAway);
  });

  it('notes what was drawn otherwise before the first key, or where the file has it', () => {
    const plain = '# a note\ndate: 2026-11-25\nmiles_a_year: 9000 # by the odometer\n';
    expect(scenarioToPassOn(plain, DAY, { seed: 7 })).toBe(
      plain.replace('date', 'chance: { seed: 7 } # drawn so\ndate'),
    );
    expect(scenarioToPassOn(`${plain}chance: { seed: 1, may_run_dry: 5 % } # ours\n`, DAY, { seed: 7 })).toBe(
      `${plain}chance: { seed: 7, may_run_dry: 5 % } # ours\n`,
    );
    expect(scenarioToPassOn(`${plain}chance:\n`, DAY, { futures: 0 })).toContain('chance:\n  futures: 0\n');
    const shared = `mine: &c { seed: 1 }\n${plain}chance: *c\n`;
    expect(scenarioToPassOn(shared, DAY, { seed: 7 })).toMatch(
      /^mine: &c \{ seed: 1 \}[\s\S]*chance: \{ seed: 7 \}/,
    );
  });

  it('leaves a file that says its day as it was written, and dates one that does not before its first key', () => {
    const plain = '# a note\n\nmiles_a_year: 9000 # by the odometer\n';
    const withDay = scenarioToPassOn(plain, DAY);
    expect(withDay).toBe(
      `# a note\n\ndate: ${DAY} # the day this was worked out\nmiles_a_year: 9000 # by the odometer\n`,
    );
    expect(scenarioToPassOn(withDay, MUCH_LATER)).toBe(withDay);
  });
});
