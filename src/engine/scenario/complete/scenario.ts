import type { EnergyUnit } from '../../quantity/energy.ts';
import { copyOf } from '../lens.ts';
import { mostCredited } from '../placeRule.ts';
import type { Finding } from '../problems.ts';
import { economyOf, pricedUnit, usualForm } from '../reading/economy.ts';
import type { Quantity, Scenario } from '../scenario.ts';
import type { Sparse, SparseReplacement, SparseRunning } from '../schema/scenario.ts';
import type { Units } from '../units.ts';
import { penFor } from './book.ts';
import { completeChance, correlationsOf } from './chance.ts';
import { completeClaim } from './claim.ts';
import type { PumpPrice } from './energy.ts';
import { completeFacts } from './facts.ts';
import { completeDoingWithout, completeHousehold } from './household.ts';
import { leftOutOf } from './leftOut.ts';
import { completePlace } from './place.ts';
import { completeReplacement } from './replacement.ts';
import type { Shared } from './running.ts';
import { shareNumbers } from './shared.ts';
import { completeVehicle } from './vehicle.ts';
import { completeJob } from './work.ts';

const unitOf = (file: SparseRunning, units: Units): EnergyUnit => {
  const usual = usualForm(units.distance, file.powertrain === 'battery');
  return (file.fuel?.economy && economyOf(file.fuel.economy, usual)?.energy) ?? usual.energy;
};

/** The price of energy given for a vehicle, to be used for every other that buys the same. */
const pumpOf = (file: SparseRunning, units: Units): PumpPrice | null => {
  const given = file.fuel?.price;
  const unit = given && pricedUnit(given, unitOf(file, units));
  return given && unit ? { price: given, unit, whose: file.what } : null;
};

/** Any vehicle's given price of the same kind of energy, the present one's first. */
const sharedPump = (file: SparseRunning, all: readonly SparseRunning[], units: Units): PumpPrice | null => {
  const electric = unitOf(file, units) === 'kWh';
  const pumps = all.flatMap((one) => pumpOf(one, units) ?? []);
  return pumps.find((pump) => (pump.unit === 'kWh') === electric) ?? null;
};

/** The keys of the two numbers whose line was asked for; null where it was not, or one of them is no number here. */
const twoWayKeys = (paths: Sparse['two_way'], quantities: readonly Quantity[]): [string, string] | null => {
  const [x, y] = (paths ?? []).map((at) => quantities.find(({ path }) => path === at)?.key);
  return x && y ? [x, y] : null;
};

/** One replacement or several, always as a list. */
const replacementsOf = (file: Sparse): readonly SparseReplacement[] =>
  Array.isArray(file.replacement) ? file.replacement : file.replacement ? [file.replacement] : [];

/**
 * A sparse file made complete: every number from the file or from defaults.ts, each noted as a quantity. The file has
 * passed the schema and the rules; what can still be wrong with it is which ranges it says go together.
 */
export const completeScenario = (
  file: Sparse,
  units: Units,
  today: string,
): { readonly scenario: Scenario; readonly findings: readonly Finding[] } => {
  const quantities: Quantity[] = [];
  const root = penFor(quantities, units);
  const date = file.date ?? today;
  const replacements = replacementsOf(file);
  const vehicles: readonly SparseRunning[] = [file.vehicle, ...replacements];
  const sameEnergy =
    vehicles.every((one) => !one.fuel?.economy) && new Set(vehicles.map((one) => one.powertrain)).size === 1;
  const household = completeHousehold(file, root, date);
  const sharedFor = (one: SparseRunning): Shared => ({
    distanceAYear: household.distanceAYear,
    priceRatio: file.household?.table_price_ratio,
    pump: sharedPump(one, vehicles, units),
    sameEnergy,
    leftOut: leftOutOf(one, vehicles, units),
  });
  const present = completeVehicle(file.vehicle, root, date, sharedFor(file.vehicle));
  const parts = present.vehicle.components.map((part) => part.name);
  const jobs = (file.work_needed ?? []).map((job, i) => completeJob(job, i, root, parts));
  const place = file.claim && completePlace(file.claim.place, date);
  const placeCredits = place ? mostCredited(place.tradeIn.credit, Number(date.slice(0, 4))) : null;
  const several = Array.isArray(file.replacement);
  const bought = replacements.map((one, i) => {
    const pen = root.at(`replacement.${i}`, several ? `replacement.${i}` : 'replacement', one.what);
    return completeReplacement(one, pen, date, sharedFor(one), placeCredits);
  });
  const doingWithout = completeDoingWithout(file.doing_without, root);
  const claim = completeClaim(file.claim, root, date, present.vehicle);
  const all = shareNumbers(quantities);
  const together = correlationsOf(file.go_together, quantities, all);
  const facts = completeFacts(file, replacements, date, units, {
    energyUnits: [present.energyUnit, ...bought.map((one) => one.energyUnit)],
    energyStated: [present.vehicle.energy.stated, ...bought.map((one) => one.replacement.energy.stated)],
    jobs: jobs.map((job) => job.facts),
    chance: completeChance(file, household.spareEachMonth, parts, together.correlations),
    twoWay: twoWayKeys(file.two_way, all),
    claim: claim?.facts ?? null,
  });
  const inputs = {
    household,
    vehicle: present.vehicle,
    workNeeded: jobs.map((job) => job.job),
    replacement: bought.map((one) => one.replacement),
    doingWithout,
    claim: claim?.claim ?? null,
  };
  return { scenario: { facts, inputs: copyOf(inputs), quantities: all }, findings: together.findings };
};
