import * as OWNED from '../inputs/ownedInputs.ts';
import * as PURCHASE from '../inputs/purchaseInputs.ts';
import type { Spec } from '../inputs/specs.ts';
import * as VEHICLE from '../inputs/vehicleInputs.ts';
import * as WORK from '../inputs/workInputs.ts';
import { moneyText } from '../text/amounts.ts';
import type { Finding, Path } from '../text/problems.ts';
import type { Raw } from './rawView.ts';
import { vehiclesOf } from './vehicleRules.ts';

/** One amount of the file, and where it stands. */
interface Amount {
  readonly path: Path;
  readonly value: number;
}

const amountAt = (raw: Raw, path: Path, spec: Spec): Amount[] => {
  const value = raw.num(path, spec);
  return value === undefined ? [] : [{ path, value }];
};

/** The values a file foretells for a vehicle. */
const pointsOf = (raw: Raw, vehicle: Path): Amount[] =>
  raw
    .each([...vehicle, 'value_falls'])
    .flatMap((point) => amountAt(raw, [...point, 'value'], VEHICLE.POINT.value));

const caution = (path: Path, message: string, remedy: string): Finding => ({
  kind: 'caution',
  path,
  message,
  remedy,
});

/** A value above the price when new: a classic may have one, a slip of the pen more often. */
export const aboveNew = (raw: Raw): Finding[] =>
  vehiclesOf(raw).flatMap((at): Finding[] => {
    const whenNew = raw.num([...at, 'price_when_new'], VEHICLE.PRESENT.priceWhenNew);
    if (whenNew === undefined) return [];
    const worth =
      at[0] === 'vehicle'
        ? [...amountAt(raw, [...at, 'sells_for', 'running'], OWNED.SALE.running), ...pointsOf(raw, at)]
        : amountAt(raw, [...at, 'worth_day_after'], PURCHASE.OFFER.worthDayAfter);
    return worth
      .filter(({ value }) => value > whenNew)
      .map(({ path, value }) =>
        caution(
          path,
          `This value, ${moneyText(value, raw.units.currency)}, is above the price when new, ${moneyText(whenNew, raw.units.currency)}.`,
          'Look at the two again; for a vehicle that is sought after it may be so.',
        ),
      );
  });

/** Another vehicle that is worth more later than it costs: driving it would earn money. */
export const dearerLater = (raw: Raw): Finding[] =>
  raw.replacements.flatMap((at): Finding[] => {
    const key = raw.has([...at, 'price']) ? 'price' : 'price_with_all_fees';
    const price = raw.num([...at, key], PURCHASE.PRICE.price);
    if (price === undefined) return [];
    const later = [
      ...amountAt(raw, [...at, 'worth_day_after'], PURCHASE.OFFER.worthDayAfter),
      ...pointsOf(raw, at),
    ];
    return later
      .filter(({ value }) => value > price)
      .map(({ path, value }) =>
        caution(
          path,
          `It is worth ${moneyText(value, raw.units.currency)} here, more than the ${moneyText(price, raw.units.currency)} it costs.`,
          'Look at the two again; a bargain may be so.',
        ),
      );
  });

/** Everything in the file that has a shop's price with parts beside it. */
const workPlaces = (raw: Raw): Path[] => {
  const jobs = raw.each(['work_needed']);
  return [
    ...jobs.flatMap((job) => [job, ...['not_cured', 'more_found', 'patch'].map((key) => [...job, key])]),
    ...vehiclesOf(raw).flatMap((at) => [...raw.each([...at, 'upkeep']), ...raw.each([...at, 'components'])]),
    ['claim', 'own_repair'],
  ];
};

/** A shop's price has the parts in it. Nil is no price but a favour: a recall, a guarantee. */
export const shopBelowParts = (raw: Raw): Finding[] =>
  workPlaces(raw).flatMap((at): Finding[] => {
    const path = [...at, 'shop_price'];
    const shop = raw.num(path, WORK.WORK_COST.shopPrice);
    const parts = raw.num([...at, 'parts'], WORK.WORK_COST.parts);
    if (shop === undefined || parts === undefined || shop === 0 || shop >= parts) return [];
    return [
      caution(
        path,
        `The shop's price, ${moneyText(shop, raw.units.currency)}, is below that of the parts alone, ${moneyText(parts, raw.units.currency)}.`,
        "A shop's price has the parts in it: look at the two again.",
      ),
    ];
  });
