/** Bills that are other ones from a date on, worked out by hand. The decision is of 25 November 2026. */
import { describe, expect, it } from 'vitest';
import { waysOf } from '../../../../src/engine/evaluation/options.ts';
import { resultOf } from '../../../../src/engine/evaluation/results.ts';
import { contextOf, EXPECTED } from '../../../../src/engine/plans/vehicle/context.ts';
import { laterPlan } from '../../../../src/engine/plans/vehicle/replaceLaterPlan.ts';
import { type File, scenarioOf } from '../../../support/file.ts';

/** Prices stand still and money earns nothing, unless told. */
const read = (change: (file: File) => void, rise: object = {}) =>
  scenarioOf((file) => {
    file.household = { money_earns: 0, prices_rise: { general: 0, insurance: 0, ...rise } };
    change(file);
  });
type Scenario = ReturnType<typeof read>;
const ctxOf = ({ inputs, facts }: Scenario) => contextOf(inputs, facts, EXPECTED, 'to the cent');
const way = (scenario: Scenario, id: string) => {
  const ctx = ctxOf(scenario);
  const found = waysOf(ctx).open.find((one) => one.id === id);
  if (!found) throw new Error(`no way ${id}: ${waysOf(ctx).open.map((one) => one.id)}`);
  return resultOf(found.build(ctx), ctx);
};
const TRADED = 'replace/2021-hatchback/as-it-stands/trade-in';

const rowsOf = ({ ledger }: ReturnType<typeof way>, what: string) =>
  ledger.filter((row) => row.what.startsWith(what));
/** Month and cents of all that is posted under these words. */
const paid = (result: ReturnType<typeof way>, what: string) =>
  rowsOf(result, what).map(({ month, amount }) => [month, amount.cash]);
const toCome = ({ ledger }: ReturnType<typeof way>): number =>
  ledger.filter(({ path }) => path === 'to come').reduce((sum, row) => sum - row.amount.cash, 0);

const WHY = 'the insurer drops collision cover';
/** From month 8, which ends on 25 July 2027. */
const dropped = { from: '2027-07-10', insurance_a_year: 800, why: WHY };

describe('insurance of ours that changes within a year paid ahead', () => {
  const scenario = read(({ vehicle }) => {
    Object.assign(vehicle, { insurance_a_year: 1200, insurance_due: 3, changes: [dropped] });
  });

  it('is split by months when it is paid', () => {
    // Paid in month 3 for months 4 to 15: four at 1,200 a year, eight at 800.
    const keep = way(scenario, 'keep');
    expect(paid(keep, 'insurance')).toEqual([
      [3, 93_333],
      [15, 80_000],
      [27, 80_000],
      [39, 80_000],
      [51, 80_000],
    ]);
    // Of month 51's bill three months are to come at the end of month 60.
    expect(toCome(keep)).toBe(20_000);
  });

  it('says in the ledger what changes, from which month, and where that stands in the file', () => {
    const [row] = rowsOf(way(scenario, 'keep'), 'insurance');
    expect(row?.reason).toBe(`yearly, when it falls due; changed from month 8 on: ${WHY}`);
    expect(row?.path).toBe('vehicle.changes[0].insurance_a_year');
  });

  it('comes back at what was paid for the months that are left', () => {
    const ctx = ctxOf(scenario);
    const back = (month: number) => paid(resultOf(laterPlan(0, month, ctx), ctx), 'insurance, unused');
    // Sold at the end of month 6: one month at 1,200, eight at 800. At the end of month 9: six at 800.
    expect(back(6)).toEqual([[6, -63_333]]);
    expect(back(9)).toEqual([[9, -40_000]]);
  });

  it('rises with prices as the figure before it does', () => {
    const dearer = read(
      ({ vehicle }) => {
        Object.assign(vehicle, { insurance_a_year: 1200, insurance_due: 3, changes: [dropped] });
      },
      { insurance: '10 %' },
    );
    expect(paid(way(dearer, 'keep'), 'insurance').slice(0, 3)).toEqual([
      [3, 93_333],
      [15, 88_000],
      [27, 96_800],
    ]);
  });
});

