import { shopPriceOf } from '../cashflow/contracts/work.ts';
import type { OptionResult } from '../evaluation/optionResult.ts';
import type { AverageLeft } from '../plans/vehicle/averageLeft.ts';
import { mayWait } from '../plans/vehicle/neededWork.ts';
import { needWords, offered } from '../plans/vehicle/openOptions.ts';
import { monthsToPay } from '../plans/vehicle/selling.ts';
import { toCents } from '../quantity/money.ts';
import type { Inputs, Job } from '../scenario/inputs/inputs.ts';
import type { Facts } from '../scenario/inputs/scenario.ts';
import type { Decision, Notice } from './decision.ts';
import { inspectionNotice } from './inspectionNotice.ts';

type Draft = (Omit<Notice, 'cost'> & Partial<Pick<Notice, 'cost'>>) | false | null | undefined;

const list = (names: readonly string[]): string =>
  names.length <= 1 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;

/** Cash that a job takes in the plan compared: its parts with own hands, else the shop's price. */
const outlay = (job: Job, shopHour: number): number =>
  job.by === 'own' ? job.parts : shopPriceOf(job, shopHour);

/** May it be driven? Stands above the money, always. */
const safety = (inputs: Inputs, facts: Facts): Draft[] => {
  const driven = (how: Job['mayBeDriven']): Job[] =>
    inputs.workNeeded.filter((job) => job.mayBeDriven === how);
  const unsafe = driven('no').filter((job) => job.safety);
  const stuck = driven('no').filter((job) => !job.safety);
  const barred = facts.recallStop || facts.mayBeDriven === false || driven('no').length > 0;
  const qualified = facts.jobs.filter((job) => job.qualifiedOnly).map((job) => job.name);
  const first = (kind: string, text: string): Draft => ({ kind, place: 'first', text });
  const until = (kind: string, words: string, jobs: readonly Job[]): Draft =>
    jobs.length > 0 && {
      kind,
      place: 'first',
      text: `${words} until this is done: ${list(jobs.map((job) => job.name))}.`,
      cost: toCents(jobs.reduce((sum, job) => sum + outlay(job, inputs.household.atHome.shopHour), 0)),
    };
  return [
    facts.recallStop &&
      first(
        'recall-stop',
        'An open recall says not to drive it. That stands above everything below; the remedy is free.',
      ),
    until('unsafe', "Don't drive it", unsafe),
    facts.mayBeDriven === false &&
      unsafe.length === 0 &&
      first('may-not-be-driven', 'It may not be driven as it stands.'),
    until('immobilised', 'It stays where it is', stuck),
    until(
      'to-the-shop',
      barred
        ? 'Once it may be driven again, have it towed, or drive it no farther than to the work,'
        : 'Have it towed, or drive it no farther than to the work,',
      driven('to_the_shop'),
    ),
    facts.inspectionFailed &&
      first(
        'inspection-failed',
        'It has failed its inspection: until it passes, it is of no use to anybody.',
      ),
    facts.structuralRust === 'found' &&
      first(
        'frame-rust',
        'The frame is rusted through. That ends it, unless a qualified repair is quoted; whoever takes it must be told.',
      ),
    facts.structuralRust === 'unknown' &&
      first(
        'frame-rust-unknown',
        'Nobody has looked at the frame for rust. Look first: it can end the matter.',
      ),
    qualified.length > 0 && {
      kind: 'qualified-only',
      place: 'work',
      text: `Only qualified work will do for ${list(qualified)}, so doing it at home is not among the ways.`,
    },
  ];
};

const dates = (facts: Facts): Draft[] => [
  ...facts.offerEnds.map(
    (date, i): Draft =>
      date !== '' && {
        kind: 'offer-ends',
        place: 'answer',
        text: `The offer for the ${facts.replacementNames[i]} ends on ${date}.`,
      },
  ),
  ...facts.jobs.map(
    (job): Draft =>
      job.quoteEnds !== '' && {
        kind: 'quote-ends',
        place: 'work',
        text: `The quote for ${job.name} holds until ${job.quoteEnds}.`,
      },
  ),
];

