/**
 * What the ladder allows, and a checker that says where a set of sources breaks it. The checker knows nothing of
 * files: it is handed the sources, so that it can be shown broken ones.
 */

/** Sources by their path from the top of the project, with forward slashes. */
export type Sources = ReadonlyMap<string, string>;

export interface Rules {
  /** The rooms on each rung, from the lowest up; the longest prefix counts. A file imports only from its own rung or below. */
  readonly rungs: readonly (readonly string[])[];
  /** No rung may hold more than this share of all lines: a ladder orders nothing inside a rung. */
  readonly mostOfAll: number;
  /** Folders in which a file's name may stand once: two files of one name are taken for each other. */
  readonly namedOnce: readonly string[];
  /** Folders that may not import from each other although they stand on the same rung. */
  readonly apart: readonly (readonly [string, string])[];
  /** Package to the folders it may be imported in. A package that is not listed may be imported nowhere. */
  readonly homes: Readonly<Record<string, readonly string[]>>;
  /** The folder where files of data stand; each is read by one module, which gives it its type. */
  readonly facts: string;
  /** Folders that must be pure, with what may be in none of their files. */
  readonly pure: readonly string[];
  readonly longest: { readonly lines: number; readonly files: Readonly<Record<string, number>> };
}

interface Import {
  readonly from: string;
  readonly target: string;
}

