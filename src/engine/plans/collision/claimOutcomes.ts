import type { Claim } from '../../scenario/inputs/claim.ts';
import type { Inputs } from '../../scenario/inputs/inputs.ts';

/** What turns out or does not about a claim; where the chance is 0 or 1 nothing is left to turn out. */
export const claimTurns = ({
  claim,
}: Inputs): {
  readonly key: string;
  readonly name: string;
  readonly what: string;
  readonly chance: (inputs: Inputs) => number;
}[] => {
  if (!claim) return [];
  const all = [
    [
      'claim.supplement',
      (of: Claim) => of.estimate.supplement.chance,
      'whether more damage shows once it is opened',
    ],
    ['claim.recovered', (of: Claim) => of.recovered, 'whether the other side pays the deductible back'],
    [
      'claim.lost_value',
      (of: Claim) => of.lostValue?.paid ?? 0,
      'whether the claim for lost market value is paid',
    ],
    [
      'claim.rebuild.refused',
      (of: Claim) => of.rebuild?.refused ?? 0,
      'whether the papers of the rebuilt one are refused',
    ],
  ] as const;
  return all
    .filter(([, chance]) => chance(claim) > 0 && chance(claim) < 1)
    .map(([key, chance, what]) => ({
      key,
      name: key,
      what,
      chance: (inputs) => (inputs.claim ? chance(inputs.claim) : 0),
    }));
};
