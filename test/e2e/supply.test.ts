import { afterAll, beforeAll, describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

const LOT = "LQ-2610"

/** Two bottles of one lot: the first was finished on 20 November 2026, five days ago; the second nobody opened. */
const suppliedCourse: Course = {
  ...slowedCourse,
  treatments: [{ from: "2026-09-01", kind: "atropine", concentrationPercent: 0.05 }],
  consents: [{ date: "2026-09-01", covers: { kind: "atropine", concentrationPercent: 0.05 } }],
  supplies: [
    {
      dispensed: "2026-09-01",
      opened: "2026-09-01",
      beyondUse: "2026-09-30",
      concentrationPercent: 0.05,
      lot: "LQ-2609",
    },
    {
      dispensed: "2026-10-18",
      opened: "2026-10-21",
      beyondUse: "2026-11-20",
      concentrationPercent: 0.05,
      lot: LOT,
      pharmacy: "Linden Compounding",
    },
    { dispensed: "2026-11-20", concentrationPercent: 0.05, lot: LOT, pharmacy: "Linden Compounding" },
  ],
}

let app: App
let supplied = ""
let other = ""
beforeAll(async () => {
  app = await startApp()
  supplied = await app.addCourse({ name: "Noor Halvorsen", number: "E-2201", course: suppliedCourse })
  other = await app.addCourse({
    name: "Timo Brask",
    number: "E-2202",
    course: { ...suppliedCourse, supplies: (suppliedCourse.supplies ?? []).slice(1, 2) },
  })
})
afterAll(() => app?.close())

describe("the supply of a child", () => {
  it.each([1280, 768])(
    "answers first: the share with its definition, gaps, the next bottle, at %i px",
    async (width) => {
      const page = await app.open(`/children/${supplied}/supply`, { width })
      await page.getByRole("heading", { name: "Nights covered" }).waitFor()
      const text = await page.locator("main").textContent()
      expect(text).toMatch(/76 % of nights, poor coverage/)
      expect(text).toMatch(/65 of 85 nights had a bottle in date, 1 Sep 2026 to 24 Nov 2026/)
      expect(text).toMatch(/1 Oct 2026 to 20 Oct 2026: 20 nights/)
      expect(text).toMatch(/Proportion of days covered: days with an in-date opened bottle/)
      expect(text).toMatch(/By the protocol a bottle takes 14 days/)
      expect(text).toMatch(/nobody recorded when it was opened/)
      await page.getByRole("heading", { name: "Orders" }).waitFor()
      await expectAccessible(page)
      await picture(page, `supply-${width}`)
      await page.context().close()
    },
  )

  it("says on the course page that poor coverage may explain what is seen", async () => {
    const page = await app.open(`/children/${supplied}`)
    await page.getByText(/only 76 % of nights had a bottle in date/i).waitFor()
    await page.context().close()
  })

  it("names the other children with a lot, and leads to them", async () => {
    const page = await app.open(`/children/${supplied}/supply`)
    await page.getByRole("button", { name: LOT }).first().click()
    const dialog = page.getByRole("dialog", { name: `Lot ${LOT}` })
    await dialog.getByText("2 children had a bottle of this lot.").waitFor()
    await expectAccessible(page)
    await picture(page, "supply-lot")
    await dialog.getByRole("link", { name: "Timo Brask" }).click()
    await page.waitForURL(`**/children/${other}/supply`)
    await page.getByRole("heading", { name: "Timo Brask" }).waitFor()
    await page.context().close()
  })

  it("sorts the bottles by the day they were handed out", async () => {
    const page = await app.open(`/children/${supplied}/supply`)
    const days = () => page.locator(".bottles tbody th").allTextContents()
    await page.locator(".bottles").waitFor()
    expect(await days()).toEqual(["20 Nov 2026", "18 Oct 2026", "1 Sep 2026"])
    await page.getByRole("button", { name: /latest first/ }).click()
    expect(await days()).toEqual(["1 Sep 2026", "18 Oct 2026", "20 Nov 2026"])
    await page.context().close()
  })

  it("records the opening of a bottle, and the fault is gone", async () => {
    const page = await app.open(`/children/${supplied}/supply`)
    await page.getByRole("button", { name: "Record opening" }).click()
    const dialog = page.getByRole("dialog", { name: "Bottle opened" })
    await dialog.getByLabel("Opened").fill("2026-11-19")
    await dialog.getByRole("button", { name: "Record opening" }).click()
    await dialog.getByText("must be on or after the day it was dispensed").waitFor()
    await dialog.getByLabel("Opened").fill("2026-11-21")
    await dialog.getByRole("button", { name: "Record opening" }).click()
    await page.getByText("Recorded: bottle opened, 21 Nov 2026.").waitFor()
    expect(await page.getByText(/nobody recorded when it was opened/).count()).toBe(0)
    await page.context().close()
  })

  it("takes the missed nights that the family tells of off the covered ones", async () => {
    const page = await app.open(`/children/${supplied}/supply`)
    await page.getByRole("button", { name: "Missed nights told of" }).click()
    const dialog = page.getByRole("dialog", { name: "Missed nights" })
    await dialog.getByLabel("From").fill("2026-11-01")
    await dialog.getByLabel("To, included").fill("2026-11-10")
    await dialog.getByLabel("Nights without a drop").fill("11")
    await dialog.getByRole("button", { name: "Record missed nights" }).click()
    await dialog.getByText(/at most 10/).waitFor()
    await dialog.getByLabel("Nights without a drop").fill("4")
    await dialog.getByRole("button", { name: "Record missed nights" }).click()
    await page.getByText("Recorded: 4 missed nights, 1 Nov 2026 to 10 Nov 2026.").waitFor()
    await page.getByText("The family told of 4 missed nights: 72 % with those taken off.").waitFor()
    await page.context().close()
  })

  it("refuses a lot in a second strength with words for the person who holds the bottle", async () => {
    const page = await app.open(`/children/${supplied}/supply`)
    await page.getByRole("button", { name: "Bottle handed out" }).click()
    const dialog = page.getByRole("dialog", { name: "Bottle" })
    await dialog.getByLabel("Strength, % w/v").fill("0.01")
    await dialog.getByLabel("Lot").fill(LOT)
    await dialog.getByRole("button", { name: "Record bottle" }).click()
    await dialog.getByText(/One lot is one making: look at the label/).waitFor()
    await expectAccessible(page)
    await picture(page, "supply-bottle-faults")
    await page.context().close()
  })
})
