import type { ClaimFacts } from '../../../engine/scenario/inputs/claim.ts';

/**
 * What to take care of after a collision, each beside what it is about. Common practice, no source: none of them
 * replaces the maker's procedure, the policy or local law.
 */
export const AFTER_A_COLLISION = {
  inspect:
    'Damage to the structure, airbags, lamps, battery or steering needs a qualified look before it is driven or worked on, whatever the estimate says. What bends the outside may have bent what holds it.',
  airbags:
    'Never fit used airbags or belts: nobody can see whether they still work. Belts worn in the crash, and child seats that were in it, are replaced as their makers say.',
  paint:
    'Two-part paint harms lungs for good and takes supplied air, not a filter mask; without it, have the paint done.',
  welding:
    "No welding near fuel, wiring or high voltage: tank and lines out of the way, battery off, the maker's procedure in hand.",
} as const;

/** What is owed to others, insurer and buyer alike; stands with the offer. */
export const STRAIGHT = {
  truth:
    'Tell the insurer the truth: what was damaged before, what its money was spent on, and who did the work.',
  waive:
    'A shop that offers to waive your share of the bill may break the law, and may want you to sign for work that was not done.',
  brand:
    'A salvage or rebuilt brand stays on its papers for good and must be told to whoever buys or insures it.',
} as const;

/** Stands with every figure of a claim. */
export const NOT_ADVICE =
  'Not legal, tax or insurance advice. Local law and the policy decide, and what is in writing counts.';

/** What a signature, or none in time, may give away. Common practice, no source. */
export const whatCouldBeLost = ({ pays, lender, injured }: ClaimFacts): readonly string[] => [
  'What is found later, if signing closes the claim: have it opened and looked at first, or a supplement kept open in writing.',
  ...(injured === false
    ? []
    : ['A claim for an injury, if the release says "all claims": sign for the property alone.']),
  'Lost market value and the days without it, if the release covers them: have them settled in it or left out of it by name.',
  ...(pays === 'own'
    ? [
        'Your share of the bill: a release given to the other side may stop your insurer from getting it back.',
      ]
    : []),
  'The damage itself, for a later claim: what is paid for and not repaired comes off it, and cover may be limited until it has been looked at.',
  'The vehicle: once its papers are signed over as a total loss it is gone. Sign them against the payment, and take plates and your own things out first.',
  ...(lender
    ? ['A cheque that names the lender too: signed over, it may go to the loan and not to the repair.']
    : []),
  'The claim, if it is not made or answered in time.',
];
