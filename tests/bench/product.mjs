/** The product's own modules, bundled for Node into a folder of their own: what the benchmarks time is what ships. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

/**
 * @param {Readonly<Record<string, string>>} entries source files by a name of one's own
 * @returns {Promise<Record<string, any>>} their exports, by that name
 */
export const productModules = async (entries) => {
  const folder = mkdtempSync(join(tmpdir(), 'stillworth-bench-'));
  try {
    await build({
      logLevel: 'warn',
      build: {
        ssr: true,
        target: 'node20',
        outDir: folder,
        emptyOutDir: true,
        minify: false,
        license: false,
        rolldownOptions: {
          input: { ...entries },
          output: { entryFileNames: '[name].mjs', chunkFileNames: '[name].mjs' },
        },
      },
    });
    const modules = Object.keys(entries).map(async (name) => [
      name,
      await import(pathToFileURL(join(folder, `${name}.mjs`)).href),
    ]);
    return Object.fromEntries(await Promise.all(modules));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