const work = (inputs: Inputs, facts: Facts): Draft[] => {
  const notAsked = facts.jobs.filter((job) => job.someoneElsePays === '').map((job) => job.name);
  const firsts = facts.jobs.filter((job) => job.firstTime).map((job) => job.name);
  const unknownCure = inputs.workNeeded.filter((job) => job.notCured.chance === 0).map((job) => job.name);
  return [
    !facts.recallChecked && {
      kind: 'recall',
      place: 'work',
      text: "Check the maker's recall list today: the remedy of an open recall is free.",
    },
    notAsked.length > 0 && {
      kind: 'someone-else-pays',
      place: 'work',
      text: `Before paying for ${list(notAsked)}, ask who else might: a recall, a guarantee on an earlier part or repair, a service contract, comprehensive cover.`,
    },
    firsts.length > 0 && {
      kind: 'first-time',
      place: 'work',
      text: `A first time at a job takes one and a half to two times the book's hours (common practice, no source): ${list(firsts)}.`,
    },
    unknownCure.length > 0 && {
      kind: 'not-cured',
      place: 'work',
      text: `Nobody gave a chance that the work does not cure it: ${list(unknownCure)} count${unknownCure.length === 1 ? 's' : ''} as cured the first time.`,
    },
    inputs.workNeeded.some((job) => mayWait(job, 1, facts)) && {
      kind: 'can-wait',
      place: 'work',
      text: 'Some of the work can wait; leaving it is compared as a way of its own.',
    },
  ];
};

const noRepairs = (inputs: Inputs, facts: Facts): Draft[] => {
  const none = (vehicle: Inputs['vehicle'] | Inputs['replacement'][number]): boolean =>
    vehicle.components.length === 0 &&
    (vehicle.averageRepairs.scale === 0 || vehicle.averageRepairs.statedAYear === 0);
  const say = (name: string): Draft => ({
    kind: 'no-future-repairs',
    place: 'assumptions',
    text: `No future repairs are counted for the ${name}. That is not to be expected of any vehicle.`,
  });
  return [
    none(inputs.vehicle) && say(facts.vehicleName),
    ...inputs.replacement.map((deal, i): Draft => none(deal) && say(facts.replacementNames[i] ?? deal.name)),
    ...inputs.replacement.map(
      (deal, i): Draft =>
        deal.condition === 'used' &&
        deal.inspectionBefore === 0 &&
        deal.catchUp === 0 && {
          kind: 'used-taken-for-new',
          place: 'assumptions',
          text: `The ${facts.replacementNames[i]} is a used one, yet neither an inspection before buying nor any catching up is counted.`,
        },
    ),
  ];
};

/** Below so much of the average, what is left for repairs nobody named is said. */
const LITTLE_LEFT = 0.25;

/** Named parts take out of the average what they bring: where that is most of it, hardly anything may break unnamed. */
const littleLeft = ({ averagesLeft }: Told): Draft[] =>
  averagesLeft
    .filter(({ share }) => share < LITTLE_LEFT)
    .map(({ vehicle, share }): Draft => {
      const percent = Math.round(100 * share);
      return {
        kind: 'average-left',
        place: 'assumptions',
        text:
          percent === 0
            ? `The parts named for the ${vehicle} bring all of its average repairs: nothing is left for whatever nobody named.`
            : `The parts named for the ${vehicle} bring all but ${percent}% of its average repairs: that much is left for whatever nobody named.`,
      };
    });

/** A list of upkeep on one side and the average on the other are two ways of counting: that tilts the answer. */
const upkeepOneSided = ({ inputs, facts, bestReplace }: Told): Draft => {
  const deal = inputs.replacement[bestReplace?.replacement ?? -1];
  if (!deal || inputs.vehicle.upkeep.length > 0 === deal.upkeep.length > 0) return null;
  const name = facts.replacementNames[bestReplace?.replacement ?? -1] ?? deal.name;
  const [listed, average] =
    inputs.vehicle.upkeep.length > 0 ? [facts.vehicleName, name] : [name, facts.vehicleName];
  return {
    kind: 'upkeep-one-sided',
    place: 'assumptions',
    text: `Upkeep of the ${listed} is a list of jobs, that of the ${average} an average of everything: a list is easily shorter than life. Listing both, or neither, compares like with like.`,
  };
};

