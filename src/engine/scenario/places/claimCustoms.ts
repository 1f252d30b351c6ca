import data from '../facts/claimCustoms.json' with { type: 'json' };
import type { AsRead, Sourced } from '../facts/fact.ts';

export interface CustomsFile {
  readonly about: string;
  readonly date: string;
  readonly customs: readonly (Sourced & { readonly words: string })[];
}

/** Rules and customs of claims that are not one place's. */
export const GENERAL_RULES = (data satisfies AsRead<CustomsFile> as CustomsFile).customs;
