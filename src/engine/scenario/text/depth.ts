import type { Problem } from './problems.ts';

const DEEPEST = 60;

/**
 * The refusal of brackets nested, or dashes stacked on one line, deeper than any scenario: a parser would run out of
 * room on them. Brackets within quotation marks count too, which only matters to texts with sixty open ones.
 */
export const tooDeep = (text: string): Problem | null => {
  let depth = 0;
  let stacked = 0;
  let blank = true;
  let line = 1;
  let start = 0;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 0x0a) {
      line++;
      start = i + 1;
      stacked = 0;
      blank = true;
      continue;
    }
    if (c === 0x5b || c === 0x7b) depth++;
    else if (c === 0x5d || c === 0x7d) depth = Math.max(0, depth - 1);
    else if ((c === 0x2d || c === 0x3f) && text.charCodeAt(i + 1) === 0x20) stacked++;
    blank &&= c === 0x20;
    if (depth > DEEPEST || stacked > DEEPEST || (blank && i - start > 8 * DEEPEST))
      return {
        line,
        column: i - start + 1,
        path: '',
        kind: 'too large',
        message: `This goes more than ${DEEPEST} levels deep.`,
        remedy: 'A scenario needs five: look for a bracket that is never closed.',
      };
  }
  return null;
};