/** Needs that nobody said a vehicle meets or fails. */
const needsUnknown = ({ facts }: Told): Draft[] => {
  const unknown = (name: string, offers: Readonly<Record<string, number | boolean>> | undefined): Draft => {
    const missing = facts.needs
      .filter(({ what }) => offered(offers ?? {}, what) === undefined)
      .map(({ what }) => needWords(what));
    return (
      missing.length > 0 && {
        kind: 'needs-unknown',
        place: 'assumptions',
        text: `Nobody said whether the ${name} meets this need, so it counts as met: ${list(missing)}.`,
      }
    );
  };
  return [
    unknown(facts.vehicleName, facts.offers.vehicle),
    ...facts.replacementNames.map((name, i) => unknown(name, facts.offers.replacement[i])),
  ];
};

/** Savings do not last through the first day, or through the first three months. */
const shortWords = ({ label, letGo, savingsAfter }: OptionResult, salePaysLater: boolean): string => {
  if (savingsAfter >= 0)
    return `Savings cover the first day of this way, but not all that is paid once in the first three months: ${label}. What is missing then is not counted as borrowed.`;
  const privately = letGo === 'private' || letGo === 'as it stands';
  return privately && salePaysLater
    ? `Savings do not cover the first day of this way: ${label}. Its buyer pays weeks later. What is missing is borrowed at the card's rate: what the buyer's money covers until then, the rest over two years.`
    : `Savings do not cover the first day of this way: ${label}. What is missing is borrowed at the card's rate and paid back over two years.`;
};

const money = ({ inputs, facts, bestKeep, bestReplace, payments, leases }: Told): Draft[] => {
  const savings = inputs.household.savings;
  const short = savings === null ? [] : [bestKeep, bestReplace].filter((way) => way && way.savingsLowest < 0);
  return [
    facts.private.includes('savings_for_this') && {
      kind: 'savings-private',
      place: 'answer',
      text: 'Savings are kept private, so whether they cover the first day is left out of the figures.',
    },
    ...short.map(
      (way): Draft =>
        way && {
          kind: 'short-on-the-day',
          place: 'answer',
          text: shortWords(way, monthsToPay(inputs.vehicle) > 0),
        },
    ),
    ...payments.map(
      (loan): Draft =>
        !facts.creditConfirmed[loan.replacement] && {
          kind: 'credit',
          place: 'payment',
          text: `The loan for the ${loan.name} is not confirmed: this way is open only if it is granted on these terms.`,
        },
    ),
    ...payments.map(
      (loan): Draft =>
        loan.owedAtHorizon > 0 && {
          kind: 'loan-outlasts',
          place: 'payment',
          text: `The loan for the ${loan.name} runs on beyond the time looked at; what is still owed then is counted, and so is what the vehicle would bring.`,
        },
    ),
    ...leases.map(
      (lease): Draft =>
        lease.cutShort && {
          kind: 'lease-cut-short',
          place: 'payment',
          text: `Our look ends in the middle of a lease of the ${lease.name}. What ending it then would cost is not known here unless the scenario says so; what was paid at its start is counted in proportion.`,
        },
    ),
    (payments.length > 0 || leases.length > 0) && {
      kind: 'insurance-quotes',
      place: 'change',
      text: 'A lender wants full cover until the debt is gone. Get two insurance quotes before signing; where the answer tips stands in the table.',
    },
    {
      kind: 'not-counted',
      place: 'answer',
      text: 'Not counted in money: being stranded, and how well each protects in a crash. They stand beside the money and are never netted against it.',
    },
  ];
};

/** What notices are read out of. */
type Told = { readonly inputs: Inputs; readonly averagesLeft: readonly AverageLeft[] } & Pick<
  Decision,
  'facts' | 'options' | 'bestKeep' | 'bestReplace' | 'payments' | 'leases'
>;

/** Everything the page must say besides figures, each with the place where it matters. */
export const noticesOf = (told: Told): Notice[] => {
  const { inputs, facts } = told;
  return [
    ...safety(inputs, facts),
    inspectionNotice(inputs, facts),
    ...dates(facts),
    ...work(inputs, facts),
    ...noRepairs(inputs, facts),
    ...littleLeft(told),
    upkeepOneSided(told),
    ...needsUnknown(told),
    ...money(told),
  ].flatMap((draft) => (draft ? [{ cost: null, ...draft }] : []));
};
