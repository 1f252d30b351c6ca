import { describe, expect, it } from 'vitest';
import { withoutWords } from '../../../../src/engine/scenario/private/wholeWords.ts';

const without = (word: string, text: string): string => withoutWords([{ word, instead: '#' }])(text);

describe('a word taken out of a text', () => {
  it.each([
    ['Mo', "Mo said so; mo's wagon, MO", "# said so; #'s wagon, #"],
    ['Mo', 'moment, Momo, memo, Mo2', 'moment, Momo, memo, Mo2'],
    ['Zoë', 'ZOE\u0308, zoë and Zoe', '#, # and #'],
    ['Zoe\u0308', "zoë's", "#'s"],
    ["O'Neil", 'O\u2019Neil, oneil, O NEIL', '#, #, #'],
    ['Jean-Luc', 'jean luc, jean_luc, JeanLuc', '#, #, #'],
    ['Großmann', 'GROSSMANN', '#'],
    ['Mo Bly', 'Mo and Mo  Bly', 'Mo and #'],
    ['M\u00ado', 'Mo, m\u200bo', '#, #'],
    ['\u7530\u4e2d', '\u7530\u4e2d\u3055\u3093', '#\u3055\u3093'],
    ['555 0199-42', 'call 555-0199 42', 'call #'],
    ['Mill Lane, the yard', 'mill lane - the yard', '#'],
    ['42', 'a 42 inch bar', 'a 42 inch bar'],
    ['a.*', 'a.* b, abc', '#.* b, abc'],
    ['...', 'a ... b', 'a ... b'],
  ])('%s: %s', (word, text, out) => expect(without(word, text)).toBe(out));

  it('goes before a shorter one in it, and what stands in is left alone', () => {
    const both = withoutWords([
      { word: 'Mo', instead: 'the partner' },
      { word: 'Mo Partner', instead: 'the mechanic' },
      { word: 'partner', instead: '(private)' },
    ]);
    expect(both('Mo Partner, Mo, partner')).toBe('the mechanic, the partner, (private)');
  });
});
