import type { Quantity } from '../inputs/scenario.ts';

/** A label without the vehicle it names: "price of a gallon". */
const unnamed = (label: string): string => label.replace(/,.*$/, '');

/**
 * Numbers that stand at one place of the file are one number, however many vehicles use it: the pump all of them fill up
 * at, what carries the tables. What is said of it is what the file says, where it says anything.
 */
export const shareNumbers = (quantities: readonly Quantity[]): Quantity[] => {
  const byPath = new Map<string, Quantity[]>();
  for (const one of quantities) byPath.set(one.path, [...(byPath.get(one.path) ?? []), one]);
  return [...byPath.values()].flatMap((all): Quantity[] => {
    const said = all.find((one) => !one.isDefault) ?? all[0];
    if (!said) return [];
    const labels = new Set(all.map(({ label }) => label));
    return [
      {
        ...said,
        label: labels.size > 1 ? unnamed(said.label) : said.label,
        standsAt: [...new Set(all.flatMap(({ standsAt }) => standsAt))],
      },
    ];
  });
};
