/** A figure states its finding above, then shows it; a phone gets its own drawing. */
export const figures = `
figure { margin: 1.6rem 0 1.7rem; max-width: var(--measure); }
figcaption { margin-bottom: 0.8rem; line-height: 1.35; }
figcaption b { display: block; font-weight: 600; }
figcaption span { display: block; font-size: 0.84rem; color: var(--soft); margin-top: 0.15rem; }
figure svg { display: block; width: 100%; height: auto; overflow: visible; font: 14.5px/1 "Iowan Old Style", Charter, "Bitstream Charter", "Palatino Linotype", Palatino, Cambria, Georgia, "Liberation Serif", serif; font-variant-numeric: lining-nums tabular-nums; }
figure svg text { white-space: pre; }
.narrow { display: none; max-width: 26rem; }
figure details { margin-top: 0.3rem; }
@media (max-width: 36rem) { figure svg { font-size: 13.5px; } .wide { display: none; } .narrow { display: block; } }
`;
