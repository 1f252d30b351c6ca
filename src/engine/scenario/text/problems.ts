/** What kind of thing is wrong: stable words that a program may branch on. */
export type ProblemKind =
  | 'encoding'
  | 'too large'
  | 'syntax'
  | 'duplicate key'
  | 'forbidden key'
  | 'empty'
  | 'wrong shape'
  | 'unknown key'
  | 'missing'
  | 'not a number'
  | 'wrong unit'
  | 'out of range'
  | 'not whole'
  | 'not a range'
  | 'one number'
  | 'not one of'
  | 'not a date'
  | 'either or'
  | 'contradiction'
  | 'unsafe'
  | 'private'
  | 'caution';

/** A place in a parsed file: keys and list positions from its top. */
export type Path = readonly (string | number)[];

/** One thing wrong with a scenario file (or, among warnings, one thing to look at), as data. */
export interface Problem {
  /** 1-based; where the eye should go. */
  readonly line: number;
  readonly column: number;
  readonly kind: ProblemKind;
  /** Where in the file, dotted: "work_needed.0.parts"; '' for the file as a whole. */
  readonly path: string;
  /** The offending value as written, shortened and made safe to print; absent where there is none. */
  readonly value?: string;
  /** What is wrong, one sentence. */
  readonly message: string;
  /** What is allowed, or what to do; one sentence. */
  readonly remedy: string;
}

/** A problem before its place in the text is known. */
export interface Finding extends Omit<Problem, 'line' | 'column' | 'path' | 'value'> {
  readonly path: Path;
  readonly value?: unknown;
}

/** Control and direction-changing characters are what a terminal or an editor would obey instead of show. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to be made visible.
const OBEYED = /[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g;
/** Nothing is seen of these: harmless in a name (they join emoji and letters), a riddle in a value that is wrong. */
const UNSEEN = /[\u200b-\u200d]/g;

const escaped = (c: string): string => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** A text on one line, safe to print: what would be obeyed is shown as its escape. */
export const visible = (text: string): string => text.replace(OBEYED, escaped);

/** Any value on one line, at most 40 characters, safe to print. */
export const showValue = (value: unknown): string => {
  const text = typeof value === 'string' ? value : (JSON.stringify(value) ?? String(value));
  const safe = visible(typeof value === 'number' ? String(value) : text).replace(UNSEEN, escaped);
  return safe.length > 40 ? `${safe.slice(0, 37)}...` : safe;
};

/** The path as it is written everywhere: dotted, list positions from 0; a stranger's key is made safe to print. */
export const pathText = (path: Path): string => path.map((step) => showValue(String(step))).join('.');

/** One finding for one place and kind. */
export const findingId = ({ kind, path }: Finding): string => `${kind} ${pathText(path)}`;

/** The message with the value it is about, unless it shows it already. */
const withValue = ({ message, value }: Problem): string =>
  value === undefined || message.includes(value) ? message : message.replace(/\.$/, ` (${value}).`);

/** One line of text, safe to print: `file:line:column: path: what is wrong. What to do.` */
export const problemText = (file: string, problem: Problem): string => {
  const where = `${file}:${problem.line}:${problem.column}:`;
  const path = problem.path === '' ? '' : ` ${problem.path}:`;
  return visible(`${where}${path} ${withValue(problem)} ${problem.remedy}`.trimEnd());
};

/** In the order of the text. */
export const inOrder = (problems: readonly Problem[]): Problem[] =>
  [...problems].sort(
    (a, b) => a.line - b.line || a.column - b.column || Number(a.path > b.path) - Number(a.path < b.path),
  );
