/**
 * On paper the page is set in two columns like a newspaper: the answer across both, figures at the width a phone gets,
 * assumptions under their paragraph, the ledger across both again. Folded tables stay out unless they were opened.
 */
export const paper = `
@page { margin: 13mm 14mm 15mm; }
@media print {
  :root { --paper: #fff; --ink: #000; --soft: #444; --hair: #ccc; --rule: #777; --keep: #1d4e79; --replace: #9c4f0b; --replace-wash: #f8e9d6; --care: #6d2a4a; --measure: none; }
  html { font-size: 9pt; }
  body { padding: 0; max-width: none; line-height: 1.36; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  main { columns: 2; column-gap: 8mm; column-fill: balance; }
  #answer, .full { column-span: all; }
  #answer { margin-bottom: 1rem; }
  nav, details:not([open]) { display: none; }
  section { margin-top: 1.1rem; padding-top: 0.55rem; border-top-width: 4px; }
  p { margin-bottom: 0.55rem; orphans: 3; widows: 3; }
  h1 { font-size: 2.1rem; margin-bottom: 0.7rem; max-width: none; }
  h2 { font-size: 1.35rem; margin-bottom: 0.5rem; }
  h3 { margin: 0.7rem 0 0.3rem; }
  h1, h2, h3, figcaption { break-after: avoid; }
  figure, tr, .first, .three, .note li, ul.plain li { break-inside: avoid; }
  .first { padding: 0.4rem 0; margin-bottom: 0.6rem; } .first p { font-size: 1.15rem; }
  .disagree { margin-bottom: 0.4rem; } .lead { font-size: 1.3rem; margin-bottom: 0.7rem; }
  .three { grid-template-columns: auto auto 1fr; margin-bottom: 0.6rem; } .three > div { padding-top: 0.35rem; padding-bottom: 0.4rem; }
  .three > div:nth-child(3) { grid-column: auto; border-left: 1px solid var(--hair); border-top: 0; padding-left: 1.2rem; }
  #answer .block { columns: 2; column-gap: 8mm; } #answer .first, #answer .disagree, #answer .lead, #answer .three { column-span: all; }
  figure { margin: 0.6rem 0 0.8rem; } figcaption { margin-bottom: 0.4rem; }
  .wide { display: none; } .narrow { display: block; max-width: 84mm; }
  figure svg { font-size: 11.5px; }
  .note { margin: 0 0 0.6rem; padding-left: 0.6rem; font-size: 0.86rem; line-height: 1.3; } .note li { padding: 0.2rem 0 0.25rem; }
  .note small { display: inline; }
  .box { overflow: visible; margin-bottom: 0.6rem; } table { font-size: 0.88rem; } .wordy td, .wordy th { min-width: 0; }
  th, td { padding-top: 0.18rem; padding-bottom: 0.18rem; }
  :is(#fig-yearly, #fig-swings, #fig-ways) .wide { display: block; } :is(#fig-yearly, #fig-swings, #fig-ways) .narrow { display: none; } :is(#fig-yearly, #fig-swings, #fig-ways) svg { font-size: 16.5px; }
  #fig-two-way, #fig-life, #fig-limits, #fig-runs-dry { display: none; }
  .ledger, .ways { font-size: 7.4pt; } tfoot { display: table-row-group; } .years { break-inside: avoid; } .box > table { width: calc(100% - 1px); min-width: 0; }
  .ledger th, .ledger td { padding-left: 0.7em; }
  .block + .block { margin-top: 0.7rem; }
  ul.plain, ul.closed { margin-bottom: 0.5rem; } ul.plain li, ul.closed li { margin-bottom: 0.2rem; }
  footer { margin-top: 0.8rem; }
  a[href^="http"]::after { content: " (" attr(href) ")"; }
}
`;
