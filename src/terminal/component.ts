import { nearest } from '../engine/scenario/text/nearest.ts';

/** What a repair is called that no component stands for. */
const UNNAMED = ['anything else', 'other'];

/**
 * The component that was meant: its name in any letters, or the beginning of one name only; null stands for a repair
 * nobody named. What is none, or more than one, is `told` in words with every name there is.
 *
 * @param renamed private names, each with the one that is shown: a component is known by either, and told by the latter
 */
export const meantComponent = (
  typed: string,
  names: readonly string[],
  renamed: ReadonlyMap<string, string> = new Map(),
): { readonly name: string | null } | { readonly told: string } => {
  const asked = plain(typed);
  const spoken = (name: string): string[] => [
    plain(name),
    ...[...renamed].filter(([, shown]) => shown === name).map(([hidden]) => plain(hidden)),
  ];
  const known = [...new Set(names)];
  const exact = known.find((name) => spoken(name).includes(asked));
  if (exact !== undefined) return { name: exact };
  if (UNNAMED.includes(asked)) return { name: null };
  const begun = [...known, ...UNNAMED].filter(
    (name) => asked !== '' && spoken(name).some((one) => one.startsWith(asked)),
  );
  const [only] = begun;
  if (only !== undefined && begun.length === 1) return { name: UNNAMED.includes(only) ? null : only };
  const list = `There ${known.length === 1 ? 'is' : 'are'} ${[...known.map(quoted), `"${UNNAMED[0]}"`].join(', ')}.`;
  if (begun.length > 1) return { told: `"${typed}" may be ${begun.map(quoted).join(' or ')}.` };
  const close = nearest(typed, [...known, ...UNNAMED]);
  return {
    told: [
      `The scenario has no component "${typed}".`,
      close === null ? '' : ` Did you mean "${close}"?`,
      known.length === 0 ? ` It names none: say "${UNNAMED[0]}".` : ` ${list}`,
    ].join(''),
  };
};

const quoted = (name: string): string => `"${name}"`;

/** Letters' size, hyphens, underscores and the number of spaces make no difference. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ')
    .trim();
