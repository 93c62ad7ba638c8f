/**
 * Writes src/server/open-api/api-examples.ts: an example of every request and answer of the API, taken from the whole
 * application as it runs in the tests, with a clock that stands still and random ids replaced. Run with
 * `npx tsx scripts/api-examples.ts` whenever a line of the contract is new or answers otherwise.
 */
import { execFileSync } from "node:child_process"
import { writeFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import { makeExamples } from "../test/app/api-examples.js"

const target = fileURLToPath(new URL("../src/server/open-api/api-examples.ts", import.meta.url))
const { examples, missing } = await makeExamples()
const lines = [...examples]
  .toSorted(([a], [b]) => (a < b ? -1 : 1))
  .map(([name, example]) => `  ${name}: ${JSON.stringify(JSON.stringify(example))},`)
writeFileSync(
  target,
  [
    "/** One line of JSON for each line of the contract. Written by `npx tsx scripts/api-examples.ts`; not to be edited. */",
    "export const API_EXAMPLES: Readonly<Record<string, string>> = {",
    ...lines,
    "}",
    "",
  ].join("\n"),
)
execFileSync("npx", ["biome", "format", "--write", target], { stdio: "ignore" })
process.stdout.write(`${examples.size} examples written\n`)
for (const name of missing) process.stdout.write(`no example: ${name}\n`)
