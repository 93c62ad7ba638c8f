/**
 * `npm test`: sets up what is missing, then runs every check and prints `N passed, N failed` as its last line.
 * A check is a step such as the linter, or one test of the suites. Uses no package of its own.
 *
 *   npm test                 everything
 *   npm test -- --quick      without the long validations and the browser
 */
import { spawnSync } from "node:child_process"
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { dirname, join } from "node:path"
import { fileURLToPath } from "node:url"

const root = join(dirname(fileURLToPath(import.meta.url)), "..")
const quick = process.argv.includes("--quick")
const tool = (path) => join(root, "node_modules", path)
const results = join(mkdtempSync(join(tmpdir(), "lengthwise-test-")), "results.json")
const total = { passed: 0, failed: 0, skipped: 0 }

function run(name, command, args, env = {}) {
  console.log(`\n== ${name}`)
  const started = Date.now()
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
    env: { ...process.env, ...env },
  })
  console.log(`${status === 0 ? "ok" : "FAILED"}  ${name} (${((Date.now() - started) / 1000).toFixed(0)} s)`)
  return status === 0
}

/** A check that is one thing: it passes or fails as a whole. */
function step(name, script, args = []) {
  const passed = run(name, process.execPath, [script, ...args])
  total[passed ? "passed" : "failed"]++
  return passed
}

/** A suite counts each of its tests. One that ends without a report, or fails outside any test, is a failure too. */
function suite(name, project, env = {}) {
  rmSync(results, { force: true })
  const args = [
    "run",
    "--project",
    project,
    "--reporter=dot",
    "--reporter=json",
    `--outputFile.json=${results}`,
  ]
  const passed = run(name, process.execPath, [tool("vitest/vitest.mjs"), ...args], env)
  if (!existsSync(results)) {
    total.failed++
    return
  }
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests, testResults } = JSON.parse(
    readFileSync(results, "utf8"),
  )
  total.passed += numPassedTests
  total.failed += numFailedTests
  total.skipped += numPendingTests + numTodoTests
  if (!passed && numFailedTests === 0) total.failed++
  for (const file of testResults) {
    for (const test of file.assertionResults) {
      if (test.status === "failed") console.log(`FAILED  ${file.name.replace(root, ".")}: ${test.fullName}`)
    }
  }
}

function browser() {
  const known = [
    process.env.CHROME_PATH,
    // Debian's browser without a window starts in a third of the time.
    "/usr/bin/chromium-headless-shell",
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome",
  ]
  return known.find((path) => path && existsSync(path))
}

if (!step("set-up and build", join(root, "scripts/build.mjs"))) finish()
step("format and lint", tool("@biomejs/biome/bin/biome"), ["check", "--error-on-warnings", "."])
step("types of pages", tool("typescript/bin/tsc"), ["-p", "src/web"])
step("types of tests", tool("typescript/bin/tsc"), ["-p", "tsconfig.test.json"])
step("walls between folders", tool("dependency-cruiser/bin/dependency-cruise.mjs"), [
  "src",
  "--config",
  ".dependency-cruiser.cjs",
])
step("nothing unused", tool("knip/bin/knip.js"))
suite("unit, handbook and validation", "unit")
if (!quick) {
  suite("long validation in simulation", "long")
  const chrome = browser()
  if (chrome) suite("pages in a browser", "e2e", { CHROME_PATH: chrome })
  else {
    console.log("\nNo Chromium was found (set CHROME_PATH, or install it): the pages were NOT tested.")
    total.skipped++
  }
}
finish()

function finish() {
  const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : ""
  console.log(`\n${total.passed} passed, ${total.failed} failed${skipped}`)
  process.exit(total.failed > 0 ? 1 : 0)
}
