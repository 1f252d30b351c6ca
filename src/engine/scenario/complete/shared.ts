import type { Quantity } from '../scenario.ts';

/** One quantity in the place of several that hold the same number, with what is said of it in common. */
const merged = (all: readonly Quantity[], changes: Partial<Quantity> = {}): Quantity | undefined => {
  const given = all.find((one) => !one.isDefault) ?? all[0];
  if (!given) return undefined;
  const also = all
    .filter((one) => one !== given)
    .map((one) => ({ key: one.key, times: given.value === 0 ? 1 : one.value / given.value }));
  return { ...given, also, ...changes };
};

/** A label without the vehicle it names: "price of a gallon". */
const unnamed = (one: Quantity | undefined): string => one?.label.replace(/,.*$/, '') ?? '';

const FAMILY = /^household\.pricesRise\.(?!general$)/;

/**
 * Numbers that are one and the same in the world become one quantity, so that moving it moves it everywhere: the price
 * of one kind of energy, and what carries the public tables to today's prices, average upkeep with it. Families of
 * prices that were not given rise with prices in general.
 */
export const shareNumbers = (quantities: readonly Quantity[]): Quantity[] => {
  const ending = (end: string): Quantity[] => quantities.filter(({ key }) => key.endsWith(end));
  const pumps = groupedPumps(ending('.energy.price'));
  const ratios = ending('.averageRepairs.priceRatio');
  // What the tables say of upkeep and of parts was carried by the same ratio.
  const carried = quantities.filter(
    ({ key, isDefault, mark }) =>
      isDefault && mark === 'table' && /\.averageUpkeep$|\.components\.\d+\.shopPrice$/.test(key),
  );
  const ratio = merged([...ratios, ...carried], {
    path: 'household.table_price_ratio',
    label: 'what carries the tables of upkeep and repairs to today',
  });
  const gone = new Set([...pumps.flat(), ...ratios]);
  const rest = quantities
    .filter((one) => !gone.has(one))
    .map((one) =>
      one.key === 'household.pricesRise.general'
        ? {
            ...one,
            also: quantities
              .filter((q) => q.isDefault && FAMILY.test(q.key))
              .map(({ key }) => ({ key, times: 1 })),
          }
        : one,
    );
  return [
    ...rest,
    ...pumps.flatMap((pump) => merged(pump, pump.length > 1 ? { label: unnamed(pump[0]) } : {}) ?? []),
    ...(ratio ? [ratio] : []),
  ];
};

/** Prices of energy that are the same number for the same unit of it. */
const groupedPumps = (prices: readonly Quantity[]): Quantity[][] => {
  const groups = new Map<string, Quantity[]>();
  for (const one of prices) {
    const id = `${unnamed(one)} ${one.value} ${JSON.stringify(one.range)}`;
    groups.set(id, [...(groups.get(id) ?? []), one]);
  }
  return [...groups.values()];
};
