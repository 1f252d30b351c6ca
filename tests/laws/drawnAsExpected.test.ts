import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chancesOf } from '../../src/engine/analysis/futuresSummary.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import type { ScrambleDraws } from '../../src/engine/simulation/draws.ts';
import type { Subject } from '../../src/engine/simulation/studyDesign.ts';
import { drawn } from '../support/drawn.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

const scenarioOf = (file: string): Scenario => {
  const parsed = parseScenario(readFileSync(new URL(file, folder), 'utf8'), { file, today: '2026-11-25' });
  if (!('scenario' in parsed)) throw new Error(JSON.stringify(parsed.problems));
  return parsed.scenario;
};

const checked = (scenario: Scenario, draws: readonly ScrambleDraws[], subject: Subject) =>
  chancesOf(scenario, draws, { difference: 0, grain: 0.5, payment: null, exactGuesses: 0 }, subject).failures;

/** Points of a scramble: at one in 128 it is asked what is expected at its inputs. */
const POINTS = 512;

describe('failures are drawn as often as they are expected, at the inputs of each future', () => {
  it.each(demos)('of %s', (file) => {
    const scenario = scenarioOf(file);
    const { subject, draws } = drawn(scenario, POINTS);
    const checks = checked(scenario, draws, subject);
    expect(checks.length).toBeGreaterThan(0);
    for (const { component, vehicle, agree, apart } of checks) {
      expect(agree, `${component}, ${vehicle}: ${apart.value} ± ${apart.error}`).toBe(true);
      expect(apart.error).toBeLessThan(0.1);
    }
  });

  it('and where they are not, it is told', () => {
    const scenario = scenarioOf('knife-edge.yaml');
    const { subject, draws } = drawn(scenario, POINTS);
    const oneMore = draws.map((one) => ({
      ...one,
      failures: one.failures.map((column) => column.map((n) => n + 0.5)),
    }));
    for (const { agree } of checked(scenario, oneMore, subject)) expect(agree).toBe(false);
  });
});
