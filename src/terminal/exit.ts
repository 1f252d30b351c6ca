/** How a run ends. */
export const EXIT = {
  done: 0,
  /** What the scenario says is wrong: the problems are on standard error. */
  wrongFile: 1,
  /** The command cannot be carried out as it was given: an unknown option, no such file, nothing to be overwritten. */
  misuse: 2,
  /** A fault of the program itself. */
  fault: 3,
} as const;
