import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { firstVisitCourse, slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
beforeAll(async () => {
  app = await startApp()
})
afterAll(() => app?.close())

describe("a change of treatment", () => {
  const openChange = async (name: string, course: Course = slowedCourse) => {
    const id = await app.addCourse({ name, course })
    const page = await app.open(`/children/${id}`)
    await page.getByRole("button", { name: /^Enter ▾|^Enter$/ }).click()
    await page.getByRole("button", { name: "Change of a treatment" }).click()
    await page.getByRole("dialog", { name: "Change of a treatment" }).waitFor()
    return page
  }
  const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent ?? "")

  it("is one request, after which the new strength goes on", async () => {
    const page = await openChange("Ravi Lund")
    const sent: string[] = []
    page.on("request", (request) => {
      if (request.method() === "POST") sent.push(new URL(request.url()).pathname.split("/").at(-1) ?? "")
    })
    await page.getByRole("button", { name: "Record change" }).click()
    await page.getByText(/must be .*% w\/v/).waitFor()
    await expect
      .poll(() => page.getByLabel("Strength, % w/v").evaluate((input) => input === document.activeElement))
      .toBe(true)
    await picture(page, "change")
    await expectAccessible(page)
    await page.getByLabel("Strength, % w/v").fill("0,1")
    await page.getByRole("button", { name: "Record change" }).click()
    await page.getByText("Recorded: atropine 0.1 % in place of atropine 0.05 % from 25 Nov 2026.").waitFor()
    expect(sent).toEqual(["change", "change"])
    await page.getByText(/· atropine 0\.1 %, month 0 ·/).waitFor()
    expect(await focused(page)).toContain("Enter")
    await page.context().close()
  })

  it("on a day before the old one began is refused at its day, and nothing is recorded", async () => {
    const page = await openChange("Tove Haas")
    await page.getByLabel("Strength, % w/v").fill("0.1")
    await page.getByLabel("First day").fill("2025-03-18")
    await page.getByRole("button", { name: "Record change" }).click()
    await page.getByText("must be after the day it starts (18 Mar 2025)").waitFor()
    await page.keyboard.press("Escape")
    await page.getByText(/· atropine 0\.05 %, month 20 ·/).waitFor()
    await page.context().close()
  })

  it("without a running treatment says what to enter instead", async () => {
    const page = await openChange("Lio Brand", firstVisitCourse)
    await page.getByText("No treatment is running. Enter the start of one instead.").waitFor()
    await page.context().close()
  })
})

describe("while something is read", () => {
  it("says so after a moment, and never shows a blank page", async () => {
    const id = await app.addCourse({ name: "Ida Quist", course: firstVisitCourse })
    const page = await app.open("/children")
    await page.getByRole("heading", { name: "Children" }).waitFor()
    await page.route(`**/api/children/${id}`, async (route) => {
      await new Promise((done) => setTimeout(done, 1500))
      await route.continue()
    })
    await page.goto(`${app.address}/children/${id}`)
    await page.getByRole("status").getByText("Reading the child’s record …").waitFor()
    await page.getByRole("heading", { name: "Ida Quist" }).waitFor()
    expect(await page.getByText(/^Reading/).count()).toBe(0)
    await page.context().close()
  })

  it("says of a slow list that it is read, with the list of before still there", async () => {
    const page = await app.open("/children")
    await page.getByRole("table").waitFor()
    await page.route("**/api/children?search=E*", async (route) => {
      await new Promise((done) => setTimeout(done, 1500))
      await route.continue()
    })
    await page.getByRole("searchbox").fill("E")
    await page.getByRole("status").getByText("Reading the list …").waitFor()
    expect(await page.getByRole("row").count()).toBeGreaterThan(1)
    await page.getByText(/children found/).waitFor()
    await page.context().close()
  })
})

describe("names of every kind", () => {
  const name = `ליאת <b>"Ann" & אבו</b> `
  it.each([1280, 768])("stand as they were typed and fit the page at %i px", async (width) => {
    for (const given of [`${name}${width}`, "Wolfeschlegelsteinhausen".repeat(9).slice(0, 200)]) {
      const id = await app.addCourse({ name: given, course: firstVisitCourse })
      for (const path of [`/children/${id}`, `/children/${id}/visit`, "/children?search=%3Cb%3E"]) {
        const page = await app.open(path, { width })
        await page.getByText(given.trim()).first().waitFor()
        await page.waitForLoadState("networkidle")
        const scroll = await page.evaluate(() => document.documentElement.scrollWidth)
        expect(scroll, path).toBeLessThanOrEqual(width)
        await page.context().close()
        if (!given.includes("<b>")) break
      }
    }
  })
})
