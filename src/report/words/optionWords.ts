import type { Decision, OptionResult, Reading } from '../../engine/answer/decision.ts';

/** The other vehicle in question: the one the best replacing way would bring, or the only one named. */
export const replacementName = (d: Decision): string => {
  const index = d.bestReplace?.replacement ?? (d.facts.replacementNames.length === 1 ? 0 : null);
  return (index === null ? undefined : d.facts.replacementNames[index]) ?? 'another vehicle';
};

/** The two courses as short as can be: for labels in charts and heads of columns. */
export const shortSide = (d: Decision, side: 'keep' | 'replace'): string =>
  side === 'keep' ? `keep the ${d.facts.vehicleName}` : `take the ${replacementName(d)}`;

export const keeping = (d: Decision): string => `keeping the ${d.facts.vehicleName}`;

export const replacing = (d: Decision): string => `handing it on for the ${replacementName(d)}`;

export const readingWords: Readonly<Record<Reading, string>> = {
  counted: 'own time counted',
  cash: 'cash alone',
  shop: 'a shop doing everything',
};

export const READINGS: readonly Reading[] = ['counted', 'cash', 'shop'];

/** Cheapest first, as everywhere on the page. */
export const cheapestFirst = (options: readonly OptionResult[]): readonly OptionResult[] =>
  [...options].sort((a, b) => a.netPresentCost.counted - b.netPresentCost.counted || (a.id < b.id ? -1 : 1));

const EMPTY = { like: 'another like it', later: 'handed on later', without: 'doing without' } as const;

/** " Empty: another like it, or doing without.": what an empty bar stands for among these; '' where there is none. */
export const emptyWords = (options: readonly Pick<OptionResult, 'side'>[]): string => {
  const kinds = (['like', 'later', 'without'] as const).filter((side) =>
    options.some((option) => option.side === side),
  );
  return kinds.length === 0 ? '' : ` Empty: ${kinds.map((side) => EMPTY[side]).join(', or ')}.`;
};
