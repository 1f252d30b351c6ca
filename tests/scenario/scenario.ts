import { readFileSync } from 'node:fs';
import { type Parsed, parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Quantity, Scenario } from '../../src/engine/scenario/inputs/scenario.ts';

/** The day all tests are read on. */
export const TODAY = '2026-03-10';

/** The short form, big bills left out: what is read is asked, not what ends a vehicle. */
export const SHORT_FORM = `${readFileSync(new URL('../../scenarios/short-form.yaml', import.meta.url), 'utf8')}big_bills: no\n`;

export const parse = (text: string): Parsed => parseScenario(text, { file: 'test.yaml', today: TODAY });

/** The scenario of a text that must be right. */
export const scenarioOf = (text: string): Scenario => {
  const result = parse(text);
  if ('problems' in result) throw new Error(result.problems.map((problem) => problem.message).join('\n'));
  return result.scenario;
};

/** The short form with lines put in: below the vehicle, the first job, the replacement, or at the top. */
export const withLines = (
  lines: Partial<Record<'top' | 'vehicle' | 'replacement', string>>,
  text = SHORT_FORM,
): string => {
  const below = (section: string, more = ''): [string, string] => [
    `\n${section}:\n`,
    `\n${section}:\n${more}`,
  ];
  const [vehicle, moreVehicle] = below('vehicle', lines.vehicle);
  const [replacement, moreReplacement] = below('replacement', lines.replacement);
  return `${lines.top ?? ''}${text.replace(vehicle, moreVehicle).replace(replacement, moreReplacement)}`;
};

export const quantityOf = (scenario: Scenario, key: string): Quantity => {
  const found = scenario.quantities.find((quantity) => quantity.key === key);
  if (!found) throw new Error(`no quantity ${key}`);
  return found;
};
