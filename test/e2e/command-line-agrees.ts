import { execFile } from "node:child_process"
import { promisify } from "node:util"
import { expect } from "vitest"
import type { CalendarDate } from "../../src/engine/course.js"
import type { Child } from "./living.js"

const execute = promisify(execFile)

interface OwedJson {
  readonly owed: readonly {
    readonly child: { readonly id: string }
    readonly what: string
    readonly action: string
  }[]
}

/** Asks the command line of the same data folder, beside the running server: it says what Today says. */
export async function expectCommandLineAgrees(
  { app, page, id, name, number }: Child,
  day: CalendarDate,
): Promise<void> {
  const due = ["dist/cli/main.js", "due", app.dataFolder, "--as-of", day]
  const [json, text] = await Promise.all([execute("node", [...due, "--json"]), execute("node", due)])
  const { owed } = JSON.parse(json.stdout) as OwedJson
  const here = owed.filter(({ child }) => child.id === id).map(({ what }) => what)
  const said = text.stdout.replace(/\s+/g, " ")
  for (const what of here) expect(said).toContain(`${name} (${number}): ${what}, `)
  expect(said.split(`${name} (${number}): `).length - 1).toBe(here.length)

  const listed = await page
    .locator("main [data-action]")
    .evaluateAll((actions) => actions.map((action) => action.getAttribute("aria-label") ?? ""))
  expect(listed.map((label) => label.split(`: ${name}, `)[1])).toEqual(here)
  const children = new Set(owed.map(({ child }) => child.id)).size
  await page.goto(`${app.address}/today`)
  await page.getByText(`${owed.length} things owed to ${children} children`).waitFor()
  expect(said).toContain(`${owed.length} things owed among`)
}
