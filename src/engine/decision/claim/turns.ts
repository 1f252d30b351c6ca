import type { Inputs } from '../../scenario/inputs.ts';

/** What turns out or does not about a claim; where the chance is 0 or 1 nothing is left to turn out. */
export const claimTurns = ({
  claim,
}: Inputs): { readonly key: string; readonly name: string; readonly what: string }[] => {
  if (!claim) return [];
  const all = [
    ['claim.supplement', claim.estimate.supplement.chance, 'whether more damage shows once it is opened'],
    ['claim.recovered', claim.recovered, 'whether the other side pays the deductible back'],
    ['claim.lost_value', claim.lostValue?.paid ?? 0, 'whether the claim for lost market value is paid'],
    [
      'claim.rebuild.refused',
      claim.rebuild?.refused ?? 0,
      'whether the papers of the rebuilt one are refused',
    ],
  ] as const;
  return all
    .filter(([, chance]) => chance > 0 && chance < 1)
    .map(([key, , what]) => ({ key, name: key, what }));
};
