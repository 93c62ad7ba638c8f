import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let child = ""

beforeAll(async () => {
  app = await startApp()
  child = await app.addCourse({ name: "Ilse Varga", number: "E-1042", course: slowedCourse })
})
afterAll(() => app?.close())

const AMOUNTS = [
  ["Review", "examination", "review", "60"],
  ["Length measurement", "measurement", "axial-length", "35,50"],
  ["Bottle", "bottle", "", "39.00"],
] as const

describe("fees and cost", () => {
  it("are entered as a table, with every fault at its field first, and then price the coming months", async () => {
    const page = await app.open("/settings/fees")
    const record = page.getByRole("button", { name: "Record the schedule" })
    // A copy of the demo practice's schedule, emptied.
    await page.getByRole("button", { name: "New schedule from a day" }).click()
    await page.getByLabel("Title").fill("")
    await page.getByLabel("In force from").fill("")
    await page.getByRole("button", { name: "Add a fee" }).click()
    await record.click()
    await page.getByText(/to be put right below/).waitFor()
    expect(await page.locator(".field-fault").count()).toBeGreaterThan(2)
    await page.getByLabel("Title").fill("Fees of the test")
    await page.getByLabel("In force from").fill("2026-06-01")
    await page.getByLabel("Currency").selectOption("EUR")
    for (const remove of (await page.getByRole("button", { name: /^remove fee/ }).all()).toReversed())
      await remove.click()
    for (const [index, [title, kind, which, amount]] of AMOUNTS.entries()) {
      const fee = `fee ${index + 1}`
      await page.getByRole("button", { name: "Add a fee" }).click()
      await page.getByLabel(`Fee, ${fee}`).fill(title)
      await page.getByLabel(`Charged for, ${fee}`).selectOption({ label: kind })
      if (kind === "examination") {
        for (const label of [which, "after the stop"])
          await page
            .getByRole("row")
            .nth(index + 1)
            .getByLabel(label, { exact: true })
            .check()
      }
      if (kind === "measurement") await page.getByLabel(`Which measurement, ${fee}`).selectOption(which)
      await page.getByLabel(`Amount, ${fee}`).fill(amount)
      await page
        .getByLabel(`Covered?, ${fee}`)
        .selectOption(kind === "examination" ? "covered" : "not-covered")
    }
    await page
      .getByRole("cell", { name: /1-month check|baseline/ })
      .first()
      .waitFor()
    await record.click()
    await page.getByText("Recorded: Fees of the test, in force from 1 Jun 2026.").waitFor()
    await page.context().close()

    const cost = await app.open(`/children/${child}/cost`)
    await cost.getByRole("heading", { name: "Still to come in 30 months" }).waitFor()
    const table = cost.getByRole("table", { name: /By date, in EUR/ })
    await table
      .getByText(/bottles of atropine 0.05 %/)
      .first()
      .waitFor()
    // The 24-month review and the stop in March, then the check after it, then observation.
    await table.getByText("Check 6 months after the stop").waitFor()
    expect(await table.getByText("35.50").count()).toBeGreaterThan(2)
    await cost.context().close()
  })

  it("are set beside what was paid, and an amount that could mean two things is refused", async () => {
    const page = await app.open(`/children/${child}/cost`)
    await page.getByLabel("Amount, EUR").fill("1.234")
    await page.getByRole("button", { name: "Record payment" }).click()
    await page.getByText("must be an amount with at most 2 decimals, such as 45.00").waitFor()
    await page.getByLabel("Amount, EUR").fill("35,50")
    await page.getByLabel("For", { exact: true }).fill("length")
    await page.getByRole("button", { name: "Record payment" }).click()
    await page.getByText("Recorded: payment of 35.50 EUR on 25 Nov 2026.").waitFor()
    expect(await page.locator(".sum").textContent()).toBe("35.50 EUR")
    expect(await page.getByLabel("Amount, EUR").inputValue()).toBe("")
    await page.context().close()
  })

  it("can be planned for another option, which names what has no fee", async () => {
    const page = await app.open(`/children/${child}/cost`)
    await page.getByLabel("Plan for").selectOption({ label: "Orthokeratology" })
    await page
      .locator(".cost-part")
      .getByText(/the fee schedule does not name it: .*orthokeratology/)
      .waitFor()
    await page.context().close()
  })

  it("print as one sheet with practice, child, day and what is taken for granted", async () => {
    const page = await app.open(`/children/${child}/cost`)
    await page.getByRole("heading", { name: "Taken for granted" }).waitFor()
    await page.emulateMedia({ media: "print" })
    const sheet = page.locator(".estimate-sheet")
    await sheet.waitFor()
    for (const words of [
      "Estimate of costs",
      "For Ilse Varga, born 20 May 2016.",
      "This is an estimate made on 25 Nov 2026, not an invoice.",
      "Taken for granted",
    ])
      expect(await sheet.textContent()).toContain(words)
    expect(await page.getByRole("button", { name: "Record payment" }).isVisible()).toBe(false)
    const pdf = await page.pdf({ format: "A4" })
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1)
    await picture(page, "estimate-print")
    await page.context().close()
  })

  it("are read in Spanish, with the same figures", async () => {
    const page = await app.open(`/children/${child}/cost`)
    await page.getByRole("heading", { name: "Still to come in 30 months" }).waitFor()
    /** The amounts as digits alone. */
    const sums = async () =>
      (await page.locator(".cost-part .three-sums dd").allTextContents()).map((sum) => sum.replace(/\D/g, ""))
    const inEnglish = await sums()
    expect(inEnglish).toHaveLength(3)
    await page.evaluate(() => localStorage.setItem("lengthwise-language", "es"))
    await page.reload()
    await page.getByRole("heading", { name: "Lo que está por venir en 30 meses" }).waitFor()
    expect(await sums()).toEqual(inEnglish)
    const words = (await page.locator(".cost-part").allTextContents()).join(" ")
    expect(words).toMatch(/\d frascos de atropina al 0,05 %/)
    // The title of the schedule is the practice’s own.
    expect(words.replace("Fees of the test", "")).not.toMatch(
      /\b(the|of|and|covered|bottle|bottles|paid|months|fees)\b/i,
    )
    await expectAccessible(page)
    await page.context().close()
  })

  it.each([1280, 768])("have no fault that axe can find at %i px", async (width) => {
    for (const [name, path, heading] of [
      ["cost", `/children/${child}/cost`, "Taken for granted"],
      ["fees", "/settings/fees", "What a new child pays in 30 months"],
    ] as const) {
      const page = await app.open(path, { width })
      await page.getByRole("heading", { name: heading }).first().waitFor()
      await picture(page, `${name}-${width}`)
      await expectAccessible(page)
      const scroll = await page.evaluate(() => document.documentElement.scrollWidth)
      expect(scroll, `${name} scrolls sideways`).toBeLessThanOrEqual(width)
      await page.context().close()
    }
  })
})
