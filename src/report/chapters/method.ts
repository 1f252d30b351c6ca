import { embedScenario } from '../embed.ts';
import { number, span } from '../format.ts';
import { type Html, html } from '../markup/html.ts';
import { folded } from '../tables/table.ts';
import { noticesAt } from '../words/facts.ts';
import { block, type Chapter, type Page, paragraphs } from './page.ts';

const conventions = ({ d }: Page): readonly string[] => [
  `All ways are followed for the same ${span(d.horizon)}, month by month. A cost of a month falls at its end; month 0 is the day of the decision.`,
  "In today's money: each amount is brought back at what the money would earn elsewhere. What is owned at the end, less what is owed on it, is taken off.",
  'Works out at, a month: the level amount which, paid every month, would come to the same.',
  'Prices rise once a year; values and one-off costs, work that is put off among them, move smoothly.',
  'Insurance and yearly tax are paid a year ahead. Their unused part is owned, and comes back when the vehicle goes; that of registration only where the scenario says so.',
  'A private sale is paid for after the weeks it takes, at the end of a month; under two weeks, at once. Until then a loan on it runs on, and what savings lack goes on the card as far as its price will cover it.',
  'Repairs are counted at what they cost on average. A part that is renewed starts its life again.',
  'A loan is reckoned to the cent as its contract would be. Its yearly cost, fees included (APR), follows Regulation Z, Appendix J (12 CFR 1026).',
  'What is already spent is spent; it is in none of the ways.',
];

/** How the futures were drawn, with what it takes to draw the same ones again. */
const drawing = ({ d: { chances } }: Page): readonly string[] =>
  chances === null
    ? []
    : [
        `${number(chances.futures)} futures were drawn, seed ${chances.seed}: ${number(chances.scrambles)} times over, each time the same evenly spread points scrambled afresh (Sobol points with the direction numbers of Joe and Kuo, 2008; scrambled after Owen, 1995). The error of a drawn figure is how far these ${number(chances.scrambles)} differ among each other.`,
        'A number given as low, likely, high follows a smooth curve through these three, 1 in 10 lying below the low and 1 in 10 above the high (metalog; Keelin, 2016). All ways meet the same futures. The ledger counts with the mean of such a range.',
      ];

const sources = ({ d }: Page): readonly string[] =>
  [
    ...new Set(d.quantities.filter((q) => q.mark === 'table' && q.source !== '').map((q) => q.source)),
  ].toSorted();

/** How it was reckoned, by whose tables, and the scenario it was made from. */
export const methodChapter = (page: Page, scenarioText: string): Chapter => {
  const tables = sources(page);
  const scenario: Html = embedScenario(scenarioText);
  return {
    id: 'method',
    question: 'How was this worked out, and how far can it be trusted?',
    body: html`${block(
      html`<p>This is information, not advice; nothing in it left the machine it was made on. It knows only what the scenario says, and a scenario is one household's best account.</p>`,
      paragraphs(noticesAt(page.d, 'method')),
      html`<ul class="plain">${[...conventions(page), ...drawing(page)].map((c) => html`<li>${c}</li>`)}</ul>`,
      tables.length === 0
        ? null
        : html`<h3>Which tables were used?</h3><ul class="plain">${tables.map((s) => html`<li>${s}</li>`)}</ul>`,
      html`<h3>Can it be run again?</h3><p>Yes: the scenario is kept in this file, and Stillworth ${page.d.version} made it.</p>`,
      folded('The scenario', scenario),
    )}`,
  };
};
