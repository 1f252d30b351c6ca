import type { EnergyUnit } from '../../quantity/energyUnits.ts';
import * as HOME from '../inputs/householdInputs.ts';
import type { Inputs } from '../inputs/inputs.ts';
import type { Facts, JobFacts, Quantity, Scenario } from '../inputs/scenario.ts';
import type { Units } from '../inputs/units.ts';
import { mostCredited } from '../places/placeRule.ts';
import { economyOf, pricedUnit, usualForm } from '../reading/economy.ts';
import type { Stated } from '../reading/stated.ts';
import type { Sparse, SparseReplacement, SparseRunning } from '../schema/scenarioSchema.ts';
import type { Finding } from '../text/problems.ts';
import { completeChance, correlationsOf, isAt } from './completeChance.ts';
import { completeClaim } from './completeClaim.ts';
import { type PumpPrice, type Pumps, pumpPath } from './completeEnergy.ts';
import { completeFacts } from './completeFacts.ts';
import { completeDoingWithout, completeHousehold, completeLikeOurs, usualLike } from './completeHousehold.ts';
import { completePlace } from './completePlace.ts';
import { completeReplacement } from './completeReplacement.ts';
import type { Shared } from './completeRunning.ts';
import { completeVehicle } from './completeVehicle.ts';
import { completeJob } from './completeWork.ts';
import { leftOutOf } from './leftOutBills.ts';
import { withMoves } from './movedInputs.ts';
import { penFor } from './quantityBook.ts';
import { shareNumbers } from './sharedQuantities.ts';
import { typedInto } from './typedInto.ts';

const unitOf = (file: SparseRunning, units: Units): EnergyUnit => {
  const usual = usualForm(units.distance, file.powertrain === 'battery');
  return (file.fuel?.economy && economyOf(file.fuel.economy, usual)?.energy) ?? usual.energy;
};

/** A price of energy as it stands at a path of the file; null where there is none that can be read. */
const pumpAt = (
  given: Stated | undefined,
  usual: EnergyUnit,
  whose: string,
  path: string,
): PumpPrice | null => {
  const unit = given && pricedUnit(given, usual);
  return given && unit ? { price: given, unit, whose, path } : null;
};

const alike = (a: PumpPrice, b: PumpPrice): boolean =>
  a.unit === b.unit &&
  a.price.value === b.price.value &&
  JSON.stringify(a.price.range) === JSON.stringify(b.price.range);

/** What is known of the price of the kind of energy that a vehicle uses. */
const pumpsFor = (file: SparseRunning, all: readonly Vehicle[], home: SparseHome, units: Units): Pumps => {
  const electric = unitOf(file, units) === 'kWh';
  const buyers = all.filter((one) => (unitOf(one.file, units) === 'kWh') === electric);
  const given = buyers.flatMap(
    (one) =>
      pumpAt(one.file.fuel?.price, unitOf(one.file, units), one.file.what, `${one.path}.fuel.price`) ?? [],
  );
  const usual = electric ? ('kWh' as const) : usualForm(units.distance, false).energy;
  return {
    household: pumpAt(
      electric ? home?.power_price : home?.fuel_price,
      usual,
      'the household',
      pumpPath(usual),
    ),
    other: given[0] ?? null,
    oneForAll: buyers.length > 1 && given.every((one) => alike(one, given[0] ?? one)),
  };
};

/** The keys of the two numbers whose line was asked for; null where it was not, or one of them is no number here. */
const twoWayKeys = (paths: Sparse['two_way'], quantities: readonly Quantity[]): [string, string] | null => {
  const [x, y] = (paths ?? []).map((at) => quantities.find((one) => isAt(one, at))?.key);
  return x && y ? [x, y] : null;
};

/** One replacement or several, always as a list. */
const replacementsOf = (file: Sparse): readonly SparseReplacement[] =>
  Array.isArray(file.replacement) ? file.replacement : file.replacement ? [file.replacement] : [];

/** A vehicle of the file, and where it stands there. */
interface Vehicle {
  readonly file: SparseRunning;
  readonly path: string;
}

type SparseHome = Sparse['household'];

/** The numbers of a file, complete, and what filling them in found out that facts are made of. */
export interface Completed {
  readonly inputs: Inputs;
  readonly jobs: readonly JobFacts[];
  readonly claim: Facts['claim'];
  readonly energyUnits: readonly [vehicle: EnergyUnit, ...replacements: EnergyUnit[]];
}

