import type { ClaimFacts } from '../../../engine/scenario/inputs/claim.ts';

/** A thing to have in writing before anything is signed or cashed, and why it matters. */
export interface Asked {
  readonly ask: string;
  readonly why: string;
}

const ALWAYS: readonly Asked[] = [
  {
    ask: 'Does signing this, or paying in the cheque, close the claim?',
    why: 'If it does, whatever is found later is yours to pay.',
  },
  {
    ask: 'May a supplement be claimed for extra damage found later?',
    why: 'By when, and must it be seen before the work on it starts?',
  },
  {
    ask: 'Is this a release, and of what?',
    why: 'A release for the vehicle must not give up a claim for an injury: pain can come days later.',
  },
  {
    ask: 'Is the tax in it, or is it paid once it has been spent?',
    why: 'On the repair as well as on another vehicle; keep the bills.',
  },
  {
    ask: 'Which kind of parts does the estimate count with, and at what rate an hour?',
    why: "A shop's rate beyond theirs is yours to pay unless it is agreed beforehand.",
  },
  {
    ask: 'If it is left undone, what comes off a later claim, and will cover go on?',
    why: 'Damage paid for once is not paid for again; cover may wait until it has been looked at.',
  },
  {
    ask: 'What will this do to the premium, and for how long?',
    why: 'A claim can cost more in dearer insurance afterwards than it pays.',
  },
];

const TOTAL_LOSS: readonly Asked[] = [
  {
    ask: 'What will be written on its papers, and can it ever be put back on the road?',
    why: 'A brand stays for good and lowers what any buyer or insurer gives for it.',
  },
  {
    ask: 'Whose bid is taken off for the wreck if you keep it?',
    why: 'Ask to see it: a bid is somebody who would really pay that.',
  },
  {
    ask: 'Who would insure it rebuilt, and at what premium?',
    why: 'Get that quote, and the confirmed way to new papers, before choosing to keep the wreck.',
  },
];

const LENDER: Asked = {
  ask: 'Whose names stand on the cheque, and will the lender pass it on or want the repair?',
  why: 'The lender is paid first; what is short after a total loss is still owed.',
};

const OTHER: Asked = {
  ask: 'Do they accept the whole of the fault, and pay for the days without it and for the lost market value?',
  why: 'What they leave out, your own policy may pay, less your share of the bill.',
};

const STORAGE: Asked = {
  ask: 'Who pays for tow, storage and a rental, how much a day, and until which day?',
  why: 'Ask for the last day in writing and move it before: storage can eat a settlement.',
};

const SENSORS: Asked = {
  ask: 'Are setting the sensors anew and the alignment in the estimate?',
  why: 'Brakes that act by themselves aim by them.',
};

const SEATS: Asked = {
  ask: 'Are child seats and belts in it?',
  why: 'What was in the crash is replaced as its maker says; it is part of the damage.',
};

/** What to ask before signing: what cannot be undone first, then the rest. */
export const whatToAsk = (facts: ClaimFacts): readonly [readonly Asked[], readonly Asked[]] => [
  [...ALWAYS.slice(0, 3), ...TOTAL_LOSS.slice(0, 1), ...ALWAYS.slice(3, 4), STORAGE],
  [
    ...(facts.lender ? [LENDER] : []),
    ...(facts.pays === 'other' ? [OTHER] : []),
    ...TOTAL_LOSS.slice(1),
    ...ALWAYS.slice(4),
    SENSORS,
    SEATS,
  ],
];
