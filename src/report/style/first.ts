/** The first screen: what is unsafe, the sentence, three numbers. */
export const first = `
#answer { margin-top: 0.5rem; padding-top: 1.3rem; }
.dateline { color: var(--soft); font-style: italic; margin-bottom: 0.5rem; }
.dateline span + span::before { content: "\\00b7"; margin: 0 0.55em 0 0.3em; }
h1 { font-size: clamp(2rem, 1.2rem + 3vw, 2.9rem); line-height: 1.08; letter-spacing: -0.018em; margin-bottom: 1.5rem; max-width: none; }
.first { border: solid var(--ink); border-width: 3px 0 1px; padding: 0.75rem 0; margin-bottom: 1.3rem; max-width: var(--measure); }
.first p { font-weight: 700; font-size: 1.2rem; line-height: 1.35; margin: 0; }
.first p + p { margin-top: 0.4rem; }
.disagree { font-style: italic; font-size: 1.08rem; }
.lead { font-size: 1.42rem; line-height: 1.36; margin-bottom: 1.4rem; }
.lead strong { font-weight: 700; }
.three { display: grid; grid-template-columns: auto auto 1fr; margin: 0 0 1.3rem; border: solid var(--hair); border-width: 1px 0; max-width: var(--measure); }
.three > div { padding: 0.7rem 1.2rem 0.75rem 0; }
.three > div + div { border-left: 1px solid var(--hair); padding-left: 1.2rem; }
.three > div:last-child { padding-right: 0; }
.three dt { font-size: 0.82rem; color: var(--soft); margin-bottom: 0.1rem; }
.three dd { margin: 0; line-height: 1.4; }
.three dd span { color: var(--soft); font-size: 0.82rem; }
.three .big { font-size: 2.1rem; line-height: 1.1; letter-spacing: -0.01em; }
nav { margin-top: 2.6rem; max-width: var(--measure); }
nav ol { list-style: none; margin: 0; padding: 0; columns: 2; column-gap: 2rem; }
nav li { break-inside: avoid; }
nav a { display: block; padding: 0.5rem 0; line-height: 1.3; text-decoration-line: none; border-top: 1px solid var(--hair); font-style: italic; }
nav a:hover { text-decoration-line: underline; }
@media (max-width: 40rem) {
  body { padding: 1rem 1.125rem 3rem; }
  .lead { font-size: 1.25rem; }
  .three { grid-template-columns: auto 1fr; }
  .three > div { padding: 0.6rem 1rem 0.6rem 0; }
  .three > div + div { padding-left: 1rem; }
  .three > div:nth-child(3) { grid-column: 1 / -1; border-left: 0; border-top: 1px solid var(--hair); padding-left: 0; }
  nav ol { columns: 1; }
  nav a { padding: 0.7rem 0; min-height: 2.7rem; }
  section { margin-top: 2.6rem; }
  h2 { font-size: 1.45rem; }
}
`;
