/**
 * On paper the page is set in two columns like a newspaper: the answer across both, assumptions run on under their
 * paragraph, the ledger and the card across both again. Folded tables stay out unless they were opened; so do pictures
 * whose every figure stands in a sentence or a table on the same paper, and lists whose picture does. A finding that is
 * said nowhere else stays as a line.
 */
export const paper = `
@page { margin: 11mm 13mm 12mm; }
@media print {
  :root { --paper: #fff; --ink: #000; --soft: #444; --hair: #ccc; --rule: #777; --keep: #1d4e79; --replace: #9c4f0b; --replace-wash: #f8e9d6; --care: #6d2a4a; --measure: none; }
  html { font-size: 8.7pt; }
  body { padding: 0; max-width: none; line-height: 1.33; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  main { columns: 2; column-gap: 8mm; column-fill: balance; }
  #answer, .full { column-span: all; } #how-sure .full { column-span: none; }
  #answer { margin-bottom: 1rem; }
  nav, details:not([open]), .onscreen { display: none; }
  section { margin-top: 0.9rem; padding-top: 0.5rem; border-top-width: 4px; }
  p { margin-bottom: 0.48rem; orphans: 3; widows: 3; }
  h1 { font-size: 2.1rem; margin-bottom: 0.7rem; max-width: none; }
  h2 { font-size: 1.35rem; margin-bottom: 0.5rem; }
  h3 { margin: 0.7rem 0 0.3rem; }
  h1, h2, h3, figcaption, tbody tr:first-child { break-after: avoid; } h2 { break-inside: avoid; } tbody tr:last-child { break-before: avoid; }
  figure, tr, .first, .three, .note li, ul.plain li { break-inside: avoid; }
  .first { padding: 0.4rem 0; margin-bottom: 0.6rem; } .first p { font-size: 1.15rem; }
  .disagree { margin-bottom: 0.4rem; } .lead { font-size: 1.3rem; margin-bottom: 0.7rem; }
  .three { grid-template-columns: auto auto 1fr; margin-bottom: 0.6rem; } .three > div { padding-top: 0.35rem; padding-bottom: 0.4rem; }
  .three > div:nth-child(3) { grid-column: auto; border-left: 1px solid var(--hair); border-top: 0; padding-left: 1.2rem; }
  #answer .block { display: grid; grid: auto-flow dense / 1fr 1fr; column-gap: 8mm; } #answer .block > * { grid-column: 1 / -1; }
  #answer .three ~ * { grid-column: 1; } #answer .three ~ figure { grid-column: 2; grid-row: span 12; margin-top: 0; }
  figure { margin: 0.5rem 0 0.7rem; } figcaption { margin-bottom: 0.3rem; line-height: 1.28; }
  .wide { display: block; max-width: 78mm; } .narrow { display: none; } figure svg { font-size: 15px; } :is(#fig-cumulative, #fig-fan) svg { font-size: 16.5px; }
  .note { margin: 0 0 0.5rem; padding-left: 0.6rem; font-size: 0.82rem; line-height: 1.28; }
  .note:not(.care) li { display: inline; border: 0; } .note:not(.care) li + li::before { content: "\\2002\\b7\\2002"; color: var(--rule); }
  .note.care li { padding: 0.2rem 0 0.25rem; } .note small { display: inline; } .note .mark { white-space: normal; }
  .box { overflow: visible; margin-bottom: 0.6rem; } table { font-size: 0.88rem; } .wordy td, .wordy th { min-width: 0; }
  th, td { padding-top: 0.13rem; padding-bottom: 0.13rem; }
  #fig-hundred, #fig-ways, #fig-two-way, #fig-life, #fig-limits, #fig-runs-dry { display: none; }
  :is(#fig-courses, #fig-yearly, figure[id^="fig-later-"], figure[id^="fig-balance-"]) :is(.wide, figcaption span) { display: none; }
  .ledger, .ways { font-size: 7.4pt; } .ways td { min-width: 6em; } #how-sure .ways :is(th, td) { min-width: 0; padding-left: 0.7em; white-space: normal; } #how-sure .ways tbody th { padding-left: 0; } tfoot { display: table-row-group; } .years, #insurers-money .full > .box { break-inside: avoid; } .box > table { width: calc(100% - 1px); min-width: 0; }
  .ledger :is(th, td) { padding: 0.07rem 0 0.07rem 0.7em; } .full h3 { margin-top: 0.5rem; }
  .block + .block { margin-top: 0.7rem; }
  ul.plain, ul.closed { margin-bottom: 0.5rem; } ul.plain li, ul.closed li { margin-bottom: 0.12rem; }
  #method :is(p, li, h3) { font-size: 0.88rem; line-height: 1.28; } footer { margin-top: 0.6rem; }
  a[href^="http"]::after { content: " (" attr(href) ")"; }
}
`;
