/** Edits (insert, delete, replace, swap of neighbours) that turn `a` into `b`: optimal string alignment. */
const distance = (a: string, b: string): number => {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, (before[j - 2] ?? 0) + 1);
      row.push(best);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
};

/** The candidate a reader most likely meant, or null when none is near (over two fifths of its letters differ). */
export const nearest = (word: string, candidates: readonly string[]): string | null => {
  const asked = word.slice(0, 60).toLowerCase().replaceAll(/[\s-]/g, '_');
  const ranked = candidates
    .map((candidate) => ({ candidate, edits: distance(asked, candidate) }))
    .sort((a, b) => a.edits - b.edits);
  const best = ranked[0];
  if (!best) return null;
  const limit = Math.max(1, Math.floor(Math.max(asked.length, best.candidate.length) * 0.4));
  if (best.edits <= limit) return best.candidate;
  return candidates.find((c) => asked.length > 3 && (c.startsWith(asked) || asked.startsWith(c))) ?? null;
};
