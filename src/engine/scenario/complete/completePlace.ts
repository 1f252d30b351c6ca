import type { Sourced } from '../facts/fact.ts';
import { significant } from '../inputs/units.ts';
import type { Operator, PlaceRule, TotalLossTest } from '../places/placeRule.ts';
import { placeByCode } from '../places/places.ts';
import type { SparseClaim } from '../schema/scenarioSchema.ts';

type WrittenPlace = Exclude<SparseClaim['place'], string>;

/** Percentages are whole numbers of a hundred, as statutes write them. */
const inHundred = (share: number): number => significant(share * 100, 10);

const operatorOf = (lineCounts: boolean | undefined): Operator =>
  lineCounts === undefined ? 'not known' : lineCounts ? '>=' : '>';

const testOf = (written: WrittenPlace['total_loss'], operator: Operator): TotalLossTest => {
  if (written === 'insurer decides') return { kind: written };
  if (written === 'formula') return { kind: written, operator };
  return { kind: 'percent', percent: inHundred(written.value), operator };
};

/** A rule that the household wrote out; what it does not say is not known. */
const writtenRule = (written: WrittenPlace, date: string): PlaceRule => {
  const said: Sourced = { source: written.source ?? 'written in the scenario', evidence: 'stated' };
  const operator = operatorOf(written.line_counts);
  return {
    code: written.name,
    name: written.name,
    date: date.slice(0, 7),
    totalLoss: {
      ...said,
      test: testOf(written.total_loss, operator),
      leftOut: written.left_out ?? [],
      reach: { modelYears: null, valueAtLeast: null, uninsuredOnly: false },
      note: null,
    },
    neverAgain: written.never_again
      ? { ...said, percent: inHundred(written.never_again.value), operator: 'not known' }
      : null,
    mayKeep: written.may_be_kept ?? null,
    settlement:
      written.tax === undefined && !written.fees_paid
        ? null
        : { ...said, tax: written.tax ?? 'not known', fees: written.fees_paid ? 'paid' : 'not known' },
    tradeIn: { ...said, credit: { kind: written.trade_in_credit ?? 'not known' }, note: null },
    fault: written.fault ? { ...said, rule: written.fault } : null,
    notes: (written.notes ?? []).map((words) => ({ ...said, words })),
  };
};

/** The rule of a listed place by its code, or the one written out. Throws for an unknown code: the rules refuse it. */
export const completePlace = (place: SparseClaim['place'], date: string): PlaceRule => {
  if (typeof place !== 'string') return writtenRule(place, date);
  const listed = placeByCode(place);
  if (!listed) throw new Error(`No place ${place}`);
  return listed;
};
