/** Ruled like a ledger: hairlines between, one rule above a total, two below it. */
export const tables = `
.box { overflow-x: auto; margin: 0 0 1.1rem; max-width: 100%; }
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
.lines td:nth-child(2) { min-width: 11em; } .lines td:nth-child(3) { min-width: 16em; }
.ledger { font-size: 0.78rem; } .years tbody th { white-space: nowrap; min-width: 0; } .years thead th { hyphens: auto; }
.full { max-width: 100%; } .full details { max-width: 100%; }
details > .box { margin-top: 0.3rem; }
`;
