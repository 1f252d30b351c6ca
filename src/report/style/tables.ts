/** Ruled like a ledger: hairlines between, one rule above a total, two below it. */
export const tables = `
.box { overflow-x: auto; margin: 0 0 1.1rem; max-width: 100%; }
@media screen {
  .box {
    background: linear-gradient(to right, var(--paper), transparent) 0 0 / 2rem 100% no-repeat local,
      linear-gradient(to left, var(--paper), transparent) 100% 0 / 2rem 100% no-repeat local,
      linear-gradient(to right, var(--hair), transparent) 0 0 / 0.6rem 100% no-repeat scroll,
      linear-gradient(to left, var(--hair), transparent) 100% 0 / 0.6rem 100% no-repeat scroll;
  }
}
table { border-collapse: collapse; font-size: 0.84rem; line-height: 1.35; min-width: 100%; }
th, td { padding: 0.34rem 0 0.34rem 1.1rem; text-align: right; vertical-align: top; font-weight: 400; white-space: nowrap; }
th:first-child { padding-left: 0; }
tbody th, thead th:first-child, .t { text-align: left; white-space: normal; }
thead th { font-style: italic; color: var(--soft); vertical-align: bottom; border-bottom: 1px solid var(--rule); white-space: normal; }
tbody tr + tr > * { border-top: 1px solid var(--hair); }
tfoot > tr > * { border-top: 1px solid var(--ink); border-bottom: 4px double var(--ink); font-weight: 600; }
tfoot th { text-align: left; }
table .key { margin-right: 0.6em; }
.wordy td, .lines td { min-width: 5.5em; }
.wordy tbody th { min-width: 7.5em; }
@media (max-width: 36rem) { .wordy th, .wordy td { padding-left: 0.7em; } .wordy .mark { white-space: normal; } .ledger tbody th { min-width: 7.5em; } }
.ways { font-size: 0.78rem; } .ways tbody th { min-width: 15em; } .ways td { white-space: normal; min-width: 5.2em; }
@media screen and (max-width: 36rem) {
  .stacks, .stacks tbody, .stacks tr, .stacks th, .stacks td { display: block; min-width: 0; }
  .stacks thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .stacks tbody th { font-size: 0.95rem; padding: 0.7rem 0 0.3rem; }
  .stacks tbody td { display: flex; justify-content: space-between; gap: 1rem; padding: 0.16rem 0; border-top: 0; font-size: 0.84rem; }
  .stacks tbody td::before { content: attr(data-h); font-style: italic; color: var(--soft); text-align: left; }
  .stacks tbody tr:last-child { padding-bottom: 0.4rem; }
}
.lines td:nth-child(2) { min-width: 11em; } .lines td:nth-child(3) { min-width: 16em; }
.ledger { font-size: 0.78rem; } .years tbody th { white-space: nowrap; min-width: 0; } .years thead th { hyphens: auto; }
.full { max-width: 100%; } .full details { max-width: 100%; }
details > .box { margin-top: 0.3rem; }
`;
