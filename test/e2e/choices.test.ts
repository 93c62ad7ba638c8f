import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { firstVisitCourse, slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let treated: string
let firstSeen: string
beforeAll(async () => {
  app = await startApp()
  treated = await app.addCourse({ name: "Choices Alder", course: slowedCourse })
  firstSeen = await app.addCourse({ name: "Choices Birch", course: firstVisitCourse })
})
afterAll(() => app?.close())

async function open(child: string, width = 1280) {
  const page = await app.open(`/children/${child}/choices`, { width })
  await page.getByRole("heading", { name: "Options side by side" }).waitFor()
  return page
}

describe("the options side by side", () => {
  it("stand in a fixed order with no option and no decision chosen in advance", async () => {
    const page = await open(treated)
    const names = await page.locator(".options thead th").allInnerTexts()
    expect(names.slice(0, 3)).toEqual(["Going on with atropine 0.05 %", "No treatment", "Atropine 0.01 %"])
    expect(names.at(-1)).toBe("Atropine 0.01 % with orthokeratology")
    expect(await page.getByLabel("Decision", { exact: true }).inputValue()).toBe("")
    expect(await page.locator(".options [aria-selected], .options [checked]").count()).toBe(0)
    await page.context().close()
  })

  it.each([1280, 768])(
    "have no fault that axe can find at %i px, and the page does not scroll sideways",
    async (width) => {
      const page = await open(treated, width)
      await picture(page, `choices-${width}`)
      await expectAccessible(page)
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width)
      await page.context().close()
    },
  )

  it("keep the names of the figures in view while the options scroll", async () => {
    const page = await open(treated, 768)
    const label = page.getByRole("rowheader", { name: /^Growth withheld/ })
    const before = await label.boundingBox()
    await page.locator(".options").evaluate((table) => table.parentElement?.scrollBy({ left: 900 }))
    const after = await label.boundingBox()
    expect(after?.x).toBeCloseTo(before?.x ?? Number.NaN, 0)
    await page.context().close()
  })

  it("may be fewer, and strong drops are shown when asked for", async () => {
    const page = await open(treated)
    await page.getByRole("button", { name: /^Shown: / }).click()
    await page.getByLabel("Orthokeratology", { exact: true }).uncheck()
    await page.getByLabel("Drops of 0.5 and 1 % as well").check()
    const names = await page.locator(".options thead th").allInnerTexts()
    expect(names).not.toContain("Orthokeratology")
    expect(names).toContain("Atropine 1 %")
    await page.context().close()
  })

  it("say why: the formula and the sources", async () => {
    const page = await open(treated)
    await page.getByRole("button", { name: "why? How these figures were found" }).click()
    const why = page.getByRole("dialog")
    await why
      .getByText(/share withheld x share of nights/)
      .first()
      .waitFor()
    expect(await why.getByText(/Chamberlain/).count()).toBeGreaterThan(0)
    await picture(page, "choices-why")
    await expectAccessible(page)
    await page.context().close()
  })
})

describe("a decision", () => {
  it("asks for a reason and keeps what was chosen", async () => {
    const page = await open(firstSeen)
    await page.getByLabel("Decision", { exact: true }).selectOption({ label: "Start a treatment" })
    await page.getByLabel("Treatment", { exact: true }).selectOption({ label: "Atropine 0.05 %" })
    await page.getByText("First day of atropine 0.05 %: 25 Nov 2026.").waitFor()
    await page.getByText(/bottles can be ordered once consent is given/).waitFor()
    await page.getByRole("button", { name: "Record decision" }).click()
    await page.getByText("must be why, in words").waitFor()
    expect(await page.getByLabel("Treatment", { exact: true }).inputValue()).toBe("atropine-0.05")
    await picture(page, "choices-decide")
    await expectAccessible(page)
    await page.context().close()
  })

  it("begins the treatment, and the record says it with the figures of that moment", async () => {
    const page = await open(firstSeen)
    await page.getByLabel("Decision", { exact: true }).selectOption({ label: "Start a treatment" })
    await page.getByLabel("Treatment", { exact: true }).selectOption({ label: "Atropine 0.05 %" })
    await page.getByRole("textbox", { name: "Why" }).fill("Fast growth in the family; they wish to start.")
    await page.getByRole("button", { name: "Record decision" }).click()
    await page.getByText("Recorded: decision of 25 Nov 2026, start a treatment.").waitFor()
    const names = await page.locator(".options thead th").allInnerTexts()
    expect(names[0]).toBe("Going on with atropine 0.05 %")
    await page.getByRole("link", { name: "Course", exact: true }).click()
    await page.getByText(/^Record: /).click()
    await page.getByLabel("Kind").selectOption("decision")
    await page.getByText(/Start a treatment, atropine 0.05 %, because: Fast growth in the family/).waitFor()
    await page.getByRole("button", { name: "what was shown then" }).click()
    const shown = page.getByRole("dialog")
    await shown
      .getByRole("rowheader", { name: "Atropine 0.05 %: growth withheld in the next year" })
      .waitFor()
    await picture(page, "choices-record")
    await expectAccessible(page)
    await page.context().close()
  })

  it("of another strength ends the one and begins the other", async () => {
    const page = await open(treated)
    await page.getByLabel("Decision", { exact: true }).selectOption({ label: "Change the strength" })
    await page.getByLabel("Treatment", { exact: true }).selectOption({ label: "Atropine 0.025 %" })
    await page.getByText("First day without atropine 0.05 %: 25 Nov 2026.").waitFor()
    await page.getByRole("textbox", { name: "Why" }).fill("Glare at school.")
    await page.getByRole("button", { name: "Record decision" }).click()
    await page.getByText(/^Recorded: decision of 25 Nov 2026, change the strength/).waitFor()
    const names = await page.locator(".options thead th").allInnerTexts()
    expect(names[0]).toBe("Going on with atropine 0.025 %")
    await page.context().close()
  })
})

it("results are marked as explained to the family by one press", async () => {
  const id = await app.addCourse({ name: "Choices Cedar", course: slowedCourse })
  const page = await app.open(`/children/${id}`)
  await page.getByRole("button", { name: "Explained to the family" }).click()
  await page.getByText("Explained to the family on 25 Nov 2026.").waitFor()
  await page.context().close()
})

it("the record is searched by its words, and fits a narrow page", async () => {
  const page = await app.open(`/children/${treated}`, { width: 768 })
  await page.getByText(/^Record: /).click()
  await page.getByLabel("Find").fill("10 mar 2026")
  await page.getByText(/Right 23.96 mm/).waitFor()
  expect(await page.locator(".entries tbody tr").count()).toBe(1)
  await picture(page, "record-768")
  await expectAccessible(page)
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(768)
  await page.context().close()
})
