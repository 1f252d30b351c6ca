/** A word that is to be found wherever it stands as a whole word, and what then stands in for it. */
export interface Hidden {
  readonly word: string;
  readonly instead: string;
}

/** A text as it is compared, and for each of its characters where it began in the text as written. */
interface Folded {
  readonly text: string;
  readonly from: readonly number[];
}

/**
 * Letters without their size, accents (composed or not), ligatures and characters that nobody sees: "ZOË" and "zoe"
 * are one word, "STRASSE" and "straße" too.
 */
const folded = (text: string): Folded => {
  let plain = '';
  const from: number[] = [];
  let at = 0;
  for (const character of text) {
    const bare = character.normalize('NFKD').replace(/[\p{M}\p{Cf}]/gu, '');
    const same = bare.toUpperCase().toLowerCase();
    for (let i = 0; i < same.length; i++) from.push(at);
    plain += same;
    at += character.length;
  }
  return { text: plain, from };
};

/** Scripts that set no spaces between their words: a name is found within a text there. */
const UNSPACED = /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}\p{sc=Thai}\p{sc=Lao}\p{sc=Khmer}\p{sc=Myanmar}]/u;

/** What may stand between two parts of a word for what was written there: "Jean-Luc" is "jean luc" and "JeanLuc" too. */
const gap = (written: string): string =>
  `[^\\p{L}\\p{N}${/[,;:!?()]/.test(written) ? '' : ',;:!?()'}]{0,${Math.max(3, written.length)}}`;

/** The word wherever it stands whole. Null where it holds nothing that could be known again. */
const patternOf = (word: string): RegExp | null => {
  const plain = folded(word).text;
  const parts = plain.match(/[\p{L}\p{N}]+/gu);
  if (parts === null) return null;
  // A few digits would take other numbers with them; a long one is a telephone's, a policy's.
  if (!/\p{L}/u.test(plain) && parts.join('').length < 6) return null;
  const edge = (part: string | undefined, boundary: string): string =>
    UNSPACED.test(part ?? '') ? '' : boundary;
  const gaps = plain.split(/[\p{L}\p{N}]+/u).slice(1, -1);
  return new RegExp(
    edge(parts[0], '(?<![\\p{L}\\p{N}])') +
      parts.map((part, i) => part + (i < gaps.length ? gap(gaps[i] as string) : '')).join('') +
      edge(parts.at(-1), '(?![\\p{L}\\p{N}])'),
    'gu',
  );
};

interface Match {
  readonly start: number;
  readonly end: number;
  readonly instead: string;
}

/**
 * A function that takes these words out of a text wherever they stand as whole words, in any letters, with accents or
 * without; the longest first, each place once. What it puts in their place is not looked at again.
 */
export const withoutWords = (hidden: readonly Hidden[]): ((text: string) => string) => {
  const wanted = hidden.flatMap(({ word, instead }) => {
    const pattern = patternOf(word);
    return pattern === null ? [] : [{ pattern, instead }];
  });
  return (text) => {
    const { text: plain, from } = folded(text);
    const found = wanted.flatMap(({ pattern, instead }): Match[] =>
      [...plain.matchAll(pattern)].map((match) => ({
        start: match.index,
        end: match.index + match[0].length,
        instead,
      })),
    );
    found.sort((a, b) => a.start - b.start || b.end - a.end);
    let out = '';
    let [done, reached] = [0, 0];
    for (const { start, end, instead } of found) {
      if (start < reached) continue;
      out += text.slice(done, from[start]) + instead;
      reached = end;
      done = from[end] ?? text.length;
    }
    return out + text.slice(done);
  };
};