describe('a change while the bill of today is in force', () => {
  const inForce = (more: object) =>
    read(({ vehicle }) => {
      Object.assign(vehicle, { insurance_a_year: 1200, ...more });
    });

  it('gives back what is left of it in the month of the change', () => {
    // Due in a year; five months are left of it, month 8 among them: 400 a year less, for five of twelve months.
    const scenario = inForce({ changes: [dropped] });
    const keep = way(scenario, 'keep');
    expect(paid(keep, 'insurance').slice(0, 3)).toEqual([
      [8, -16_667],
      [12, 80_000],
      [24, 80_000],
    ]);
    expect(rowsOf(keep, 'insurance')[0]?.reason).toBe(
      `for what is left of the bill in force today; changed from month 8 on: ${WHY}`,
    );
    const ctx = ctxOf(scenario);
    const sold = (month: number) => paid(resultOf(laterPlan(0, month, ctx), ctx), 'insurance, ').slice(0, 2);
    // Sold before the change all of it was paid at 1,200, after it at 800; today as well.
    expect(sold(7)[0]).toEqual([7, -50_000]);
    expect(sold(8)).toContainEqual([8, -26_667]);
    expect(paid(way(scenario, TRADED), 'insurance, unused')).toEqual([[0, -120_000]]);
  });

  it('goes on from one change to the next', () => {
    const again = { from: '2027-10-01', insurance_a_year: 950 };
    // Month 11 begins the next: 150 more a year for two months.
    expect(paid(way(inForce({ changes: [dropped, again] }), 'keep'), 'insurance').slice(0, 3)).toEqual([
      [8, -16_667],
      [11, 2500],
      [12, 95_000],
    ]);
  });

  it('asks nothing where nothing of the bill would come back', () => {
    const keep = way(
      inForce({
        ...{ registration_a_year: 120, inspection_a_year: 60, inspection_due: 8, tax_a_year: 240 },
        changes: [{ from: '2027-07', registration_a_year: 180, inspection_a_year: 90, tax_a_year: 120 }],
      }),
      'keep',
    );
    expect(paid(keep, 'registration').slice(0, 2)).toEqual([
      [12, 18_000],
      [24, 18_000],
    ]);
    // An inspection is for the day it is done.
    expect(paid(keep, 'inspection').slice(0, 2)).toEqual([
      [8, 9000],
      [20, 9000],
    ]);
    expect(paid(keep, 'yearly tax').slice(0, 2)).toEqual([
      [8, -5000],
      [12, 12_000],
    ]);
  });
});

