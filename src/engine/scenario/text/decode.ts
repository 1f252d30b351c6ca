import type { Problem } from './problems.ts';

/** The most text a scenario may have, in characters (and bytes): far more than anyone writes by hand, read in a second. */
export const LONGEST_TEXT = 100_000;

const problem = (
  line: number,
  column: number,
  kind: Problem['kind'],
  message: string,
  remedy: string,
): Problem => ({ line, column, kind, path: '', message, remedy });

/** The refusal of a text that is too long, or null. */
export const tooLarge = (size: number): Problem | null =>
  size <= LONGEST_TEXT
    ? null
    : problem(
        1,
        1,
        'too large',
        `This is not a scenario: it holds ${size} characters.`,
        `A scenario has at most ${LONGEST_TEXT}.`,
      );

const startsWith = (bytes: Uint8Array, ...mark: number[]): boolean =>
  mark.every((byte, i) => bytes[i] === byte);

/** The name of a wide encoding, from its byte order mark or from NUL as every other byte. */
const wideEncoding = (bytes: Uint8Array): string | null => {
  if (startsWith(bytes, 0xff, 0xfe, 0, 0) || startsWith(bytes, 0, 0, 0xfe, 0xff)) return 'UTF-32';
  if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff)) return 'UTF-16';
  const head = bytes.subarray(0, 64);
  const zeros = head.filter((byte) => byte === 0).length;
  return head.length >= 4 && zeros * 3 >= head.length && zeros < head.length ? 'UTF-16' : null;
};

/** Line and column (1-based, in bytes) of the first byte that is not UTF-8. */
const firstBadByte = (bytes: Uint8Array): { line: number; column: number } => {
  let line = 1;
  let start = 0;
  for (let i = 0; i <= bytes.length; i++) {
    if (i < bytes.length && bytes[i] !== 0x0a) continue;
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(start, i));
    } catch {
      const good = new TextDecoder('utf-8').decode(bytes.subarray(start, i)).indexOf('\ufffd');
      return { line, column: good + 1 };
    }
    line++;
    start = i + 1;
  }
  return { line: 1, column: 1 };
};

/**
 * The text of a scenario file, from its bytes: UTF-8, with or without a byte order mark. Anything else (UTF-16,
 * UTF-32, an older eight-bit encoding, a file that is too long) is a problem that says what to do.
 */
export const decodeScenario = (bytes: Uint8Array): { text: string } | { problems: Problem[] } => {
  const large = tooLarge(bytes.length);
  if (large) return { problems: [large] };
  const wide = wideEncoding(bytes);
  if (wide !== null)
    return {
      problems: [problem(1, 1, 'encoding', `This text is encoded as ${wide}.`, 'Save it as UTF-8.')],
    };
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    const { line, column } = firstBadByte(bytes);
    const message = 'This character is not UTF-8.';
    return { problems: [problem(line, column, 'encoding', message, 'Save the file as UTF-8.')] };
  }
};

/** The first NUL of a text as a problem, or null. No editor writes one; a damaged or binary file has them. */
export const nulIn = (text: string): Problem | null => {
  const at = text.indexOf('\0');
  if (at < 0) return null;
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  const column = at - before.lastIndexOf('\n');
  const message = 'There is a NUL character here: the file is damaged or not text.';
  return problem(line, column, 'encoding', message, 'Save it as plain UTF-8 text.');
};
