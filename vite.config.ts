import { defineConfig } from 'vite';

/**
 * Two entries, the command and the library, with everything they use bundled: whoever installs the package installs
 * nothing else, and a cold start reads few files. What a command does not need stays in chunks it never loads.
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
      input: { stillworth: 'src/terminal/stillworth.ts', index: 'src/index.ts' },
      output: { entryFileNames: '[name].js', chunkFileNames: 'chunks/[name].js' },
    },
  },
  ssr: { noExternal: true },
});
