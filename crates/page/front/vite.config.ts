import { defineConfig } from "vite";

// Names without hashes: the files are compiled into the program and change with it.
export default defineConfig({
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  build: {
    target: "es2022",
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    rollupOptions: {
      output: { entryFileNames: "app.js", chunkFileNames: "[name].js", assetFileNames: "[name][extname]" },
    },
  },
});