const IMPORT = /\b(?:import|export)\s[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]|\bimport\s*\(?\s*['"]([^'"]+)['"]/g;

/** The code without its comments, and with the texts of strings kept: an import's target is one. */
const withoutComments = (source: string): string =>
  source.replace(
    /("(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g,
    (_, text?: string) => text ?? ' ',
  );

/** Every import of a file: of values and of types, static and at run time. */
export const importsOf = (path: string, source: string): readonly Import[] =>
  [...withoutComments(source).matchAll(IMPORT)].map((found) => ({
    from: path,
    target: resolve(path, found[1] ?? found[2] ?? ''),
  }));

/** A relative target as a path from the top; anything else stays as it is. */
const resolve = (from: string, target: string): string => {
  if (!target.startsWith('.')) return target;
  const parts = from.split('/').slice(0, -1);
  for (const part of target.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '.') parts.push(part);
  }
  return parts.join('/');
};

const isWithin = (path: string, folder: string): boolean => path === folder || path.startsWith(`${folder}/`);

const rungOf = (path: string, { rungs }: Rules): number | null => {
  const folder = rungs
    .flat()
    .filter((name) => isWithin(path, name))
    .sort((a, b) => b.length - a.length)[0];
  return folder === undefined ? null : rungs.findIndex((rooms) => rooms.includes(folder));
};

/** Files of data out of place, and those that nobody or several read. */
const strayFacts = (sources: Sources, imports: readonly Import[], { facts }: Rules): readonly string[] =>
  [...sources.keys()]
    .filter((path) => path.endsWith('.json'))
    .flatMap((path) => {
      if (!isWithin(path, facts)) return [`${path} is data, whose place is ${facts}`];
      const readers = imports.filter(({ target }) => target === path).map(({ from }) => from);
      return readers.length === 1 ? [] : [`${path} is read by ${readers.join(' and ') || 'nobody'}`];
    });

const linesOf = (source: string): number => source.replace(/\n$/, '').split('\n').length;

/** Rungs that hold too much of all lines, one line each. */
export const crowded = (sources: Sources, rules: Rules): readonly string[] => {
  const held = rules.rungs.map(() => 0);
  let all = 0;
  for (const [path, source] of sources) {
    const rung = rungOf(path, rules);
    const lines = linesOf(source);
    all += lines;
    if (rung !== null) held[rung] = (held[rung] as number) + lines;
  }
  return rules.rungs.flatMap((rooms, rung) => {
    const share = (held[rung] as number) / all;
    return share > rules.mostOfAll
      ? [
          `${rooms.join(' and ')}: ${Math.round(100 * share)} % of all lines; ${100 * rules.mostOfAll} % at most`,
        ]
      : [];
  });
};

/** Files whose name another has too, where names may stand once. */
const namesakes = (sources: Sources, { namedOnce }: Rules): readonly string[] =>
  namedOnce.flatMap((folder) => {
    const byName = new Map<string, string[]>();
    for (const path of sources.keys()) {
      if (!isWithin(path, folder)) continue;
      const name = path.slice(path.lastIndexOf('/') + 1);
      byName.set(name, [...(byName.get(name) ?? []), path]);
    }
    return [...byName.values()]
      .filter((paths) => paths.length > 1)
      .map((paths) => `one name for several files: ${paths.join(' and ')}`);
  });

const isPackage = (target: string, sources: Sources): boolean =>
  !target.startsWith('node:') &&
  !target.startsWith('src/') &&
  !sources.has(target) &&
  !target.endsWith('.json');

/**
 * What a pure module may not mention: the clock, chance, the process, the network. A page's document is a parameter's
 * name where it is handed in; as a global it has no type here, so the compiler refuses it.
 */
const IMPURE =
  /\b(Date\.now|new Date\(\)|Math\.random|performance\.now|fetch\s*\(|XMLHttpRequest|WebSocket|localStorage|crypto\.(?:getRandomValues|randomUUID))|(?<![\w.'"])(process|globalThis|window)\s*[.[]/;

/** Everything that breaks the rules, one line each; none is what is wanted. */
export const breaches = (sources: Sources, rules: Rules): readonly string[] => {
  const imports = [...sources].flatMap(([path, source]) => importsOf(path, source));
  const found: string[] = [];
  for (const path of sources.keys()) {
    if (rungOf(path, rules) === null) found.push(`${path} stands on no rung`);
  }
  for (const { from, target } of imports) {
    if (target.startsWith('src/')) {
      if (!sources.has(target)) found.push(`${from} imports ${target}, which is not there`);
      const [mine, theirs] = [rungOf(from, rules), rungOf(target, rules)];
      if (mine !== null && theirs !== null && theirs > mine) found.push(`${from} imports upwards: ${target}`);
      for (const [a, b] of rules.apart) {
        const crosses =
          (isWithin(from, a) && isWithin(target, b)) || (isWithin(from, b) && isWithin(target, a));
        if (crosses) found.push(`${from} imports from the other shell: ${target}`);
      }
    } else if (isPackage(target, sources)) {
      const name = /^(?:@[^/]+\/)?[^/]+/.exec(target)?.[0] ?? target;
      const homes = rules.homes[name];
      if (homes === undefined) found.push(`${from} imports ${target}, which has no home`);
      else if (!homes.some((home) => isWithin(from, home))) {
        found.push(`${from} imports ${target}, whose home is ${homes.join(' and ')}`);
      }
    }
    if (target.startsWith('node:') && rules.pure.some((folder) => isWithin(from, folder))) {
      found.push(`${from} is pure but imports ${target}`);
    }
  }
  for (const [path, source] of sources) {
    const mention = rules.pure.some((folder) => isWithin(path, folder)) && IMPURE.exec(withoutTexts(source));
    if (mention) found.push(`${path} is pure but mentions ${mention[0]}`);
    const lines = linesOf(source);
    const most = rules.longest.files[path] ?? rules.longest.lines;
    if (lines > most) found.push(`${path} has ${lines} lines; ${most} at most`);
  }
  return [
    ...found,
    ...strayFacts(sources, imports, rules),
    ...namesakes(sources, rules),
    ...cycles(sources.keys(), imports),
  ];
};

/** The code without comments and without the texts of plain strings: a word in a message is no use of it. */
const withoutTexts = (source: string): string =>
  withoutComments(source).replace(/"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'/g, "''");

/** Every ring of imports, told once, from its alphabetically first member. */
const cycles = (paths: Iterable<string>, imports: readonly Import[]): readonly string[] => {
  const next = new Map<string, string[]>();
  for (const { from, target } of imports) next.set(from, [...(next.get(from) ?? []), target]);
  const rings = new Set<string>();
  const done = new Set<string>();
  const walk = (path: string, trail: readonly string[]): void => {
    const start = trail.indexOf(path);
    if (start >= 0) {
      const ring = trail.slice(start);
      const first = ring.indexOf([...ring].sort()[0] ?? '');
      rings.add([...ring.slice(first), ...ring.slice(0, first)].join(' -> '));
      return;
    }
    if (done.has(path)) return;
    for (const target of next.get(path) ?? []) walk(target, [...trail, path]);
    done.add(path);
  };
  for (const path of paths) walk(path, []);
  return [...rings].map((ring) => `a ring of imports: ${ring}`);
};
