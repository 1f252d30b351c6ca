import { expect } from 'vitest';
import type { Parsed } from '../../src/engine/scenario/file/parse.ts';
import { problemText } from '../../src/engine/scenario/text/problems.ts';
import { parse } from './scenario.ts';

/** Whatever the text: a scenario, or problems that each have a place and words, and print on one line. */
export const holds = (text: string): Parsed => {
  const result = parse(text);
  const found = 'problems' in result ? result.problems : result.warnings;
  if ('problems' in result) expect(found.length).toBeGreaterThan(0);
  const lines = text.split(/\r\n|\r|\n/).length;
  for (const problem of found) {
    expect(problem.line).toBeGreaterThanOrEqual(1);
    expect(problem.line).toBeLessThanOrEqual(lines + 1);
    expect(problem.column).toBeGreaterThanOrEqual(1);
    expect(problem.message).not.toBe('');
    // biome-ignore lint/suspicious/noControlCharactersInRegex: nothing a terminal would obey may be printed.
    expect(problemText('f', problem)).not.toMatch(/[\u0000-\u001f\u007f]/);
  }
  if ('scenario' in result)
    for (const { key, value } of result.scenario.quantities) expect(Number.isFinite(value), key).toBe(true);
  return result;
};
