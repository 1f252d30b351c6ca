/** The engine bundled for a browser, from this checkout or from another, wherever that keeps its files. */
import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';

const HERE = resolve(fileURLToPath(new URL('../../..', import.meta.url)));

/** Where a file stood before the ladder was drawn finer. @type {Readonly<Record<string, string>>} */
const EARLIER = {
  'src/engine/answer/atAverage.ts': 'src/engine/decision/atAverage.ts',
  'src/engine/answer/decide.ts': 'src/engine/decision/decide.ts',
  'src/engine/simulation/draws.ts': 'src/engine/decision/chance/draws.ts',
  'src/engine/scenario/inputs/lens.ts': 'src/engine/scenario/lens.ts',
  'src/engine/scenario/file/parse.ts': 'src/engine/scenario/parse.ts',
};

/** A file of this checkout as another has it. @type {(root: string, path: string) => string} */
export const placeIn = (root, path) => {
  const found = [path, EARLIER[path]].find((one) => one !== undefined && existsSync(join(root, one)));
  if (found === undefined) throw new Error(`${root} has no ${path}`);
  return join(root, found);
};

/** What the entries import of this checkout is taken from the other. @type {(root: string) => import('vite').Plugin} */
const takenFrom = (root) => ({
  name: 'taken-from-a-checkout',
  enforce: 'pre',
  resolveId: (source, importer) => {
    const path = importer && source.startsWith('.') && relative(HERE, join(dirname(importer), source));
    return path && importer.startsWith(import.meta.dirname) && path.startsWith('src/')
      ? placeIn(root, path.replaceAll('\\', '/'))
      : null;
  },
});

/** Every chart of the report, beside the engine. @type {(root: string) => string} */
const withCharts = (root) => {
  const charts = readdirSync(join(root, 'src/report/charts')).map((name) =>
    join(root, 'src/report/charts', name),
  );
  return charts.map((path, i) => `export * as chart${i} from ${JSON.stringify(path)};`).join('');
};

/**
 * One minified module.
 *
 * @param {string} root the checkout's
 * @param {'answer' | 'worker'} entry
 * @param {{ without?: readonly string[], charts?: boolean }} [setting] packages left out; with the report's charts
 */
export const bundled = async (root, entry, { without = [], charts = false } = {}) => {
  const file = join(import.meta.dirname, `${entry}.mjs`);
  const id = 'virtual:entry';
  const text = `export * from ${JSON.stringify(file)};${charts ? withCharts(root) : ''}`;
  const made = await build({
    root,
    configFile: false,
    logLevel: 'error',
    plugins: [
      takenFrom(root),
      {
        name: 'entry',
        resolveId: (source) => (source === id ? id : null),
        load: (source) => (source === id ? text : null),
      },
    ],
    build: {
      target: 'es2022',
      minify: true,
      write: false,
      modulePreload: false,
      rolldownOptions: {
        input: id,
        preserveEntrySignatures: 'strict',
        external: (source) => without.some((name) => source === name || source.startsWith(`${name}/`)),
        output: { format: 'es' },
      },
    },
  });
  const { output } = /** @type {{ output: { code?: string }[] }} */ (/** @type {unknown} */ (made));
  const [only, ...others] = output;
  if (others.length > 0 || only?.code === undefined) throw new Error(`${entry} is not one file`);
  return only.code;
};

/** Bytes as they stand and as they travel. @type {(code: string) => { minified: number, gzipped: number }} */
export const sizeOf = (code) => ({
  minified: Buffer.byteLength(code),
  gzipped: gzipSync(code, { level: 9 }).length,
});
