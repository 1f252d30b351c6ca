import type { Rules } from './ladder.ts';

/** The ladder as DEVELOPERS.md draws it. */
export const RULES: Rules = {
  rungs: {
    'src/engine/quantity': 1,
    'src/engine/scenario': 2,
    'src/engine/cashflow': 3,
    'src/engine/valuation': 4,
    'src/engine/chance': 5,
    'src/engine/policy': 6,
    'src/engine/decision': 7,
    'src/report': 8,
    'src/library': 8,
    'src/terminal': 9,
    'src/page': 9,
    'src/index.ts': 9,
  },
  apart: [
    ['src/terminal', 'src/page'],
    ['src/terminal', 'src/index.ts'],
    ['src/terminal', 'src/library'],
    ['src/report', 'src/library'],
  ],
  homes: {
    'decimal.js': ['src/engine/quantity', 'src/engine/cashflow'],
    quickselect: ['src/engine/chance'],
    zod: ['src/engine/scenario'],
    yaml: ['src/engine/scenario'],
    '@observablehq/plot': ['src/report/charts'],
    arquero: ['src/report/tables', 'src/report/exports'],
    linkedom: ['src/terminal'],
  },
  pure: ['src/engine', 'src/report'],
  longest: { lines: 300, files: { 'src/index.ts': 60 } },
};
