import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { slowedCourse, unequalCourse } from "./courses.js"
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

describe("a visit", () => {
  it("is entered with the keyboard alone, and the page then shows the new finding", async () => {
    const { page } = await openVisit("Ilse Varga")
    const type = async (text: string) => {
      await page.keyboard.type(text)
      await page.keyboard.press("Enter")
    }
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute("aria-label")))
      .toBe("Length, right")
    for (const text of [
      "24.03 24.02 24.02 24.01 24.03",
      "23.95 23.96 23.94 23.95 23.95",
      "-2.00 -0.50 x 175",
      "-1.75 -0.75 x 8",
      "y",
      "4.6",
      "4.5",
      "11.5",
      "11.0",
      "0.0",
      "20/20",
      "0.1",
      "0.1",
    ])
      await type(text)
    await page.keyboard.type("1")
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

  it("is refused at its date when that day has a visit already, with nothing lost", async () => {
    const { page } = await openVisit("Aiko Renner")
    await field(page, "Day of the visit").fill("2026-03-10")
    await field(page, "Length, right").fill("24.03")
    await page.getByRole("button", { name: "Save visit" }).click()
    await page.getByText(/must be a day without another visit/).waitFor()
    expect(await field(page, "Length, right").inputValue()).toBe("24.03")
    await page.context().close()
  })

  it("is kept on this computer until it is saved", async () => {
    const { page } = await openVisit("Edda Lind")
    await field(page, "Length, right").fill("24.03")
    await page.reload()
    await field(page, "Length, right").waitFor()
    expect(await field(page, "Length, right").inputValue()).toBe("24.03")
    await page.getByRole("button", { name: "Save visit" }).click()
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
    await page.getByRole("button", { name: "Save visit" }).click()
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
