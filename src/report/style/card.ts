/** The card for the glovebox: a cutting line around it, and whole on one page of paper. */
export const card = `
.card { margin: 2rem 0 0; padding: 0.4rem 1.2rem 1rem; border: 2px dashed var(--rule); max-width: var(--measure); break-inside: avoid; }
.card .cut { margin: 0 0 0.5rem; font-size: 0.8rem; font-style: italic; color: var(--soft); text-align: right; }
.card h3 { margin: 0 0 0.5rem; font-weight: 600; font-style: normal; }
.card p { margin-bottom: 0.4rem; font-size: 0.92rem; }
.card .box { margin-bottom: 0.8rem; }
.card tbody th small { display: block; }
.card .ask { font-weight: 600; }
.card ul { list-style: none; margin: 0 0 0.6rem; padding: 0; columns: 2; column-gap: 1.5rem; font-size: 0.92rem; }
.card li { break-inside: avoid; padding: 0.15rem 0 0.15rem 1.5em; text-indent: -1.5em; }
.card li::before { content: "\\25a1"; display: inline-block; width: 1.5em; text-indent: 0; }
@media (max-width: 36rem) { .card { padding: 0.4rem 0.8rem 0.8rem; } .card ul { columns: 1; } }
@media print {
  section > .card { margin: 0.8rem 0; } .card { column-span: all; columns: 2; column-gap: 8mm; padding: 0.3rem 0.8rem 0.4rem; } .card .cut, .card h3 { column-span: all; } .card .cut { margin: 0; } .card :is(.box, ul) { break-inside: avoid; } .card .ask { break-after: avoid; }
  .card p, .card ul { font-size: 1em; margin-bottom: 0.25rem; } .card ul { columns: 1; }
}
`;
