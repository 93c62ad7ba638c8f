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
  },
  server: { proxy: { "/api": "http://127.0.0.1:4173" } },
})
