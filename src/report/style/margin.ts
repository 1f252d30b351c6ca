/** The margin holds each assumption beside the sentence that uses it; on a phone it folds under its paragraph. */
export const margin = `
.note { list-style: none; margin: 0; padding: 0; font-size: 0.8rem; line-height: 1.4; }
.note li { padding: 0.4rem 0 0.5rem; border-top: 1px solid var(--hair); }
.note li b { font-weight: 600; }
.note small { display: block; font-style: italic; font-size: 1em; }
.mark { white-space: nowrap; font-variant-caps: all-small-caps; letter-spacing: 0.04em; font-size: 1.02em; color: var(--soft); border-bottom: 1px solid transparent; }
.mark.guess { color: var(--ink); border-bottom: 2px dotted var(--rule); }
.note.care li { border-top: 2px solid var(--care); }
.note.care b { color: var(--care); font-variant-caps: all-small-caps; letter-spacing: 0.08em; font-size: 1.12em; }
@media screen and (min-width: 58rem) {
  .block { display: grid; grid-template-columns: minmax(0, var(--measure)) minmax(0, var(--margin)); column-gap: var(--gutter); }
  .block > * { grid-column: 1; }
  .block > .note { grid-column: 2; grid-row: 1 / span 30; align-self: start; }
}
@media print, (max-width: 57.99rem) { .note { margin: 0 0 1.2rem; padding-left: 0.9rem; border-left: 1px solid var(--hair); max-width: var(--measure); } .note li:first-child { border-top: 0; } }
`;
