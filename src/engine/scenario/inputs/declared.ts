import type { Mark, Spec } from './specs.ts';

/**
 * What stands in for a number the file does not give. Money is in US dollars and distance in miles; both are carried to
 * the household's own units.
 */
export interface Default {
  readonly value: number;
  /** 10, 50 and 90 % points of a law above nil, whose mean `value` is. */
  readonly range?: { readonly low: number; readonly likely: number; readonly high: number };
  /** The unit as it stands here. */
  readonly unit: string;
  /** When it was set down. */
  readonly date: string;
  readonly source: string;
  readonly mark: Mark;
}

/** A default before it stands at its number, which says what it counts; `unit` where that says too little. */
export interface Or extends Omit<Default, 'unit'> {
  readonly unit?: string;
}

export const guess = (value: number, source = 'our guess'): Or => ({
  value,
  date: '2026-11',
  source,
  mark: 'guess',
});
export const guessOf = (value: number, unit: string, source?: string): Default => ({
  ...guess(value, source),
  unit,
});
export const choice = (value: number, source = 'our choice'): Or => ({
  ...guess(value, source),
  mark: 'choice',
});
export const nil = (source: string): Or => guess(0, source);

/** What a default counts: "dollars a month", "a year", "chance". */
const unitOf = ({ unit }: Spec): string =>
  unit
    .replace('money', 'dollars')
    .replace('per distance', 'a mile')
    .replace(/^distance/, 'miles')
    .replace('rate ', '')
    .replace('share', 'chance');

/** Where the file does not give it: it is refused; a default; none (null); what follows from other numbers of the file. */
type Missing = 'refused' | 'usual' | 'none' | 'follows';

/**
 * A number that a file may give, declared once: what reads it, fills it in, explains it and lists it is made from this.
 * `or` stands in for it, or says what part it is of what it follows.
 */
export interface Input<
  K extends string = string,
  M extends Missing = Missing,
  O extends Default | undefined = Default | undefined,
> extends Spec {
  /** Its key in the file. */
  readonly key: K;
  readonly missing: M;
  readonly or: O;
}

type Complete<O> = O extends Or ? O & Default : undefined;

const input =
  <M extends Missing>(missing: M) =>
  <const K extends string, O extends Or | undefined = undefined>(key: K, one: Spec, or?: O) =>
    ({ ...one, key, missing, or: or && { unit: unitOf(one), ...or } }) as Input<K, M, Complete<O>>;

/** The file must give it wherever the mapping it stands in does; `or` is for a file without that mapping. */
export const needed = input('refused');
/** A stranger may be given a default. */
export const usual = <const K extends string, O extends Or>(key: K, one: Spec, or: O) =>
  input('usual')(key, one, or);
/** There is no such thing where it is not given. */
export const orNone = input('none');
/** It follows from other numbers: completing works it out. */
export const follows = input('follows');

/** One number whose key says which unit of distance it is in. */
export const byUnit = <const M extends string, const K extends string, O extends Or | undefined = undefined>(
  miles: M,
  km: K,
  one: Spec,
  or?: O,
) => {
  type Kind = O extends Or ? 'usual' : 'follows';
  const kind = input((or ? 'usual' : 'follows') as Kind);
  return { miles: kind(miles, one, or), km: kind(km, one, or) };
};

/** Numbers that stand beside each other in the file and in `Inputs`, by their names in `Inputs`. */
export type Group = Readonly<Record<string, Input>>;

/** The part of `Inputs` that a group is. */
export type Numbers<G extends Group> = {
  readonly [N in keyof G]: G[N]['missing'] extends 'none' ? number | null : number;
};
