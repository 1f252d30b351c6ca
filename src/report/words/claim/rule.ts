import type { Undecided } from '../../../engine/cashflow/contracts/settlement/totalLoss.ts';
import {
  type Evidence,
  type LeftOut,
  type Operator,
  type PlaceRule,
  type Sourced,
  toBeChecked,
} from '../../../engine/scenario/placeRule.ts';
import { listed } from '../sentence.ts';

/** How well a row is known, as the page says it. */
export const evidenceWords: Readonly<Record<Evidence, string>> = {
  read: "read in the law or the agency's text",
  secondary: 'from a chart that names the law',
  memory: 'from memory',
  stated: 'as written in the scenario',
};

/** "Iowa Code 321.52; read in the law"; what was not read there says "check this". */
export const sourceWords = (of: Sourced): string =>
  `${of.source} (${evidenceWords[of.evidence]})${toBeChecked(of) ? ': check this' : ''}`;

const LEFT_OUT: Readonly<Record<LeftOut, string>> = {
  paint: 'paint',
  electronics: 'electronics',
  towing: 'the tow',
  storage: 'storage',
  rental: 'the rental',
  'lost market value': 'lost market value',
  'hail damage': 'hail damage',
  'sales tax': 'sales tax on the repair',
};

const OPERATOR: Readonly<Record<Operator, string>> = {
  '>=': 'or more',
  '>': 'more than that, the line itself not counting',
  'not known': 'whether the line itself counts is not known',
};

/** The rule itself, in a sentence. */
export const testWords = ({ totalLoss: { test, leftOut, note } }: PlaceRule): string => {
  const out =
    leftOut.length === 0 ? '' : ` Not counted in the repair: ${listed(leftOut.map((l) => LEFT_OUT[l]))}.`;
  const more = note === null ? '' : ` ${note.charAt(0).toUpperCase()}${note.slice(1)}.`;
  switch (test.kind) {
    case 'insurer decides':
      return `The insurer decides when a repair is too dear; the law gives no figure.${out}${more}`;
    case 'percent':
      return `A total loss when the repair comes to ${test.percent}% of what it was worth (${OPERATOR[test.operator]}).${out}${more}`;
    case 'formula':
      return `A total loss when the repair and the wreck's value together come to what it was worth (${OPERATOR[test.operator]}).${out}${more}`;
  }
};

/** Why a rule leaves it open. */
export const undecidedWords: Readonly<Record<Undecided, string>> = {
  'the insurer decides': 'the insurer decides',
  'exactly on the line, and whether that counts is not known':
    'it falls exactly on the line, and whether the line itself counts is not known',
  'no bid for the wreck': 'nobody has bid for the wreck yet',
  'the vehicle may be too old for the rule': 'it may be too old for the rule',
  'worth too little for the rule': 'it was worth too little for the rule',
};
