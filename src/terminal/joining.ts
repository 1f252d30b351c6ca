import type { Effects } from './effects.ts';

/** In milliseconds. What takes the crew less than this is left to it: code that has not run before runs slowly at first. */
const LONG = 700;

/** In milliseconds: after so long this thread joins without asking how far the crew is. */
const AT_THE_LATEST = 4000;

export interface Joining {
  /** Resolves when this thread should draw too. */
  readonly joins: Promise<void>;
  /** A set has come. */
  readonly came: () => void;
  readonly forget: () => void;
}

/**
 * When this thread, which has not drawn before, joins a crew that draws so many sets: once the sets still missing would
 * take the crew long at the pace at which the latest two came. Whatever it decides changes no figure.
 */
export const joining = ({ later, now }: Pick<Effects, 'later' | 'now'>, sets: number): Joining => {
  let join = (): void => {};
  const joins = new Promise<void>((done) => {
    join = done;
  });
  let missing = sets;
  let latest: number | null = null;
  return {
    joins,
    came: () => {
      missing -= 1;
      const at = now();
      if (latest !== null && missing * (at - latest) > LONG) join();
      latest = at;
    },
    forget: later(AT_THE_LATEST, join),
  };
};
