/** Where a tool like this would be confidently wrong, and what it says or counts instead: a test for each. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decide } from '../../src/engine/answer/decide.ts';
import type { Decision } from '../../src/engine/answer/decision.ts';
import { evaluate } from '../../src/engine/evaluation/evaluate.ts';
import { EXPECTED } from '../../src/engine/plans/vehicle/context.ts';
import { parseScenario } from '../../src/engine/scenario/file/parse.ts';
import type { Scenario } from '../../src/engine/scenario/inputs/scenario.ts';
import { answerLines } from '../../src/report/answerLines.ts';
import { decisionOf, type File, problemsOf, scenarioOf, warningsOf } from '../support/file.ts';

const saysFirst = (decision: Decision): string[] =>
  decision.notices.filter(({ place }) => place === 'first').map(({ text }) => text);
const usual = decisionOf();
const kinds = (decision: Decision): string[] => decision.notices.map(({ kind }) => kind);
const job = (file: File, i: number) => file.work_needed[i] as Record<string, unknown>;

/** Net present costs of every way, counted reading, without the time a whole decision takes. */
const costs = (scenario: Scenario): Record<string, number> =>
  Object.fromEntries(
    evaluate(scenario.inputs, EXPECTED, { facts: scenario.facts, rounding: 'unrounded' }).map((one) => [
      one.plan.id,
      one.netPresentCost.counted,
    ]),
  );
const cost = (id: string, change?: (file: File) => void): number => costs(scenarioOf(change))[id] as number;

