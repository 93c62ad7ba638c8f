import react from "@vitejs/plugin-react"
import { defineConfig } from "vite"

/** The pages of src/web, built to dist/web, from where the server serves them. */
export default defineConfig({
  root: "src/web",
  plugins: [react()],
  build: {
    outDir: "../../dist/web",
    emptyOutDir: true,
    sourcemap: true,
    // What counts is the script of the first load after gzip, which test/e2e holds under 200 kB.
    chunkSizeWarningLimit: 700,
    // Every browser that runs these pages preloads modules by itself.
    modulePreload: { polyfill: false },
    rolldownOptions: {
      // The page behind a family's link is a program of its own, so that a phone loads nothing else.
      input: { index: "src/web/index.html", family: "src/web/family.html" },
      output: {
        codeSplitting: {
          // What nearly every page needs of the engine is one file: 30 small ones pack worse and come one by one.
          // What is said, alone: the family's page needs it and nothing else of the engine.
          groups: [
            { name: "say", test: /src[\\/]engine[\\/](say|message-format)\.ts/, priority: 1 },
            { name: "engine", test: /src[\\/](engine|evidence|chart)[\\/]/, minShareCount: 8 },
          ],
        },
      },
    },
  },
  server: { proxy: { "/api": "http://127.0.0.1:4173" } },
})
