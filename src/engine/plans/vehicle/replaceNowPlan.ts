import { bought } from './boughtVehicle.ts';
import { NOTHING, sum } from './byReading.ts';
import type { Context } from './context.ts';
import type { Gone } from './disposalToday.ts';
import { gettingAbout } from './gettingAbout.ts';
import { nameOf } from './held.ts';
import type { Financing, Nameless } from './plan.ts';
import { recipe } from './recipe.ts';

/** The old one gone today, and a replacement got. */
export const replacedToday = (old: Gone, index: number, financing: Financing, ctx: Context): Nameless => {
  const next = bought(index, 0, old.brought, financing, ctx);
  return {
    side: 'replace',
    replacement: index,
    replaceMonth: 0,
    pieces: [...old.pieces, ...next.pieces],
    changeOver: null,
    awaited: old.awaited,
    valueAt: next.valueAt,
    toCome: (at, month) => sum(old.toCome(at, month), next.toCome(at, month)),
    owedAt: (at, month) => old.owedAt(at, month) + next.owedAt(at, month),
    vehicleAtEnd: nameOf(index, ctx),
    purchase: next.purchase,
  };
};

/** The old one gone today, and none in its place. */
export const doneWithout = ({ pieces, awaited, toCome, owedAt }: Gone): Nameless => ({
  side: 'without',
  replacement: null,
  replaceMonth: null,
  pieces: [...pieces, recipe(gettingAbout, 1)],
  changeOver: null,
  awaited,
  valueAt: () => NOTHING,
  toCome,
  owedAt,
  vehicleAtEnd: '',
  purchase: null,
});
