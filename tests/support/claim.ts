/** An invented claim as it stands in a file: a parked hatchback, hit by a trailer. */
import type { Tree } from './file.ts';

/** The claim, fresh each time; its vehicle carries no loan. */
export const claimForm = () => ({
  what: 'a trailer rolled into it where it was parked',
  pays: 'own',
  deductible: 500,
  place: 'US-NY',
  value: 3400,
  estimate: {
    lines: [
      { what: 'rear bumper cover', kind: 'parts', amount: 412.6, part: "other maker's" },
      { what: 'tailgate', kind: 'parts', amount: 655, part: 'used' },
      { what: 'body labour', kind: 'labour', hours: 9.5, rate: 58 },
      { what: 'paint and materials', kind: 'paint', amount: 610 },
    ] as Tree[],
    tax: 8,
    total: 2362.81,
  } as Tree,
  salvage: 600,
});

export type ClaimForm = ReturnType<typeof claimForm> & Tree;
