import { type CivilDate, parseCivilDate } from '../../quantity/civilDate.ts';
import type { EnergyUnit } from '../../quantity/energyUnits.ts';
import type { Chance, EnergyStated, Facts, JobFacts, Need } from '../inputs/scenario.ts';
import type { Units } from '../inputs/units.ts';
import { REDACTED } from '../private/standIns.ts';
import type { Stated } from '../reading/stated.ts';
import type { Sparse, SparseReplacement, SparseRunning } from '../schema/scenarioSchema.ts';

type Offers = Record<string, number | boolean>;
type Offer = Stated | 'yes' | 'no' | undefined;

const plain = (offer: Offer): number | boolean | undefined =>
  typeof offer === 'object' ? offer.value : offer === undefined ? undefined : offer === 'yes';

/** What a vehicle offers; nothing is said about what is missing. */
const offersOf = (file: SparseRunning): Offers => {
  const { seats, towing, child_seats, range, winter } = file;
  const all: readonly (readonly [string, Offer])[] = [
    ...Object.entries({ seats, towing, child_seats, range, winter }),
    ...Object.entries(file.offers ?? {}),
  ];
  return Object.fromEntries(
    all.flatMap(([name, offer]) => {
      const value = plain(offer);
      return value === undefined ? [] : [[name, value] as const];
    }),
  );
};

const FAR: CivilDate = { year: 1, month: 1, day: 1 };

/** Whole months from one day to another, rounded down: a deadline is never put off. Never below nil. */
export const monthsUntil = (from: string, to: string): number => {
  const a = parseCivilDate(from) ?? FAR;
  const b = parseCivilDate(to) ?? a;
  const months = (b.year - a.year) * 12 + (b.month - a.month) - (b.day < a.day ? 1 : 0);
  return Math.max(0, months);
};

const monthOf = (when: string | Stated | undefined, date: string): number | null =>
  when === undefined ? null : typeof when === 'string' ? monthsUntil(date, when) : when.value;

const needsOf = (needs: Sparse['needs'], date: string): Need[] =>
  Object.entries(needs ?? {}).flatMap(([what, need]) => {
    const wanted = typeof need === 'object' && 'at_least' in need ? need.at_least : need;
    const fromMonth = (typeof need === 'object' && 'at_least' in need && monthOf(need.from, date)) || 0;
    if (wanted === 'no') return [];
    return [{ what, atLeast: wanted === 'yes' ? true : wanted.value, fromMonth }];
  });

/** What completing the numbers found out that the page says in words. */
export interface Found {
  readonly energyUnits: readonly [vehicle: EnergyUnit, ...replacements: EnergyUnit[]];
  readonly energyStated: readonly [vehicle: EnergyStated, ...replacements: EnergyStated[]];
  readonly jobs: readonly JobFacts[];
  readonly chance: Chance;
  readonly twoWay: Facts['twoWay'];
  readonly claim: Facts['claim'];
}

/** The words and facts of a scenario. */
export const completeFacts = (
  file: Sparse,
  replacements: readonly SparseReplacement[],
  date: string,
  units: Units,
  found: Found,
): Facts => {
  const { vehicle, household } = file;
  const [vehicleUnit, ...replacementUnits] = found.energyUnits;
  const [vehicleStated, ...replacementStated] = found.energyStated;
  const names = replacements.map((one) => one.what);
  return {
    title: file.title ?? `${vehicle.what} or ${names.length > 0 ? names.join(' or ') : 'none'}`,
    date,
    note: file.note ?? '',
    invented: file.invented ?? false,
    currency: units.currency,
    distanceUnit: units.distance,
    energyUnit: { vehicle: vehicleUnit, replacement: replacementUnits },
    energyStated: { vehicle: vehicleStated, replacement: replacementStated },
    perDollar: units.perDollar,
    mechanic: household?.mechanic ?? '',
    partner: household?.partner ?? '',
    vehicleName: vehicle.what,
    needs: needsOf(file.needs, date),
    offers: { vehicle: offersOf(vehicle), replacement: replacements.map(offersOf) },
    mayBeDriven: vehicle.may_be_driven ?? null,
    recallChecked: vehicle.recall_checked ?? false,
    recallStop: vehicle.recall_stop ?? false,
    structuralRust: vehicle.structural_rust ?? 'not said',
    inspectionDueMonth: monthOf(vehicle.must_pass_inspection_by, date),
    inspectionDay: typeof vehicle.must_pass_inspection_by === 'string' ? vehicle.must_pass_inspection_by : '',
    inspectionFailed: vehicle.inspection_failed ?? false,
    lenderRequiresCover: vehicle.lender_requires_cover ?? vehicle.loan !== undefined,
    jobs: found.jobs,
    sunk: (file.already_spent ?? []).map(({ what, amount, returns }) => ({
      what,
      amount: amount.value,
      returns: returns?.value ?? 0,
    })),
    replacementNames: names,
    offerEnds: replacements.map((one) => one.offer_ends ?? ''),
    creditConfirmed: replacements.map((one) => one.credit_confirmed ?? false),
    notMoney: (file.not_money ?? []).filter((words) => words !== REDACTED),
    private: file.private ?? [],
    hoursPriced: household?.price_of_own_hour !== undefined,
    chance: found.chance,
    twoWay: found.twoWay,
    claim: found.claim,
  };
};
