import { afterAll, beforeAll, describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { firstVisitCourse, slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"
import { field, focusedEntry, openVisit as openVisitIn, question, saveAnyway } from "./visit-steps.js"

let app: App
beforeAll(async () => {
  app = await startApp()
})
afterAll(() => app?.close())

const openVisit = (name: string, course: Course = slowedCourse) => openVisitIn(app, { name, course })

describe("what an examination owes", () => {
  it("is the baseline of a child who was never here, with the cautions before atropine", async () => {
    const { page } = await openVisit("Pia Sommer", { ...firstVisitCourse, visits: [] })
    expect(await field(page, "Examination").locator("option:checked").textContent()).toBe("Baseline")
    await question(page, "Has your child Down syndrome?").waitFor()
    await question(page, "Narrow angle or shallow chamber?").waitFor()
    await page.getByText("35 entries").waitFor()
    await picture(page, "visit-baseline-1280")
    await expectAccessible(page)
    await page.context().close()
  })

  it("is what the stage chosen by hand owes", async () => {
    const { page } = await openVisit("Enno Falk")
    await field(page, "Examination").selectOption("extra")
    await page.getByRole("heading", { name: "Still missing for the extra visit" }).waitFor()
    await page.getByText("5 entries").waitFor()
    expect(await page.getByLabel("Length, right").count()).toBe(0)
    await field(page, "Examination").selectOption("discharge")
    await question(page, "Agreed on checks after the programme ends?").waitFor()
    await page.context().close()
  })

  it("says at once that a sign needs care the same day", async () => {
    const { page } = await openVisit("Ylva Storm")
    await page.keyboard.type("y")
    const alert = page.getByRole("alert").filter({ hasText: "Care the same day: flashes." })
    await alert.waitFor()
    expect(await focusedEntry(page)).toBe("flashes")
    await page.keyboard.type("since Monday")
    await page.keyboard.press("Enter")
    await page.keyboard.type("-")
    await picture(page, "visit-sign-1280")
    await expectAccessible(page)
    await saveAnyway(page)
    await page.getByText(/Visit of 25 Nov 2026 saved/).waitFor()
    await page
      .getByText(/Same-day care/)
      .first()
      .waitFor()
    await page.context().close()
  })

  it("is named where it is missing before the visit is saved, and the visit can be saved all the same", async () => {
    const { page } = await openVisit("Arne Bley")
    await field(page, "Examination").selectOption("extra")
    await page.getByRole("button", { name: "All no", exact: true }).click()
    await page.getByText("Nothing: all that is owed is entered.").waitFor()
    await question(page, "New floating spots?").getByLabel("left out").check()
    await field(page, "Note: floaters").fill("asleep on the arm")
    await field(page, "Examination").selectOption("owed")
    await field(page, "Length, right").fill("24.03")
    await page.keyboard.press("Control+Enter")
    await page.getByRole("alert").filter({ hasText: "Not entered: Heart condition, " }).waitFor()
    await expect.poll(() => focusedEntry(page)).toBe("Save without these")
    await page.getByRole("button", { name: "Go to the first" }).click()
    expect(await focusedEntry(page)).toBe("heart-condition")
    await page.getByRole("button", { name: "axial length (left eye)" }).click()
    expect(await focusedEntry(page)).toBe("axial-length")
    await page.keyboard.press("Control+Enter")
    await page.keyboard.press("Control+Enter")
    await page.getByText(/Visit of 25 Nov 2026 saved/).waitFor()
    await page.getByText(/^Record: /).click()
    await page.getByRole("link", { name: "correct the visit of 25 Nov 2026" }).click()
    await field(page, "Note: floaters").waitFor()
    expect(await field(page, "Note: floaters").inputValue()).toBe("asleep on the arm")
    await page.context().close()
  })

  it("meets a value that cannot be at its question", async () => {
    const { page } = await openVisit("Tilo Krans")
    const missed = field(page, "How many drops are missed? nights a week")
    await missed.fill("9")
    await page.getByRole("button", { name: "Save visit" }).click()
    await page.getByText("must be a number from 0 to 7, in nights a week, not 9").first().waitFor()
    await expect.poll(() => focusedEntry(page)).toBe("missed-drops")
    await page.context().close()
  })

  it("grows by what the practice switches on, which says what was read for it", async () => {
    const settings = await app.open("/settings/examinations")
    await settings.getByText("Asked first at the baseline").waitFor()
    const pressure = settings.getByLabel(/^Intraocular pressure baseline/)
    expect(await pressure.isChecked()).toBe(false)
    await settings
      .getByText("Measure intraocular pressure before atropine and repeat it on treatment.")
      .waitFor()
    await pressure.check()
    await picture(settings, "settings-examinations-1280")
    await expectAccessible(settings)
    await settings.getByRole("button", { name: "Record switches" }).click()
    await settings.getByText("Recorded: CD-028 on.").waitFor()
    await settings.context().close()
    const { page } = await openVisit("Bo Winter", { ...firstVisitCourse, visits: [] })
    await field(page, "Pressure, right").waitFor()
    await page.getByText("36 entries").waitFor()
    await page.getByText("Why these are asked").click()
    await page.getByRole("row", { name: "Intraocular pressure CD-028 (read in part)" }).waitFor()
    await page.context().close()
  })
})

describe("a child before myopia", () => {
  it.each([1280, 768])(
    "has its own card, with figures that were read and what is not said, at %i px",
    async (width) => {
      const eye = { axialLength: { mm: 23.6 }, refraction: { sphere: 0.5, cycloplegic: true } }
      const course: Course = {
        lengthwise: 1,
        child: { born: "2018-03-01", sex: "female", myopicParents: 1 },
        visits: [{ date: "2026-07-20", right: eye, left: eye }],
      }
      const id = await app.addCourse({ name: `Nora Quill ${width}`, course })
      const page = await app.open(`/children/${id}`, { width })
      await page.getByRole("heading", { name: "Before myopia" }).waitFor()
      await page.getByText("Not myopic; past 2 of 2 cut-offs for becoming so").waitFor()
      await page.getByText(/the study's own text was not read/).waitFor()
      await page.getByText(/No trial of a treatment was read/).waitFor()
      await page.getByText("About 2 hours outdoors a day (CD-100)").click()
      await picture(page, `before-myopia-${width}`)
      await expectAccessible(page)
      await page.context().close()
    },
  )

  it("has no card once it is myopic", async () => {
    const id = await app.addCourse({ name: "Ada Quill", course: firstVisitCourse })
    const page = await app.open(`/children/${id}`)
    await page.getByRole("heading", { name: "Next duty" }).waitFor()
    await page.waitForLoadState("networkidle")
    expect(await page.getByRole("heading", { name: "Before myopia" }).count()).toBe(0)
    await page.context().close()
  })
})
