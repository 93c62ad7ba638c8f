import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import { expect } from "vitest"

const FOLDER = new URL("./output/", import.meta.url)

/**
 * Compares a figure with the committed one of that name. A changed figure is written beside it as NAME-changed.svg:
 * look at both, and when the new one is right move it over the old. A new name is written and fails once.
 */
export function expectFigure(name: string, svg: string): void {
  const committed = fileURLToPath(new URL(`${name}.svg`, FOLDER))
  const changed = fileURLToPath(new URL(`${name}-changed.svg`, FOLDER))
  if (existsSync(committed) && readFileSync(committed, "utf8") === svg) {
    rmSync(changed, { force: true })
    return
  }
  writeFileSync(changed, svg)
  expect.fail(`the figure ${name} differs from test/charts/output/${name}.svg; see ${name}-changed.svg`)
}
