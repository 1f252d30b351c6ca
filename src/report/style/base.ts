/**
 * Paper, ink and measure. One serif, in the sizes of a well-set page; two inks for the two ways. The double rule that
 * closes an account opens each chapter.
 */
export const base = `
:root {
  color-scheme: light dark;
  --paper: #fdfcf8; --ink: #211e1a; --soft: #625b52; --hair: #ddd6c9; --rule: #8d8474;
  --keep: #1d4e79; --replace: #9c4f0b; --replace-wash: #f8e9d6; --care: #6d2a4a;
  --measure: 57ch; --gutter: 3rem; --margin: 15rem;
}
@media (prefers-color-scheme: dark) {
  :root {
    --paper: #181715; --ink: #ebe5da; --soft: #b0a798; --hair: #37332d; --rule: #7d7466;
    --keep: #93c1ec; --replace: #e9a860; --replace-wash: #3a2c1b; --care: #e2a3c2;
  }
}
* { box-sizing: border-box; }
html { font-size: 112.5%; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
  margin: 0 auto; padding: 1.6rem 1.5rem 4rem; background: var(--paper); color: var(--ink);
  max-width: calc(var(--measure) + var(--gutter) + var(--margin) + 3rem);
  font: 1rem/1.52 "Iowan Old Style", Charter, "Bitstream Charter", "Palatino Linotype", Palatino, Cambria, Georgia, "Liberation Serif", serif;
  font-variant-numeric: lining-nums tabular-nums; overflow-wrap: break-word; hanging-punctuation: first;
}
h1, h2, h3 { font-weight: 400; text-wrap: balance; margin: 0; max-width: var(--measure); overflow-wrap: anywhere; }
h2 { font-size: 1.65rem; line-height: 1.2; letter-spacing: -0.008em; margin-bottom: 1.1rem; }
h3 { font-size: 1.06rem; line-height: 1.3; font-style: italic; margin: 1.9rem 0 0.5rem; }
p { margin: 0 0 0.95rem; max-width: var(--measure); text-wrap: pretty; hyphens: manual; }
a { color: inherit; text-decoration-color: var(--rule); text-underline-offset: 0.18em; }
a:hover { text-decoration-color: currentColor; }
:focus-visible { outline: 2px solid var(--keep); outline-offset: 3px; }
section { margin-top: 3.4rem; padding-top: 1.5rem; border-top: 5px double var(--rule); }
section > :last-child, .block > :last-child { margin-bottom: 0; }
code, pre { font: 0.8em/1.45 ui-monospace, "Cascadia Mono", Menlo, "DejaVu Sans Mono", monospace; overflow-wrap: anywhere; }
pre { white-space: pre-wrap; unicode-bidi: isolate; margin: 0; padding: 0.8rem 0; }
small { font-size: 0.86em; color: var(--soft); }
ul.plain, ul.closed { margin: 0 0 1rem; padding: 0 0 0 1.1em; max-width: var(--measure); }
ul.plain li, ul.closed li { margin-bottom: 0.4rem; padding-left: 0.2em; }
ul.plain li::marker, ul.closed li::marker { content: "\\2013"; color: var(--rule); }
ul.plain li, ul.closed li { padding-left: 0.6em; }
details { max-width: var(--measure); margin-bottom: 0.5rem; }
.block + .block { margin-top: 1.9rem; }
.block > h3:first-child { margin-top: 0; }
summary { cursor: pointer; padding: 0.55rem 0; font-style: italic; color: var(--soft); min-height: 2.7rem; }
summary::marker { color: var(--rule); }
summary:hover { color: var(--ink); }
.key { display: inline-block; width: 1.5em; height: 0; margin-right: 0.5em; vertical-align: 0.28em; border-top: 3px solid var(--keep); }
.key.replace { border-top: 3px dashed var(--replace); }
.key.later, .key.like, .key.without { border-top: 3px dotted var(--rule); }
header p { margin: 0; font-variant-caps: all-small-caps; letter-spacing: 0.14em; font-size: 1.05rem; color: var(--soft); }
footer { margin-top: 3rem; padding-top: 0.6rem; border-top: 1px solid var(--rule); color: var(--soft); font-size: 0.86rem; }
`;