describe('other vehicles and bills', () => {
  const scenario = read((file) => {
    file.another_like_ours = 'yes';
    Object.assign(file.vehicle, { insurance_a_year: 1200, parking_a_month: 40 });
    Object.assign(file.vehicle, { changes: [{ ...dropped, parking_a_month: 25 }] });
    Object.assign(file.replacement, { parking_a_month: 40, inspection_a_year: 50, registration_a_year: 0 });
    file.vehicle.inspection_a_year = 50;
    file.replacement.changes = [
      { from: '2027-07', insurance_a_year: 900, inspection_a_year: 80 },
      { from: '2028-02', parking_a_month: 10 },
    ];
  });

  it('parking is another one from that month on', () => {
    const parking = paid(way(scenario, 'keep'), 'parking');
    expect(parking).toHaveLength(60);
    expect(parking.map(([, cents]) => cents)).toEqual([
      ...Array.from({ length: 7 }, () => 4000),
      ...Array.from({ length: 53 }, () => 2500),
    ]);
  });

  it('one bought pays its first year by months, an inspection by its day', () => {
    const bought = way(scenario, TRADED);
    // Seven months at 1,350, five at 900.
    expect(paid(bought, 'insurance, 2021').slice(0, 2)).toEqual([
      [0, 116_250],
      [12, 90_000],
    ]);
    expect(paid(bought, 'inspection, 2021').slice(0, 2)).toEqual([
      [0, 5000],
      [12, 8000],
    ]);
    expect(paid(bought, 'parking, 2021').slice(13, 16)).toEqual([
      [14, 4000],
      [15, 1000],
      [16, 1000],
    ]);
  });

  it('one bought later pays what it is by then', () => {
    const ctx = ctxOf(scenario);
    expect(paid(resultOf(laterPlan(0, 20, ctx), ctx), 'insurance, 2021').slice(0, 2)).toEqual([
      [20, 90_000],
      [32, 90_000],
    ]);
  });

  it('another like ours shares ours', () => {
    const like = waysOf(ctxOf(scenario)).open.find(({ side }) => side === 'like');
    // Seven months at 1,200, five at 800.
    expect(paid(way(scenario, like?.id ?? ''), 'insurance, another').slice(0, 2)).toEqual([
      [0, 103_333],
      [12, 80_000],
    ]);
  });

  it('a sale takes what its weeks cost by then', () => {
    const weeks = read((file) => {
      Object.assign(file.vehicle, { insurance_a_year: 520, selling: { weeks: 4, hours: 0 } });
      Object.assign(file.vehicle, {
        parking_a_month: 0,
        changes: [{ from: '2027-07', insurance_a_year: 260 }],
      });
      file.replacement.parking_a_month = 0;
    });
    const ctx = ctxOf(weeks);
    const taken = (month: number) =>
      paid(resultOf(laterPlan(0, month, ctx), ctx), 'what selling it takes').map(([, cents]) => cents);
    // Four weeks of 52: begun at the end of month 6, all in month 7; a month later in month 8.
    expect(taken(6)).toEqual([4000]);
    expect(taken(7)).toEqual([2000]);
  });
});

describe('cover that ends with a change', () => {
  const scenario = read((file) => {
    const collision = { a_year: 210, deductible: 500, chance_a_year: 6, mean_loss: 2000, total_share: 0 };
    Object.assign(file.vehicle, { insurance_a_year: 1200, cover: { collision } });
    file.vehicle.changes = [{ ...dropped, cover_ends: ['collision'] }];
  });
  const borne = (id: string) => paid(way(scenario, id), 'own part of a loss, collision');

  it('leaves all of a loss to pay from that month on', () => {
    const ours = borne('keep');
    // 6 % a year of 500, and of 2,000 as long as it is worth as much above scrap: in the first three years.
    expect(ours.slice(0, 7).map(([, cents]) => cents)).toEqual(Array.from({ length: 7 }, () => 250));
    expect(ours.slice(7, 36).map(([, cents]) => cents)).toEqual(Array.from({ length: 29 }, () => 1000));
    // In the fourth it is worth 3,400 less 14.9 % three times, and 450 as scrap.
    expect(ours[36]?.[1]).toBe(Math.round(((3400 * 0.851 ** 3 - 450) * 0.06 * 100) / 12));
    expect(rowsOf(way(scenario, 'keep'), 'own part')[7]?.reason).toContain('the cover has ended');
  });

  it('goes on for one that is bought', () => {
    expect(new Set(borne(TRADED).map(([, cents]) => cents))).toEqual(new Set([250]));
  });
});

describe('what stopping at any month would have cost', () => {
  it('goes by the figure of each month, whenever the bill is due', () => {
    for (const due of [1, 5, 8, 12]) {
      const cumulative = (changes: readonly object[]) =>
        way(
          read(({ vehicle }) => {
            const selling = { weeks: 0, hours: 0 };
            Object.assign(vehicle, { insurance_a_year: 1200, insurance_due: due, selling, changes });
          }),
          'keep',
        ).cumulative;
      const [steady, less] = [cumulative([]), cumulative([dropped])];
      // 400 less a year, for each month from the eighth on.
      less.forEach((cost, month) => {
        expect(steady[month] as number, `due in ${due}, month ${month}`).toBeCloseTo(
          cost + (Math.max(0, month - 7) * 400) / 12,
          1,
        );
      });
    }
  });
});
