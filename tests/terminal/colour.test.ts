import { expect, it } from 'vitest';
import { wantsColour } from '../../src/terminal/node/effects.ts';

it.each([
  [{}, true, true],
  [{}, false, false],
  [{ NO_COLOR: '1' }, true, false],
  [{ NO_COLOR: 'no' }, true, false],
  [{ NO_COLOR: '' }, true, true],
  [{ TERM: 'dumb' }, true, false],
])('with %j on a terminal: %s, colour is wanted: %s', (environment, isTerminal, wanted) => {
  expect(wantsColour(environment, isTerminal)).toBe(wanted);
});
