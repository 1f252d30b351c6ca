/** On paper: a narrower margin, folded tables left out, nothing broken across pages, links spelled out. */
export const paper = `
@page { margin: 15mm 14mm 16mm; }
@media print {
  :root { --paper: #fff; --ink: #000; --soft: #444; --hair: #ccc; --rule: #777; --keep: #1d4e79; --replace: #9c4f0b; --replace-wash: #f8e9d6; --care: #6d2a4a; --measure: 118mm; --gutter: 7mm; --margin: 52mm; }
  html { font-size: 9.6pt; }
  body { padding: 0; max-width: none; line-height: 1.4; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  nav, details:not([open]) { display: none; }
  section { margin-top: 1.5rem; padding-top: 0.8rem; }
  h1, h2, h3, figcaption { break-after: avoid; }
  h1 { font-size: 2rem; } h2 { font-size: 1.35rem; margin-bottom: 0.6rem; }
  .lead { font-size: 1.2rem; }
  figure, tr, .first, .three, .note li { break-inside: avoid; }
  figure { margin: 0.8rem 0; } figure svg { max-height: 62mm; }
  .wide { display: block; } .narrow { display: none; }
  .box { overflow: visible; } .ledger { font-size: 7.6pt; } .ledger th, .ledger td { padding-left: 0.7em; }
  p { orphans: 3; widows: 3; }
  a[href^="http"]::after { content: " (" attr(href) ")"; }
}
`;