describe('unsafe now', () => {
  const decision = usual;
  it('is said first, by name, with the word not to drive it', () => {
    expect(saysFirst(decision)[0]).toMatch(/Don't drive it until.*front brakes/);
  });
  it('has no total without that work: every way that keeps it pays for the brakes', () => {
    for (const way of decision.options.filter(({ side }) => side === 'keep'))
      expect(way.ledger.some((row) => row.what === 'front brakes')).toBe(true);
  });
  it('leaving it undone is no way, and says why', () => {
    expect(decision.closed.find(({ id }) => id === 'keep/left')?.why).toMatch(/not to be driven/);
  });
  it('a safety job that is said to wait is refused', () => {
    expect(problemsOf((file) => Object.assign(job(file, 1), { can_wait: 'yes' }))).not.toEqual([]);
  });
  it('where only qualified work will do the own-hands price is withdrawn', () => {
    const airbag = scenarioOf((file) => Object.assign(job(file, 1), { job: 'airbag wiring' }));
    expect(airbag.inputs.workNeeded[1]?.by).toBe('shop');
    expect(airbag.facts.jobs[1]?.qualifiedOnly).toBe(true);
  });
});

describe('frame or structural rust', () => {
  it('found: it ends the vehicle unless a qualified repair is quoted', () => {
    const decision = decisionOf((file) => Object.assign(file.vehicle, { structural_rust: 'found' }));
    expect(decision.bestKeep).toBeNull();
    expect(decision.verdict.kind).toBe('replaceOnly');
    expect(decision.closed.find(({ id }) => id === 'keep')?.why).toMatch(/frame/);
  });
  it('unknown: look first', () => {
    const decision = decisionOf((file) => Object.assign(file.vehicle, { structural_rust: 'unknown' }));
    expect(saysFirst(decision).join(' ')).toMatch(/Look first/);
  });
});

describe('inspection and recall', () => {
  it('a failed inspection stands first', () => {
    const decision = decisionOf((file) => Object.assign(file.vehicle, { inspection_failed: 'yes' }));
    expect(kinds(decision)).toContain('inspection-failed');
  });
  it('one that is due is dated', () => {
    const decision = decisionOf((file) => Object.assign(file.vehicle, { must_pass_inspection_by: 4 }));
    expect(decision.notices.find(({ kind }) => kind === 'inspection-due')?.text).toMatch(/within 4 months/);
  });
  it("the maker's recall list is to be checked until somebody says it was", () => {
    expect(kinds(usual)).toContain('recall');
    expect(kinds(decisionOf((file) => Object.assign(file.vehicle, { recall_checked: 'yes' })))).not.toContain(
      'recall',
    );
  });
  it('a do-not-drive recall overrides all', () => {
    const decision = decisionOf((file) => Object.assign(file.vehicle, { recall_stop: 'yes' }));
    expect(saysFirst(decision)[0]).toMatch(/recall/);
  });
});

describe('the needed work', () => {
  it('asks who else may pay before anything is priced', () => {
    expect(kinds(usual)).toContain('someone-else-pays');
  });
  it('gives the answer if the first repair does not cure it', () => {
    // Against the sale as it stands, which bears none of it; 17,800 is cut so that this is the best replacement.
    const decision = decisionOf((file) =>
      Object.assign(file.vehicle, { sells_for: { running: 1300, as_it_stands: 900 } }),
    );
    expect(decision.bestReplace?.work).toBe('skipped');
    const lost = (decision.difference?.counted ?? 0) - (decision.ifNotCured ?? 0);
    expect(lost / 100).toBeCloseTo(640 + 140, 0);
  });
  it('counts more found once opened at its chance', () => {
    const more = cost('keep', (file) =>
      Object.assign(job(file, 0), { more_found: { chance: 25, parts: 400, hours: 0, shop_price: 900 } }),
    );
    expect(more - cost('keep')).toBeCloseTo(0.25 * 400, 6);
  });
  it('leaves out what is already spent, half-way through a job too', () => {
    const before = costs(scenarioOf());
    const after = costs(
      scenarioOf((file) => {
        file.already_spent = [{ what: 'tyres last year', amount: 480, returns: 0 }];
        Object.assign(job(file, 0), { already_spent: 310 });
      }),
    );
    expect(after).toEqual(before);
  });
  it('shows what is already spent beside it', () => {
    const decision = decisionOf((file) => {
      file.already_spent = [{ what: 'tyres last year', amount: 480, returns: 60 }];
    });
    expect(decision.sunk).toEqual({ spent: 48000, returns: 6000 });
  });
  it('days without it accrue while parts are waited for', () => {
    const waiting = cost('keep', (file) => Object.assign(job(file, 0), { days_without: 20 }));
    expect(waiting - cost('keep')).toBeCloseTo(20 * 35, 6);
  });
  it('an immobile one costs storage from the first day, and is not driven on while saving', () => {
    const stands = { days_without: 20, may_be_driven: 'no' };
    const stored = cost('keep', (file) => {
      Object.assign(file.vehicle, { storage_a_day: 10 });
      Object.assign(job(file, 0), stands);
    });
    expect(stored - cost('keep', (file) => Object.assign(job(file, 0), stands))).toBeCloseTo(200, 6);
    const short = decisionOf((file) => {
      file.savings_for_this = 100;
    });
    expect(short.options.some(({ label }) => label.startsWith('Drive on'))).toBe(false);
    expect(short.closed.find(({ label }) => label.startsWith('Drive on'))?.why).toMatch(/not to be driven/);
  });
});

describe('the mechanic', () => {
  it('is shown at double hours', () => {
    const decision = decisionOf((file) => {
      file.household = { price_of_own_hour: 20 };
      Object.assign(file.vehicle, { sells_for: { running: 1300, as_it_stands: 900 } });
    });
    expect(decision.doubleHours).toBeLessThan(decision.difference?.counted as number);
  });
  it('and with a shop doing everything, now or from a later month on', () => {
    const decision = usual;
    expect(decision.difference?.shop).not.toBe(decision.difference?.counted);
    expect(decision.shopFrom.map(({ month }) => month)).toEqual([0, 12, 24, 36, 48]);
    const [now] = decision.shopFrom;
    expect(Math.abs((now?.difference as number) - (decision.difference?.shop as number))).toBeLessThan(100);
  });
});

describe('repairs', () => {
  it('are not counted twice: a named part takes its share out of the average, and never more than it brings', () => {
    const gearbox = (life: { typical: number; shape: number }) => ({
      name: 'gearbox',
      life,
      shop_price: 1500,
      by: 'shop',
      share_of_average: 30,
    });
    const repairs = (change?: (file: File) => void): number =>
      decisionOf(change)
        .bestKeep?.ledger.filter((row) => row.what.startsWith('repairs nobody'))
        .reduce((sum, row) => sum + row.amount.shop, 0) as number;
    const named = (life: { typical: number; shape: number }): number =>
      repairs((file) => Object.assign(file.vehicle, { components: [gearbox(life)] })) / repairs();
    expect(named({ typical: 9000, shape: 1 })).toBeCloseTo(0.7, 4);
    expect(named({ typical: 1_000_000, shape: 12 })).toBeCloseTo(1, 4);
  });
  it('that nobody counts are warned of, on both sides', () => {
    expect(warningsOf((file) => Object.assign(file.vehicle, { repairs_a_year: 0 }))).not.toEqual([]);
    const decision = decisionOf((file) => Object.assign(file.replacement, { repairs_a_year: 0 }));
    expect(kinds(decision)).toContain('no-future-repairs');
  });
  it('a used replacement is not taken for new: inspection, first-year catch-up, its own repairs', () => {
    const lines = usual.bestReplace?.ledger.map(({ what }) => what) ?? [];
    expect(lines.some((what) => what.startsWith('inspection before buying'))).toBe(true);
    expect(lines.some((what) => what.startsWith('catching up'))).toBe(true);
    expect(lines.some((what) => what.startsWith('repairs nobody can name yet, 2021'))).toBe(true);
  });
  it('named parts that bring most of the average: what is left for the rest is said, where it is small', () => {
    const named = (life: number) =>
      decisionOf((file) => {
        file.vehicle.components = Array.from({ length: 9 }, (_, i) => ({
          name: `part ${i}`,
          life: { typical: life, shape: 1 },
          run: 0,
          shop_price: 600,
          parts: 300,
          hours: 2,
        }));
      }).notices.filter(({ kind }) => kind === 'average-left');
    expect(named(9000)).toEqual([
      {
        kind: 'average-left',
        place: 'assumptions',
        text: 'The parts named for the 2009 wagon bring all but 10% of its average repairs: that much is left for whatever nobody named.',
        cost: null,
      },
    ]);
    // They hardly ever fail, so they leave the average as it is.
    expect(named(900_000)).toEqual([]);
  });
});

describe('money', () => {
  it('insurance is never defaulted, and two quotes are asked for', () => {
    expect(problemsOf((file) => delete file.replacement.insurance_a_year)).not.toEqual([]);
    expect(kinds(usual)).toContain('insurance-quotes');
  });
  it('says that the way is open only if the loan is granted', () => {
    expect(kinds(usual)).toContain('credit');
  });
  it('counts and says the debt of the last day when the loan outlasts the horizon', () => {
    const decision = usual;
    expect(kinds(decision)).toContain('loan-outlasts');
    expect(decision.bestReplace?.owedAtEnd).toBe(decision.payments[0]?.owedAtHorizon);
    expect(decision.bestReplace?.owedAtEnd).toBeGreaterThan(0);
  });
  it('stands the total beside a longer term: the payment falls, the total rises', () => {
    const [loan] = usual.payments;
    expect(loan?.longer.payment).toBeLessThan(loan?.payment as number);
    expect(loan?.longer.totalOfPayments).toBeGreaterThan(loan?.totalOfPayments as number);
  });
  it("a discount rate above the loan's is answered again at the loan's rate", () => {
    const decision = decisionOf((file) => {
      file.household = { money_earns: 12 };
    });
    expect(decision.atLoanRate?.rate).toBeCloseTo((1 + 0.089 / 12) ** 12 - 1, 9);
    expect(decision.atLoanRate?.difference).toBeGreaterThan(decision.difference?.counted as number);
    expect(usual.atLoanRate).toBeNull();
  });
});

describe('what only looks comparable', () => {
  it('upkeep listed on one side and averaged on the other is told', () => {
    const one = { job: 'oil', every: 5000, last_done: 170000, parts: 40, hours: 1, shop_price: 95 };
    const listed = (both: boolean) =>
      kinds(
        decisionOf((file) => {
          file.vehicle.upkeep = [one];
          if (both) file.replacement.upkeep = [{ ...one, last_done: 37000 }];
        }),
      );
    expect(listed(false)).toContain('upkeep-one-sided');
    expect(listed(true)).not.toContain('upkeep-one-sided');
    expect(usual.notices.map(({ kind }) => kind)).not.toContain('upkeep-one-sided');
  });
  it('a need that nobody can check is said to count as met', () => {
    const decision = decisionOf((file) => {
      file.needs = { towing: 1500 };
      Object.assign(file.vehicle, { towing: 1800 });
    });
    const said = decision.notices.filter(({ kind }) => kind === 'needs-unknown');
    expect(said.map(({ text }) => text).join()).toMatch(/2021 hatchback.*towing/);
    expect(said).toHaveLength(1);
  });
  it('a frame rusted through is not sold as running', () => {
    const decision = decisionOf((file) => Object.assign(file.vehicle, { structural_rust: 'found' }));
    expect(new Set(decision.options.map(({ work }) => work))).toEqual(new Set(['skipped']));
    expect(decision.options.some(({ letGo }) => letGo === 'private')).toBe(false);
  });
  it('a lease that our look cuts short is said, its parts traceable, its payment shown', () => {
    const decision = decisionOf((file) => {
      const { loan, down_payment, price_with_all_fees, ...rest } = file.replacement;
      Object.assign(file, {
        replacement: {
          ...rest,
          what: '2027 hatchback',
          odometer: 0,
          lease: {
            starts_from: 24000,
            residual: 13000,
            money_factor: 0.0021,
            months: 36,
            due_at_signing: 2000,
            miles_a_year: 10000,
            over_a_mile: 0.2,
          },
        },
      });
    });
    expect(kinds(decision)).toContain('lease-cut-short');
    const [lease] = decision.leases;
    expect(lease?.payment).toBe(Math.round(((22000 - 13000) / 36 + 35000 * 0.0021) * 100));
    const parts = decision.bestReplace?.ledger.filter(({ category }) => category === 'lease') ?? [];
    expect(new Set(parts.map(({ what }) => what.split(',')[0]))).toEqual(
      new Set(['due at signing', 'lease payment', 'rest of the signing money']),
    );
  });
  it('doing without one is set beside the ways of having one, and said where it is cheaper', () => {
    const decision = decisionOf((file) => {
      file.doing_without = { a_day: 4, days_a_month: 6 };
    });
    expect(decision.answer?.side).toBe('without');
    expect(answerLines(decision).join(' ')).toMatch(
      /Doing without a vehicle of your own costs least: nothing over five years, all in all, \$[\d,]+ less than/,
    );
    expect(problemsOf((file) => Reflect.deleteProperty(file, 'replacement'))).not.toEqual([]);
    const alone = decisionOf((file) => {
      Reflect.deleteProperty(file, 'replacement');
      file.doing_without = { a_day: 4, days_a_month: 6 };
    });
    expect(alone.verdict.kind).toBe('keepOnly');
    expect(alone.options.map(({ id }) => id)).toContain('without');
  });
});

describe('needs, words, ties', () => {
  it('a need that fails closes the way, from its date', () => {
    const needing = (from?: number) =>
      decisionOf((file) => {
        file.needs = { seats: from === undefined ? 7 : { at_least: 7, from } };
        Object.assign(file.vehicle, { seats: 7 });
        Object.assign(file.replacement, { seats: 5 });
      });
    expect(needing().bestReplace).toBeNull();
    expect(needing().closed.find(({ id }) => id.startsWith('replace/'))?.why).toMatch(/seats 7/);
    expect(needing(24).closed.find(({ id }) => id.startsWith('replace/'))?.why).toMatch(/from month 24/);
    expect(needing(90).bestReplace).not.toBeNull();
  });
  it('a need is told in words, not as a file spells it', () => {
    const decision = decisionOf((file) => {
      file.needs = { child_seats: 2 };
      Object.assign(file.replacement, { child_seats: 1 });
    });
    expect(decision.closed.find(({ id }) => id.startsWith('replace/'))?.why).toMatch(
      /child seats 2 is needed/,
    );
    expect(decision.notices.map(({ text }) => text).join()).toMatch(/counts as met: child seats/);
  });
  it('the best date to let go is one on which both still serve', () => {
    const decision = decisionOf((file) => {
      file.needs = { seats: { at_least: 5, from: 20 } };
      Object.assign(file.vehicle, { seats: 4 });
      Object.assign(file.replacement, { seats: 5 });
    });
    expect(decision.bestKeep).toBeNull();
    expect(decision.replaceLater[0]?.best.month).toBeLessThanOrEqual(20);
  });
  it('what is not money stays visible, in the household words', () => {
    const decision = decisionOf((file) => {
      file.not_money = ['Imani drives at night.'];
    });
    expect(decision.facts.notMoney).toEqual(['Imani drives at night.']);
    expect(kinds(decision)).toContain('not-counted');
  });
  it('a tie says so and names what would settle it', () => {
    const text = readFileSync(new URL('../../scenarios/knife-edge.yaml', import.meta.url), 'utf8');
    const read = parseScenario(text, { file: 'knife-edge.yaml', today: '2026-11-25' });
    if ('problems' in read) throw new Error('the demo is refused');
    const decision = decide(read.scenario, 'test');
    expect(decision.verdict.kind).toBe('close');
    expect(decision.verdict.settledBy.length).toBeGreaterThan(0);
  });
});
