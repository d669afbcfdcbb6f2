import { defineConfig } from 'vite';

export default defineConfig({
  root: 'src',
  base: './',
  publicDir: '../public',
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022', modulePreload: { polyfill: false } },
  css: { modules: { localsConvention: 'camelCaseOnly' } },
});
