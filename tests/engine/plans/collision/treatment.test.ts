/** What the work costs that a course asks for besides the estimate, and what stands in for it: by hand, to the cent. */
import { describe, expect, it } from 'vitest';
import type { OptionResult } from '../../../../src/engine/answer/decision.ts';
import type { Claim } from '../../../../src/engine/scenario/inputs/claim.ts';
import { type Hit, named, results } from './asked.ts';
import { hit } from './collision.ts';

const course = (one: Hit, id: string): OptionResult => named(results(one), id);
/** Month and cents of every row of that name. */
const rows = (option: OptionResult, what: string): [number, number][] =>
  option.ledger.filter((row) => row.what === what).map((row) => [row.month, row.amount.cash]);

describe('days without it', () => {
  const own = (hit().inputs.claim as Claim).ownRepair as NonNullable<Claim['ownRepair']>;
  const estimate = { ...(hit().inputs.claim as Claim).estimate, days: 8 };
  const rental = { aDay: 45, paidADay: 0, paidDays: 0 };
  const away = (changes: Partial<Claim>, id: string, what: string) => rows(course(hit(changes), id), what);
  it('in a shop are 8 x 35 = 280, or 8 x 45 = 360 for a rental, and never both', () => {
    const id = 'claim/shop-repair/keep';
    expect(away({ estimate }, id, 'days in the shop')).toEqual([[0, 28_000]]);
    expect(away({ estimate }, id, 'rental')).toEqual([]);
    expect(away({ estimate, rental }, id, 'days in the shop')).toEqual([]);
    expect(away({ estimate, rental }, id, 'rental')).toEqual([[0, 36_000]]);
  });
  it('at home are 3 x 35 on top of 400 for parts and paint, or 3 x 45 for a rental', () => {
    const id = 'claim/own-repair/keep';
    const ownRepair = { ...own, days: 3 };
    expect(away({ ownRepair }, id, 'the damage')).toEqual([[0, 50_500]]);
    expect(away({ ownRepair, rental }, id, 'the damage')).toEqual([[0, 40_000]]);
    expect(away({ ownRepair, rental }, id, 'rental')).toEqual([[0, 13_500]]);
  });
});

describe('work', () => {
  const { estimate, ownRepair } = hit().inputs.claim as Claim;
  it('at a shop that asks 75 an hour where the estimate has 60: 10 x 15 more, and nothing less at 50', () => {
    const dearer = (shopHour: number) =>
      rows(
        course(hit({ estimate: { ...estimate, shopHour } }), 'claim/shop-repair/keep'),
        'dearer hours than estimated',
      );
    expect(dearer(75)).toEqual([[0, 15_000]]);
    expect(dearer(50)).toEqual([]);
  });
  it('of our own: 250 + 150 and 300 for what is qualified; tools of 200 that bring 80 again', () => {
    const plan = {
      ...(ownRepair as NonNullable<Claim['ownRepair']>),
      qualified: 300,
      tools: 200,
      toolsBring: 80,
    };
    const option = course(hit({ ownRepair: plan }), 'claim/own-repair/keep');
    expect(rows(option, 'the damage')).toEqual([[0, 70_000]]);
    expect(rows(option, 'tools, less what they bring')).toEqual([[0, 12_000]]);
  });
});

describe('needed too: alignment 90, and seats for children 230', () => {
  const too = (inEstimate: boolean) =>
    hit({ alignment: { costs: 90, inEstimate }, childSeats: { costs: 230, inEstimate } });
  const costs = (one: Hit, id: string) => [
    rows(course(one, id), 'wheel alignment'),
    rows(course(one, id), "children's seats"),
  ];
  const own = [[[0, 9_000]], [[0, 23_000]]];
  it('where the estimate holds them a shop does them for it, and whoever takes the money buys them', () => {
    expect(costs(too(true), 'claim/shop-repair/keep')).toEqual([[], []]);
    expect(costs(too(true), 'claim/no-claim-shop/keep')).toEqual([[], []]);
    expect(costs(too(true), 'claim/own-repair/keep')).toEqual(own);
    expect(costs(too(true), 'claim/safe-only/keep')).toEqual(own);
  });
  it('where it does not, they come on top of the shop’s bill', () => {
    expect(costs(too(false), 'claim/shop-repair/keep')).toEqual(own);
  });
  it('and the seats, not the alignment, where it goes', () => {
    expect(costs(too(true), 'claim/sold-damaged/replace')).toEqual([[], [[0, 23_000]]]);
  });
});
