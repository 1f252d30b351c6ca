import type { Chances } from '../engine/decision/chance/chances.ts';
import type { WalkAway } from '../engine/decision/chance/walkAway.ts';
import type { Decision } from '../engine/decision/decision.ts';
import type { Facts } from '../engine/scenario/scenario.ts';

const withoutPositions = (path: string): string =>
  path.replace(/\[(\d+)\]/g, '.$1').replace(/\.\d+(?=\.|$)/g, '');

/** True when a path of the scenario file, or anything it stands in, is marked private. */
export const isPrivate = (facts: Facts, path: string): boolean => {
  const plain = withoutPositions(path);
  return facts.private.some((p) => {
    const marked = withoutPositions(p);
    const last = (s: string): string => s.split('.').at(-1) ?? s;
    return (
      plain === marked || plain.startsWith(`${marked}.`) || (!marked.includes('.') && last(plain) === marked)
    );
  });
};

const asId = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');

/** Words of a claim that may be private, each with what stands in for it. */
const claimWords = ({ facts: { claim: said }, claim }: Decision): (readonly [string, string, string])[] =>
  said === null
    ? []
    : [
        ['claim.what', said.what, 'a collision'],
        ['claim.insurer', said.insurer, 'the insurer'],
        ['claim.lender.name', said.lender?.name ?? '', 'the lender'],
        ['claim.place.name', said.place.name, 'the place'],
        ['claim.place.source', said.place.totalLoss.source, 'kept private'],
        ...said.place.notes.map(({ words }) => ['claim.place.notes', words, 'kept private'] as const),
        ...said.comparables.map(
          ({ what }, i) => ['claim.comparables.what', what, `vehicle ${i + 1}`] as const,
        ),
        ...said.answerBy.map(({ what }) => ['claim.answer_by.what', what, 'kept private'] as const),
        ...(claim?.estimate.lines ?? []).map(
          ({ what }, i) => ['claim.estimate.lines.what', what, `line ${i + 1}`] as const,
        ),
      ];

/** Words that are private, each with what stands in for it. */
const substitutes = (d: Decision): readonly (readonly [string, string])[] => {
  const { facts, chances, walkAway } = d;
  const words: readonly (readonly [path: string, word: string, instead: string])[] = [
    ['household.mechanic', facts.mechanic, 'whoever does the work'],
    ['household.partner', facts.partner, 'whoever shares the money'],
    ['vehicle.what', facts.vehicleName, 'present vehicle'],
    ...facts.replacementNames.map(
      (name, i) => ['replacement.what', name, i === 0 ? 'other vehicle' : `other vehicle ${i + 1}`] as const,
    ),
    ...facts.jobs.map((job, i) => ['work_needed.job', job.name, `job ${i + 1}`] as const),
    ...[
      ...(chances?.failures ?? []).map((f) => [f.vehicle === facts.vehicleName, f.component] as const),
      ...(walkAway?.components ?? [])
        .filter((c) => c.position !== null)
        .map((c) => [true, c.component] as const),
    ].map(
      ([own, name], i) =>
        [`${own ? 'vehicle' : 'replacement'}.components.name`, name, `part ${i + 1}`] as const,
    ),
    ...facts.notMoney.map((text) => ['not_money', text, ''] as const),
    ...claimWords(d),
    ['title', facts.title, 'Mend it, or hand it on?'],
    ['note', facts.note, ''],
  ];
  return words
    .filter(([path, word]) => word.trim() !== '' && isPrivate(facts, path))
    .flatMap(([, word, instead]) => [
      [word, instead] as const,
      // Ids of ways carry names too: "replace/2021-hatchback".
      [asId(word), asId(instead)] as const,
    ])
    .filter(([word]) => word !== '')
    .toSorted((a, b) => b[0].length - a[0].length);
};

const swapWords = <T>(value: T, words: readonly (readonly [string, string])[]): T => {
  if (typeof value === 'string')
    return words.reduce<string>((text, [word, instead]) => text.replaceAll(word, instead), value) as T;
  if (Array.isArray(value)) return value.map((v) => swapWords(v, words)) as T;
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, swapWords(v, words)])) as T;
};

/**
 * Drawn futures without what is private: a private number is not named among what carries the doubt and not listed
 * as worth knowing; a fund that rests on private savings is not known.
 */
const chancesWithoutPrivate = (c: Chances, { facts, quantities }: Decision): Chances => {
  const hidden = quantities.filter((q) => isPrivate(facts, q.path)).map((q) => q.label);
  const names = (what: string): boolean => hidden.some((label) => what.includes(label));
  const savings = isPrivate(facts, 'savings_for_this');
  return {
    ...c,
    ranged: c.ranged.filter((q) => !isPrivate(facts, q.path)),
    shares: c.shares.map((s) => (names(s.what) ? { ...s, what: 'kept private' } : s)),
    worthKnowing: c.worthKnowing.filter((w) => !names(w.what)),
    looks: isPrivate(facts, 'look_first') ? [] : c.looks,
    lumpy: savings
      ? c.lumpy.map((way) => ({
          ...way,
          fund: { ...way.fund, start: null, dry: [] },
          withoutIncome: { ...way.withoutIncome, dry: null },
        }))
      : c.lumpy,
  };
};

/** A part with anything private about it has no limit to show: its usual bill would tell. */
const limitsWithoutPrivate = (w: WalkAway, { facts, quantities }: Decision): WalkAway => {
  const day = quantities.some((q) => q.key === 'household.dayWithout' && isPrivate(facts, q.path));
  const shown = w.components.filter(
    ({ position }) =>
      position === null ||
      (!isPrivate(facts, 'vehicle.components.name') &&
        !quantities.some(
          (q) => q.key.startsWith(`vehicle.components.${position}.`) && isPrivate(facts, q.path),
        )),
  );
  return { ...w, components: day ? shown.map((c) => ({ ...c, daysCost: 0 })) : shown };
};

/**
 * The decision as it may be passed on: numbers marked private leave every list, lines of the ledger that come from
 * them lose their words (their money stays, or no total would add up), and private words are replaced wherever they stand.
 */
export const withoutPrivate = (d: Decision): Decision => {
  if (d.facts.private.length === 0) return d;
  const shown = (q: { readonly path: string }): boolean => !isPrivate(d.facts, q.path);
  const option = (o: Decision['options'][number]): Decision['options'][number] => ({
    ...o,
    ledger: o.ledger.map((r) => (shown(r) ? r : { ...r, what: 'kept private', path: '', reason: '' })),
  });
  const notMoney = isPrivate(d.facts, 'not_money') ? [] : d.facts.notMoney;
  const cleared: Decision = {
    ...d,
    facts: { ...d.facts, notMoney },
    quantities: d.quantities.filter(shown),
    options: d.options.map(option),
    bestKeep: d.bestKeep && option(d.bestKeep),
    bestReplace: d.bestReplace && option(d.bestReplace),
    breakEvens: d.breakEvens.filter((b) => shown(b.quantity)),
    swings: d.swings.filter((s) => shown(s.quantity)),
    chances: d.chances && chancesWithoutPrivate(d.chances, d),
    walkAway: d.walkAway && limitsWithoutPrivate(d.walkAway, d),
    breakEvenLine:
      d.breakEvenLine && shown(d.breakEvenLine.x) && shown(d.breakEvenLine.y) ? d.breakEvenLine : null,
    verdict: { ...d.verdict, settledBy: d.verdict.settledBy.filter((b) => shown(b.quantity)) },
  };
  return { ...swapWords(cleared, substitutes(d)), version: d.version };
};
