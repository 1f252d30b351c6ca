import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/**
 * Three entries, the command, its worker thread and the library, with everything they use bundled: whoever installs
 * the package installs nothing else, and a cold start reads few files. What a command does not need stays in chunks it
 * never loads.
 */
export default defineConfig({
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist',
    emptyOutDir: true,
    minify: true,
    // The names and terms of what is bundled, as their licences ask.
    license: { fileName: 'licences.md' },
    rolldownOptions: {
      input: {
        stillworth: 'src/terminal/stillworth.ts',
        worker: 'src/terminal/node/worker.ts',
        index: 'src/index.ts',
      },
      output: { entryFileNames: '[name].js', chunkFileNames: 'chunks/[name].js' },
    },
  },
  // The build of yaml for browsers is the same code as modules, not CommonJS: it bundles smaller and starts sooner.
  resolve: { alias: { yaml: fileURLToPath(new URL('node_modules/yaml/browser/index.js', import.meta.url)) } },
  ssr: { noExternal: true },
});
