import { readFileSync } from "node:fs"
import { afterAll, beforeAll, expect, it } from "vitest"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
beforeAll(async () => {
  app = await startApp()
})
afterAll(() => app.close())

it.each([1280, 768])(
  "the table for research warns, explains its columns and is handed over, at %i px",
  async (width) => {
    const page = await app.open("/settings/research", { width })
    await page.getByText(/could be recognised by who knows them/).click()
    expect(await page.getByRole("columnheader", { name: "Age at the first visit (years)" }).isVisible()).toBe(
      true,
    )
    await page.getByLabel("Search the columns").fill("spherical")
    expect(await page.getByRole("rowheader").allInnerTexts()).toEqual(["spherical_equivalent_d"])
    await expectAccessible(page)
    await picture(page, `research-${width}`)
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("link", { name: "Download the table" }).click(),
    ])
    const bytes = readFileSync(await download.path())
    expect(bytes.subarray(0, 2).toString()).toBe("PK")
  },
)
