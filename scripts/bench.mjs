/** `npm run bench`: builds what is stale, then runs every bench and prints its table. Ratios are taken within one run. */
import { spawnSync } from "node:child_process"
import { dirname, join } from "node:path"
import { fileURLToPath } from "node:url"

const root = join(dirname(fileURLToPath(import.meta.url)), "..")
for (const file of [
  "scripts/build.mjs",
  "bench/assess.mjs",
  "bench/dicom-parse.mjs",
  "bench/dicom-store.mjs",
  "bench/duties.mjs",
  "bench/fhir-export.mjs",
  "bench/page.mjs",
  "bench/report.mjs",
  "bench/table-import.mjs",
  "bench/today.mjs",
]) {
  const { status } = spawnSync(process.execPath, [join(root, file)], { cwd: root, stdio: "inherit" })
  if (status !== 0) process.exit(status ?? 1)
}
