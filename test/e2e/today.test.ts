import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { concernCourse, slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let concerned = ""

beforeAll(async () => {
  app = await startApp()
  concerned = await app.addCourse({ name: "Mira Solberg", number: "T-1", course: concernCourse })
  const last = { ...slowedCourse.visits.at(-1), date: "2026-11-10" }
  const course = { ...slowedCourse, visits: [...slowedCourse.visits, last] }
  await app.addCourse({ name: "Ilse Varga", number: "T-2", course })
})
afterAll(() => app?.close())

describe("today", () => {
  it("puts concerns before everything else, and each row has one action", async () => {
    const page = await app.open("/today")
    const headings = page.locator(".owed-group h2")
    await headings.first().waitFor()
    expect(await headings.first().textContent()).toBe("Concern")
    const rows = page.locator(".owed")
    expect(await rows.count()).toBeGreaterThan(20)
    for (const row of await rows.all()) expect(await row.locator("[data-action]").count()).toBe(1)
    await page.context().close()
  })

  it("is filtered by role, and says how much is left", async () => {
    const page = await app.open("/today")
    await page.getByText(/things owed to/).waitFor()
    const all = await page.getByText(/things owed to/).textContent()
    await page.getByRole("link", { name: "Technician" }).click()
    await page.locator('a[aria-current="page"]', { hasText: "Technician" }).waitFor()
    await expect.poll(() => page.locator(".page-head [role=status]").textContent()).not.toBe(all)
    expect(new Set(await page.locator(".owed .block").allTextContents())).toEqual(new Set(["technician"]))
    await page.context().close()
  })

  it("is searched and worked by keyboard alone", async () => {
    const page = await app.open("/today")
    await page.locator(".owed").first().waitFor()
    await page.keyboard.press("/")
    await page.keyboard.type("Mira Solberg")
    await expect.poll(() => page.locator(".owed .name").allTextContents()).toContain("Mira Solberg")
    await expect.poll(async () => new Set(await page.locator(".owed .name").allTextContents()).size).toBe(1)
    await page.keyboard.press("ArrowDown")
    await page.keyboard.press("Enter")
    await expect.poll(() => page.url()).toContain(`/children/${concerned}/`)
    await page.context().close()
  })

  it("records in place that a family was told, and takes it back", async () => {
    const page = await app.open("/today?group=tell&search=T-2")
    await page.getByRole("button", { name: /^Mark explained: Ilse Varga/ }).click()
    await page.getByText("Recorded: results explained to the family of Ilse Varga.").waitFor()
    await expect.poll(() => page.locator(".owed").count()).toBe(0)
    await page.getByRole("button", { name: "Undo" }).click()
    await page.getByRole("button", { name: /^Mark explained: Ilse Varga/ }).waitFor()
    await page.context().close()
  })

  it.each([1280, 768])("has nothing for axe to find at %i px", async (width) => {
    const page = await app.open("/today", { width })
    await page.locator(".owed").first().waitFor()
    await expectAccessible(page)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
    await picture(page, `today-${width}`)
    await page.context().close()
  })
})
