import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';

export default defineConfig({
  // Relative addresses: the built folder works on any host and under any sub-path.
  base: './',
  plugins: [preact()],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    // No data: addresses: the content security policy asks for files of our own.
    assetsInlineLimit: 0,
    // Every browser that runs the app knows modulepreload.
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        // What the first screen needs comes in one piece: each piece more holds the page up while it is asked for.
        codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] },
      },
    },
  },
});
