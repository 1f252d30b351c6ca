import { number, type Want } from './wants.ts';

/** The first number below `value` that is none, by its place; null where all are. Columns of draws are not looked at. */
const unsound = (value: unknown, at: string): string | null => {
  if (typeof value === 'number') return Number.isFinite(value) ? null : at;
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return null;
  for (const [name, inner] of Object.entries(value)) {
    const found = unsound(inner, at === '' ? name : `${at}.${name}`);
    if (found !== null) return found;
  }
  return null;
};

/** What is thrown underneath, by the engine or by a library, is told as one of this function's own errors. */
const answered = <R>(name: string, ask: () => R): R => {
  try {
    return ask();
  } catch (error) {
    if (!(error instanceof Error) || error.message.startsWith(name)) throw error;
    if (error instanceof TypeError) throw new TypeError(`${name}: ${error.message}`, { cause: error });
    if (error instanceof RangeError) throw new RangeError(`${name}: ${error.message}`, { cause: error });
    throw new RangeError(`${name}: no answer to these arguments (${error.message})`, { cause: error });
  }
};

/**
 * The same function for callers whose arguments nobody has read yet: each is looked at first, and an answer that no
 * number can hold (it overflows, or there is none) is an error, not NaN. Inside the engine, where everything has been
 * read once, the plain function is called.
 *
 * @param wants what each argument has to be, by its name, in order
 */
export const guarded =
  <A extends readonly unknown[], R>(
    name: string,
    wants: Readonly<Record<string, Want>>,
    f: (...args: A) => R,
  ): ((...args: A) => R) =>
  (...args) => {
    const answer = answered(name, () => {
      Object.entries(wants).forEach(([argument, want], i) => {
        want(args[i], `${name}, ${argument}`);
      });
      return f(...args);
    });
    const at = unsound(answer, '');
    if (at !== null)
      throw new RangeError(
        `${name}: no number holds the answer${at === '' ? '' : ` (${at})`} to these arguments`,
      );
    return answer;
  };

/** A function of the caller's that must give a number wherever it is asked; `at` names it in the message. */
export const answering = <A extends readonly number[]>(f: (...args: A) => number, at: string) => {
  const want = number();
  return (...args: A): number => {
    const answer = f(...args);
    want(answer, `${at}(${args.join(', ')})`);
    return answer;
  };
};
