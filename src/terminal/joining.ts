import type { Effects } from './effects.ts';

/** In milliseconds. What takes the crew less than this is left to it: code that has not run before runs slowly at first. */
const LONG = 700;

/** In milliseconds: after so long this thread joins without asking how far the crew is. */
const AT_THE_LATEST = 4000;

export interface Joining {
  /** Resolves when this thread should draw too. */
  readonly joins: Promise<void>;
  /** A set was there, at a time in milliseconds. */
  readonly came: (at: number) => void;
  readonly forget: () => void;
}

/**
 * When this thread, which has not drawn before, joins a crew that draws so many sets: once it is free, and the sets still
 * missing would take the crew long at the pace at which the latest two were there. Whatever it decides changes no figure.
 */
export const joining = ({ later }: Pick<Effects, 'later'>, sets: number, free: Promise<unknown>): Joining => {
  let join = (): void => {};
  const joins = new Promise<void>((done) => {
    join = done;
  });
  let isFree = false;
  let missing = sets;
  let latest: number | null = null;
  let pace = 0;
  const look = (): void => {
    if (isFree && missing * pace > LONG) join();
  };
  // That what it is busy with fails is heard elsewhere.
  const freed = (): void => {
    isFree = true;
    look();
  };
  void free.then(freed, freed);
  return {
    joins,
    came: (at) => {
      missing -= 1;
      if (latest !== null) pace = at - latest;
      latest = at;
      look();
    },
    forget: later(AT_THE_LATEST, join),
  };
};
