import { billAnswer, billableNames } from '../../engine/analysis/repairBill.ts';
import { walkAwayOf } from '../../engine/analysis/repairLimitTable.ts';
import { visible } from '../../engine/scenario/text/problems.ts';
import { billLines } from '../../report/bill.ts';
import { significant } from '../../report/exports/drawn.ts';
import { formatsFor } from '../../report/format.ts';
import { type Amount, isSignOf } from '../amount.ts';
import { meantComponent } from '../component.ts';
import type { Effects } from '../effects.ts';
import { EXIT } from '../exit.ts';
import { load } from '../load.ts';
import { wrapped } from '../wrapped.ts';

export interface Bill {
  readonly file: string;
  /** As it was typed: a component's name, or the beginning of one. */
  readonly component: string;
  readonly amount: Amount;
  readonly json: boolean;
  readonly set: readonly string[];
}

/** Answers a shop's phone call: pay this bill or walk away, and by how much. Nothing is drawn for it. */
export const billCommand = async (
  { file, component, amount, json, set }: Bill,
  effects: Effects,
): Promise<number> => {
  const loaded = await load(file, effects, set);
  if (typeof loaded === 'number') return loaded;
  const { scenario, renamed } = loaded;
  const { facts } = scenario;
  const refuse = async (line: string): Promise<number> => {
    await effects.err(`${visible(line)}\n`);
    return EXIT.misuse;
  };
  if (amount.sign !== '' && !isSignOf(amount.sign, facts.currency)) {
    return refuse(
      `The scenario counts in ${facts.currency}, and "${amount.sign}" is another currency's sign.`,
    );
  }
  const walkAway = walkAwayOf(scenario);
  if (walkAway === null) {
    return refuse('There is nothing to weigh a bill against: keeping it is not open, or no replacement is.');
  }
  const meant = meantComponent(component, billableNames(walkAway), renamed);
  if ('told' in meant) return refuse(meant.told);
  const limit = walkAway.components.find(({ component, position }) =>
    meant.name === null ? position === null : position !== null && component === meant.name,
  );
  if (limit === undefined) throw new Error(`no limit of ${meant.name ?? 'what nobody named'}`);
  const answer = billAnswer(walkAway, limit, amount.value);
  const format = formatsFor(facts);
  await effects.out(
    json
      ? `${JSON.stringify(significant(answer), null, 2)}\n`
      : `${billLines(answer, facts, format)
          .map((line) => wrapped(visible(line), effects.columns))
          .join('\n')}\n`,
  );
  return EXIT.done;
};