/**
 * Every number of a sparse file, from the file or by default. What follows from a number of the file follows here,
 * so whoever wants another number there writes it into the file and completes anew.
 *
 * @param quantities where each number is noted; null: nobody reads them
 */
export const completeNumbers = (
  file: Sparse,
  units: Units,
  date: string,
  quantities: Quantity[] | null,
): Completed => {
  const root = penFor(quantities, units);
  const replacements = replacementsOf(file);
  const several = Array.isArray(file.replacement);
  const placeOf = (i: number): string => (several ? `replacement.${i}` : 'replacement');
  const vehicles: readonly Vehicle[] = [
    { file: file.vehicle, path: 'vehicle' },
    ...replacements.map((one, i) => ({ file: one, path: placeOf(i) })),
  ];
  const files = vehicles.map((one) => one.file);
  const household = completeHousehold(file, root, date);
  const priceRatio = root.at('household', 'household').from(HOME.HOUSEHOLD_MORE, file.household)(
    'tablePriceRatio',
  );
  const sharedFor = (one: SparseRunning): Shared => ({
    date,
    distanceAYear: household.distanceAYear,
    priceRatio,
    pumps: pumpsFor(one, vehicles, file.household, units),
    // Words for whoever reads the quantities.
    leftOut: (bill) => leftOutOf(bill, one, quantities === null ? [] : files, units),
  });
  const present = completeVehicle(
    file.vehicle,
    root,
    date,
    sharedFor(file.vehicle),
    (file.work_needed?.length ?? 0) > 0,
  );
  const parts = present.vehicle.components.map((part) => part.name);
  const stands = file.vehicle.may_be_driven === false || file.vehicle.recall_stop === true;
  const jobs = (file.work_needed ?? []).map((job, i) => completeJob(job, i, root, parts, stands));
  const place = file.claim && completePlace(file.claim.place, date);
  const placeCredits = place ? mostCredited(place.tradeIn.credit, Number(date.slice(0, 4))) : null;
  const bought = replacements.map((one, i) => {
    const pen = root.at(`replacement.${i}`, placeOf(i), one.what);
    return completeReplacement(one, pen, date, sharedFor(one), placeCredits);
  });
  const doingWithout = completeDoingWithout(file.doing_without, root);
  const claim = completeClaim(file.claim, root, date, present.vehicle);
  const inputs: Inputs = {
    household,
    vehicle: present.vehicle,
    workNeeded: jobs.map((job) => job.job),
    replacement: bought.map((one) => one.replacement),
    doingWithout,
    anotherLikeOurs: completeLikeOurs(file.another_like_ours, root),
    usualLike: usualLike(root),
    claim: claim?.claim ?? null,
  };
  return {
    inputs,
    jobs: jobs.map((job) => job.facts),
    claim: claim?.facts ?? null,
    energyUnits: [present.energyUnit, ...bought.map((one) => one.energyUnit)],
  };
};

/**
 * A sparse file made complete, each number noted as a quantity. The file has passed the schema and the rules; what can
 * still be wrong with it is which ranges it says go together.
 */
export const completeScenario = (
  file: Sparse,
  units: Units,
  today: string,
): { readonly scenario: Omit<Scenario, 'written'>; readonly findings: readonly Finding[] } => {
  const date = file.date ?? today;
  const noted: Quantity[] = [];
  const { inputs, jobs, claim, energyUnits } = completeNumbers(file, units, date, noted);
  const moving = withMoves(shareNumbers(noted), (quantity, value) => {
    const other = typedInto(file, quantity, value, units);
    return other && completeNumbers(other, units, date, null).inputs;
  });
  const together = correlationsOf(file.go_together, moving);
  const tied = new Set(together.correlations.flatMap(({ a, b }) => [a, b]));
  // What goes together with another range stays one, whatever is typed in its place.
  const quantities = moving.map((one) => (tied.has(one.key) ? { ...one, onlyRange: true } : one));
  const [vehicle, ...replacement] = [inputs.vehicle, ...inputs.replacement].map(
    ({ energy }) => energy.stated,
  );
  const facts = completeFacts(file, replacementsOf(file), date, units, {
    energyUnits,
    energyStated: [vehicle ?? 'perUnit', ...replacement],
    jobs,
    chance: completeChance(
      file,
      units,
      inputs.household.spareEachMonth,
      inputs.vehicle.components.map((part) => part.name),
      together.correlations,
    ),
    twoWay: twoWayKeys(file.two_way, quantities),
    claim,
  });
  return { scenario: { facts, inputs, quantities }, findings: together.findings };
};
