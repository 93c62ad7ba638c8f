import react from "@vitejs/plugin-react"
import { defineConfig } from "vite"

/** What the bundler tells of a module while it cuts the program into files. */
interface ModuleGraph {
  readonly getModuleInfo: (id: string) => { readonly importedIds: readonly string[] } | null
}

/** Named by an index of which the first load needs other lines only. */
const FOR_LATER = /evidence[\\/](generated[\\/])?citations\.ts/

/** The modules that a page needs before anything is drawn: whatever is reached from its script without a later import. */
function neededAtFirst(graph: ModuleGraph, script: RegExp, known: readonly string[]): Set<string> {
  const needed = new Set(known.filter((id) => script.test(id)))
  for (const id of needed)
    for (const imported of graph.getModuleInfo(id)?.importedIds ?? []) needed.add(imported)
  return needed
}

/**
 * The pages of src/web, built to dist/web, from where the server serves them. With `--mode family` the page behind a
 * family's link: a program of its own, so that a phone loads nothing else.
 */
export default defineConfig(({ mode }) => {
  const isFamily = mode === "family"
  const seen = new Set<string>()
  let first: Set<string> | null = null
  return {
    root: "src/web",
    plugins: [
      react(),
      {
        name: "modules-seen",
        moduleParsed({ id }: { id: string }) {
          seen.add(id)
        },
      },
    ],
    build: {
      outDir: "../../dist/web",
      // The practice's pages are built first.
      emptyOutDir: !isFamily,
      sourcemap: true,
      // What counts is the script of the first load after gzip, which test/e2e holds under 200 kB.
      chunkSizeWarningLimit: 900,
      // Every browser that runs these pages preloads modules by itself.
      modulePreload: { polyfill: false },
      rolldownOptions: {
        input: isFamily ? "src/web/family.html" : "src/web/index.html",
        output: {
          codeSplitting: {
            includeDependenciesRecursively: false,
            // All of the first load in one file: forty small ones pack worse and come one by one.
            groups: [
              {
                debugName: "first",
                name: (id: string, graph: ModuleGraph) => {
                  first ??= neededAtFirst(graph, /src[\\/]web[\\/](family[\\/]family-)?main\.tsx/, [...seen])
                  return first.has(id) && !FOR_LATER.test(id) ? "first" : null
                },
              },
            ],
          },
        },
      },
    },
    server: { proxy: { "/api": "http://127.0.0.1:4173" } },
  }
})
