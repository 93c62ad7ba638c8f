import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { firstVisitCourse, slowedCourse, unequalCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
beforeAll(async () => {
  app = await startApp()
})
afterAll(() => app?.close())

async function openVisit(name: string, course: Course = slowedCourse): Promise<{ page: Page; id: string }> {
  const id = await app.addCourse({ name, course })
  const page = await app.open(`/children/${id}/visit`)
  await page.getByLabel("Length, right").waitFor()
  return { page, id }
}

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true })

/** Which item of the examination has the focus, by its id. */
const focusedEntry = (page: Page) =>
  page.evaluate(
    () => document.activeElement?.getAttribute("data-entry") ?? document.activeElement?.textContent,
  )

const question = (page: Page, words: string) => page.getByRole("group", { name: words, exact: true })

async function saveAnyway(page: Page): Promise<void> {
  await page.getByRole("button", { name: "Save visit" }).click()
  await page.getByRole("button", { name: "Save without these" }).click()
}

describe("a visit", () => {
  it("is entered with the keyboard alone, and the page then shows the new finding", async () => {
    const { page } = await openVisit("Ilse Varga")
    const type = async (text: string) => {
      await page.keyboard.type(text)
      await page.keyboard.press("Enter")
    }
    await expect.poll(() => focusedEntry(page)).toBe("flashes")
    // Five signs, three cautions, contact lenses, effects, fever: one key each, which moves on by itself.
    await page.keyboard.type("nnnnnnnnnnn")
    expect(await focusedEntry(page)).toBe("missed-drops")
    await type("0.5")
    await page.keyboard.type("n")
    await type("1.5")
    for (const grade of ["1", "0", "0", "0", "0", "0", "0"]) await type(grade)
    for (const text of ["0.0", "20/20", "0.1", "0.1", "4.6", "4.5", "6.1", "6.0", "11.5", "11.0"])
      await type(text)
    await type("24.03 24.02 24.02 24.01 24.03")
    await type("23.95 23.96 23.94 23.95 23.95")
    await type("y")
    await page.keyboard.type("ny")
    expect(await focusedEntry(page)).toBe("cycloplegia-timed")
    await type("35")
    await type("cyclopentolate 1 %, two drops")
    await type("-2.00 -0.50 x 175")
    await type("-1.75 -0.75 x 8")
    await page.keyboard.type("yyy")
    expect(await focusedEntry(page)).toBe("Save visit")
    await page.getByText("Nothing: all that is owed is entered.").waitFor()
    const aside = page.locator("aside")
    await aside.getByText(/mm per year over/).waitFor()
    const said = ((await aside.getByText(/mm per year over/).textContent()) ?? "")
      .split(" ")
      .slice(0, 4)
      .join(" ")
    await picture(page, "visit-filled-1280")
    await expectAccessible(page)
    await page.keyboard.press("Control+Enter")
    await page.getByText(/Visit of 25 Nov 2026 saved\. Growth now: /).waitFor()
    expect(await page.locator("aside").textContent()).toContain(said)
    await page.context().close()
  })

  it("says under each field what changed and what was expected", async () => {
    const { page } = await openVisit("Lea Okafor")
    await field(page, "Length, right").fill("24.03 24.02")
    await page
      .getByText(/24\.03 from 2 readings, spread 0\.01|24\.02 from 2 readings, spread 0\.01/)
      .waitFor()
    await page.getByText(/\+0\.0\d since 10 Mar 2026, expected/).waitFor()
    await page.context().close()
  })

  it("meets a lost decimal point, a missing axis and an axis of 190 at their fields, and saves nothing", async () => {
    const { page, id } = await openVisit("Nils Abadi")
    await field(page, "Length, right").fill("241")
    await field(page, "Length, left").fill("2.41")
    await field(page, "Refraction, right").fill("-2.00 -0.50")
    await field(page, "Refraction, left").fill("-2.00 -0.50 x 190")
    await page.getByRole("button", { name: "Save visit" }).click()
    await expect.poll(() => page.locator('input[aria-invalid="true"]').count()).toBe(4)
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label")))
      .toBe("Length, right")
    await picture(page, "visit-faults-1280")
    await expectAccessible(page)
    await page.goto(`${app.address}/children/${id}`)
    await page.getByText("10 y 6 m").first().waitFor()
    expect(await page.getByText("241").count()).toBe(0)
    await page.context().close()
  })

  it("looks again at a lost minus sign", async () => {
    const { page } = await openVisit("Dario Falk")
    await field(page, "Refraction, right").fill("+2.00 -0.50 x 175")
    await page
      .getByText(/is a sign lost\?/)
      .first()
      .waitFor()
    await page.context().close()
  })

  it("looks again at exchanged eyes, and puts them right at one stroke", async () => {
    const { page } = await openVisit("Wanja Oster", unequalCourse)
    await field(page, "Length, right").fill("23.45")
    await field(page, "Length, left").fill("24.03")
    await page.getByRole("button", { name: "exchange the lengths" }).click()
    expect(await field(page, "Length, right").inputValue()).toBe("24.03")
    await page.getByText("The eyes do not look exchanged.").waitFor()
    await page.context().close()
  })

  it("is stopped at its date when that day has a visit already, with the way to it and nothing lost", async () => {
    const { page, id } = await openVisit("Aiko Renner")
    await field(page, "Length, right").fill("24.03")
    await field(page, "Day of the visit").fill("2026-03-10")
    await page.getByText("this day has a visit already").waitFor()
    await page.getByRole("button", { name: "Save visit" }).click()
    expect(await field(page, "Length, right").inputValue()).toBe("24.03")
    await page.getByRole("link", { name: "correct that entry instead" }).click()
    await page.getByRole("heading", { name: "Aiko Renner, correct a visit" }).waitFor()
    expect(await field(page, "Length, right").inputValue()).toBe("23.96")
    await page.goto(`${app.address}/children/${id}/visit`)
    await field(page, "Length, right").waitFor()
    expect(await field(page, "Length, right").inputValue()).toBe("24.03")
    await page.context().close()
  })

  it.each([
    ["2026-11-26", "must not lie in the future"],
    ["2016-05-19", "must not lie before birth"],
  ])("is stopped at the day %s, and sends nothing", async (day, fault) => {
    const { page } = await openVisit("Ebba Noor")
    const sent: string[] = []
    page.on("request", (request) => {
      if (request.method() === "POST") sent.push(request.url())
    })
    await field(page, "Length, right").fill("24.03")
    await field(page, "Day of the visit").fill(day)
    await page.getByRole("button", { name: "Save visit" }).click()
    await page.getByText(fault).waitFor()
    await page.getByText("The day of the visit must be right first.").first().waitFor()
    await expect
      .poll(() => field(page, "Day of the visit").evaluate((input) => input === document.activeElement))
      .toBe(true)
    expect(sent).toEqual([])
    await page.context().close()
  })

  it("keeps what is not owed under one fold, which stays as it was left", async () => {
    const { page, id } = await openVisit("Mio Sandvik")
    expect(await page.getByLabel("Cornea, right").count()).toBe(0)
    await page.getByRole("button", { name: "More", exact: true }).click()
    await field(page, "Cornea, right").focus()
    await page.keyboard.type("7.70 7.85")
    await page.keyboard.press("Enter")
    await page.keyboard.type("7.9 7.7")
    await field(page, "Pressure, left").fill("15")
    await page.getByText("flat 7.85, steep 7.70 · AL/CR once the length is entered").waitFor()
    await field(page, "Length, right").fill("24.10")
    await page.getByText("flat 7.85, steep 7.70 · AL/CR 3.10").waitFor()
    await expectAccessible(page)
    await picture(page, "visit-more-1280")
    await saveAnyway(page)
    await page.getByText(/Visit of 25 Nov 2026 saved/).waitFor()
    await page.getByText(/^Record: /).click()
    await page.getByRole("link", { name: "correct the visit of 25 Nov 2026" }).click()
    await page.getByLabel("Cornea, right").waitFor()
    expect(await page.getByLabel("Cornea, right").inputValue()).toBe("7.85 7.7")
    expect(await page.getByLabel("Pressure, left").inputValue()).toBe("15")
    await page.goto(`${app.address}/children/${id}/visit`)
    await page.getByLabel("Cornea, right").waitFor()
    await page.context().close()
  })

  it("opens the fold for what cannot be right in it", async () => {
    const { page } = await openVisit("Juno Adler")
    await page.getByRole("button", { name: "More", exact: true }).click()
    await page.getByLabel("Cornea, left").fill("43.5 42")
    await page.getByRole("button", { name: "Less", exact: true }).click()
    await page.getByRole("button", { name: "Save visit" }).click()
    await page.getByText("must be a number from 5.5 to 10 mm, not 43.5").first().waitFor()
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label")))
      .toBe("Cornea, left")
    await page.context().close()
  })

  it("is kept on this computer until it is saved", async () => {
    const { page } = await openVisit("Edda Lind")
    await field(page, "Length, right").fill("24.03")
    await page.reload()
    await field(page, "Length, right").waitFor()
    expect(await field(page, "Length, right").inputValue()).toBe("24.03")
    await saveAnyway(page)
    await page.getByText(/Visit of 25 Nov 2026 saved/).waitFor()
    await page.getByRole("link", { name: "Enter visit" }).click()
    await field(page, "Length, right").waitFor()
    expect(await field(page, "Length, right").inputValue()).toBe("")
    await page.context().close()
  })

  it("asks for the log-in when the session has ended, and goes on with what was typed", async () => {
    const { page } = await openVisit("Ove Brink")
    await field(page, "Length, right").fill("24.03")
    await page.context().clearCookies()
    await saveAnyway(page)
    await page.getByLabel("Password").fill(app.logIn.password)
    await page.getByLabel("Name").fill(app.logIn.name)
    await page.keyboard.press("Enter")
    await field(page, "Length, right").waitFor()
    expect(await field(page, "Length, right").inputValue()).toBe("24.03")
    await page.context().close()
  })

  it("is corrected with a reason, and the record keeps both", async () => {
    const { page, id } = await openVisit("Sol Amari")
    await page.goto(`${app.address}/children/${id}`)
    await page.getByText(/^Record: /).click()
    await page.getByRole("link", { name: "correct the visit of 10 Mar 2026" }).click()
    await field(page, "Length, right").waitFor()
    expect(await field(page, "Length, right").inputValue()).toBe("23.96")
    await field(page, "Length, right").fill("23.94")
    await page.getByRole("button", { name: "Save visit" }).click()
    await page.getByText(/must be why it is corrected/).waitFor()
    await field(page, "Why is it corrected?").fill("misread")
    await page.getByRole("button", { name: "Save visit" }).click()
    await page.getByText(/Visit of 10 Mar 2026 corrected/).waitFor()
    await page.getByText(/^Record: /).click()
    await page.getByText("in force, corrects an entry: misread").waitFor()
    await page.context().close()
  })

  it("fits a narrow window", async () => {
    const { page, id } = await openVisit("Runa Holt")
    await page.context().close()
    const narrow = await app.open(`/children/${id}/visit`, { width: 768 })
    await field(narrow, "Length, right").fill("24.03 24.02 24.01")
    await field(narrow, "Refraction, left").fill("-1.75")
    await narrow.getByText(/mm per year over/).waitFor()
    await picture(narrow, "visit-filled-768")
    await expectAccessible(narrow)
    await narrow.context().close()
  })
})

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
