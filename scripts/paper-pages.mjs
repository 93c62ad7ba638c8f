/**
 * Draws the pages of test/report/pages anew, after a paper was changed on purpose. Look at every one before it is
 * committed. Needs pdftoppm of poppler-utils.
 */
import { spawnSync } from "node:child_process"
import { dirname, join } from "node:path"
import { fileURLToPath } from "node:url"

const root = join(dirname(fileURLToPath(import.meta.url)), "..")
const vitest = join(root, "node_modules/vitest/vitest.mjs")
const { status } = spawnSync(
  process.execPath,
  [vitest, "run", "--project", "unit", "test/report/pages.test.ts"],
  { cwd: root, stdio: "inherit", env: { ...process.env, LENGTHWISE_RENEW_PAGES: "1" } },
)
process.exit(status ?? 1)
