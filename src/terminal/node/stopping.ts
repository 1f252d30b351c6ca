/** The signals that ask a program to stop, and what a shell makes of them: 128 + the signal's number. */
const STOPS = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 } as const;

/**
 * Runs `clean` if the program is told to stop, then stops it, with whatever else is running in it. The result takes
 * that back. One at a time: the program ends with the first.
 */
export const onStop = (clean: () => void): (() => void) => {
  const undo = Object.entries(STOPS).map(([signal, code]) => {
    const stop = (): void => {
      clean();
      process.exit(code);
    };
    process.once(signal, stop);
    return () => process.removeListener(signal, stop);
  });
  return () => {
    for (const each of undo) each();
  };
};
