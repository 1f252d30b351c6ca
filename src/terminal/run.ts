import { visible } from '../engine/scenario/text/problems.ts';
import { readArguments } from './arguments.ts';
import type { Effects } from './effects.ts';
import { EXIT } from './exit.ts';
import { helpText } from './help.ts';
import { type Screen, screenOver } from './screen.ts';
import { isHalfWay, systemCode, trouble } from './trouble.ts';

/** Carries out one command line. The result is the code to exit with; nothing is thrown. */
export const run = async (argv: readonly string[], effects: Effects): Promise<number> => {
  const screen = screenOver(effects);
  try {
    return await carryOut(argv, screen);
  } catch (error) {
    // Whoever was reading (`stillworth costs FILE | head`) has seen enough.
    if (systemCode(error) === 'EPIPE') return EXIT.done;
    const words = trouble('standard output', error);
    const told =
      words === null
        ? faultText(error, screen)
        : `${[words, ...(isHalfWay(error) ? ['not all of it was printed'] : []), ...wasWritten(screen)].join('; ')}\n`;
    await screen.err(told).catch(() => {});
    return words === null ? EXIT.fault : EXIT.misuse;
  }
};

/** What the run wrote before it went wrong. */
const wasWritten = ({ written }: Screen): string[] => written.map((path) => `${visible(path)} was written`);

const carryOut = async (argv: readonly string[], effects: Screen): Promise<number> => {
  const asked = readArguments(argv);
  if ('misuse' in asked) {
    await effects.err(`${asked.misuse.map(visible).join('\n')}\nAll there is: stillworth --help\n`);
    return EXIT.misuse;
  }
  // Each command is loaded when it is asked for: none waits for what only another needs.
  switch (asked.command) {
    case 'help':
      await effects.out(helpText(effects.version));
      return EXIT.done;
    case 'version':
      await effects.out(`${effects.version}\n`);
      return EXIT.done;
    case 'new':
      return (await import('./commands/new.ts')).newCommand(asked.file, effects);
    case 'check':
      return (await import('./commands/check.ts')).checkCommand(asked.file, effects);
    case 'report':
      return (await import('./commands/report.ts')).reportCommand(asked.file, asked.options, effects);
    case 'bill': {
      const { file, component, amount, options } = asked;
      const bill = { file, component, amount, json: options.json, set: options.set };
      return (await import('./commands/bill.ts')).billCommand(bill, effects);
    }
    case 'costs':
      return (await import('./commands/costs.ts')).costsCommand(asked.file, asked.options, effects);
  }
};

const faultText = (error: unknown, screen: Screen): string =>
  [
    `A fault of stillworth ${screen.version} itself, not of your file. ${wroteText(screen)}`,
    'Please report it with these lines:',
    error instanceof Error ? (error.stack ?? error.message) : String(error),
    '',
  ].join('\n');

const wroteText = (screen: Screen): string =>
  screen.written.length === 0
    ? 'Nothing was written.'
    : wasWritten(screen)
        .map((told) => `${told}.`)
        .join(' ');
