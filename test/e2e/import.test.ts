import { readFileSync } from "node:fs"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import type { Course } from "../../src/engine/course.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
beforeAll(async () => {
  app = await startApp()
})
afterAll(() => app?.close())

const recorded = (born: string, sex: "female" | "male"): Course => ({
  lengthwise: 1,
  child: { born, sex },
  visits: [{ date: "2022-01-10", right: { axialLength: { mm: 22.9 } } }],
})

const VISITS = `Number;Name;Date of birth;Sex;Date of visit;AL OD mm;AL OS mm;Sphere OD;Cyl OD;Axis OD
V-1;Mira Solvang;03.04.2016;f;05.06.2023;23,41;23,38;-1,25;-0,50;175
V-1;Mira Solvang;03.04.2016;f;07.08.2023;23,55;23,50;-1,50;-0,50;175
V-2;Teo Brandt;02.05.2015;m;05.06.2023;24,11;24,05;-2,25;;
V-3;Ada Quill;01.02.2014;f;06.07.2023;249,1;24,29;-2,75;;
V-4;Ben Orsted;;m;06.07.2023;24,91;24,29;-2,75;;
`

const GLASSES = `ID,First name,Last name,DOB,Sex,Day prescribed,Glasses OD,Glasses OS
G-1,Ana,Lund,2013-04-05,F,2019-05-06,-1.00 -0.50 x 180,-1.25
G-1,Ana,Lund,2013-04-05,F,2020-05-06,-1.75 -0.50 x 180,-2.00
G-2,Max,Dorn,2013-04-07,M,2020-05-06,-1.75,plano
`

const EYES = `ID,Name,Date of birth,Sex,Date,Eye,Axial length (mm)
E-1,Noor Haddad,2016-05-01,male,2024-02-01,OD,23.91
E-1,Noor Haddad,2016-05-01,male,2024-02-01,OS,23.88
E-2,Juno Vale,2015-11-09,female,2024-03-04,OD,24.91
E-2,Juno Vale,2015-11-09,female,2024-03-04,OS,24.88
`

const choose = async (page: Page, name: string, content: string | Buffer) => {
  const file = { name, mimeType: "text/csv", buffer: Buffer.from(content) }
  await page.locator("#table-file").setInputFiles(file)
  await page.getByRole("heading", { name, exact: true }).waitFor()
}
const column = (page: Page, heading: string) => page.getByLabel(heading, { exact: true })
const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).click()
const focused = (page: Page) => page.evaluate(() => document.activeElement?.textContent ?? "")
const inView = (page: Page, text: string | RegExp) => page.getByText(text).first().waitFor()
const fitsWindow = async (page: Page) =>
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
  ).toBeLessThanOrEqual(0)

describe("a table imported on the page", () => {
  it("is asked about, checked, recorded and taken back", async () => {
    await app.addCourse({ name: "Mira Solvangg", course: recorded("2016-04-03", "female") })
    const page = await app.open("/import")
    await inView(page, "Nothing was imported yet.")
    await expectAccessible(page)
    await choose(page, "visits.csv", VISITS)
    // The file's own day in each way it can be read; nothing is checked before that is said.
    await inView(page, "03.04.2016 is")
    expect(await page.getByRole("button", { name: "Check the whole file" }).isDisabled()).toBe(true)
    await expectAccessible(page)
    await fitsWindow(page)
    await picture(page, "import-columns")
    await page.getByRole("radio", { name: "3 Apr 2016" }).focus()
    await page.keyboard.press("Space")
    await press(page, "Check the whole file")

    await inView(page, "Whose rows are these?")
    expect(await focused(page)).toBe("visits.csv: 5 rows")
    await inView(page, 'Line 5, column "AL OD mm" must be a number from 15 to 40 mm, not "249,1".')
    await inView(page, /the date of birth is missing; 1 row was not taken/)
    await expectAccessible(page)
    await picture(page, "import-checked")
    await press(page, /^It is Mira Solvangg, born 3 Apr 2016/)
    await inView(page, "2 new children · 1 child known already · 4 new visits")
    await press(page, "Record what is sound")

    await page.getByRole("heading", { name: "visits.csv", exact: true }).waitFor()
    await expect.poll(() => focused(page), { timeout: 20_000 }).toBe("visits.csv")
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("link", { name: "As a table (CSV)" }).click(),
    ])
    expect(readFileSync(await download.path(), "utf8")).toContain('"5","AL OD mm","249,1"')
    await expectAccessible(page)
    await picture(page, "import-done")

    await press(page, "Take back visits.csv")
    const dialog = page.getByRole("dialog")
    await dialog.getByText("2 children go that this import made").waitFor()
    await expectAccessible(page)
    await dialog.getByRole("button", { name: "Take it back" }).click()
    await inView(page, "The import was taken back.")
    await page.getByRole("row", { name: /visits\.csv.*Taken back/ }).waitFor()
    await page.context().close()
  })

  it("takes rows of one eye, and several near matches at once after they were seen", async () => {
    await app.addCourse({ name: "Noor Hadad", course: recorded("2016-05-01", "male") })
    await app.addCourse({ name: "Juno Valle", course: recorded("2015-11-09", "female") })
    const page = await app.open("/import")
    await choose(page, "eyes.csv", EYES)
    expect(await page.getByRole("radio", { name: "one eye" }).isChecked()).toBe(true)
    await press(page, "Check the whole file")
    await inView(page, "There is nothing to record before you have decided whose the rows are.")
    await press(page, "All of these 2 are the child that is suggested")
    await inView(page, "2 children known already · 2 new visits")
    await press(page, "Record all of it")
    await page.getByRole("button", { name: "Take back eyes.csv" }).waitFor()
    await page.context().close()
  })

  it("reads years of old glasses, and the next file as the mapping was saved", async () => {
    const page = await app.open("/import")
    await choose(page, "glasses.csv", GLASSES)
    await inView(page, "Which column holds the day of the visit?")
    await column(page, "Day prescribed").selectOption("glassesDate")
    await press(page, "Save for the next file like this")
    await inView(page, "Saved for the next file")
    await press(page, "Check the whole file")
    await inView(page, "Of the new visits 3 are of earlier glasses.")
    await inView(page, "6 May 2019: right −1.25 D; left −1.25 D; from old glasses")
    await press(page, "Record all of it")
    await page.getByRole("button", { name: "Take back glasses.csv" }).waitFor()
    await choose(page, "glasses-again.csv", GLASSES)
    await inView(page, "Read as saved: glasses.csv")
    await press(page, "Check the whole file")
    await inView(page, "There is nothing to record in this file.")
    await press(page, "Leave this file")
    await inView(page, "or drop it here")
    await page.context().close()
  })

  it("reads a workbook, in Spanish on a narrow page", async () => {
    await app.addCourse({ name: "Zoë Núñez", number: "17", course: recorded("2015-11-09", "female") })
    const page = await app.open("/import", { width: 768 })
    await page.evaluate(() => localStorage.setItem("lengthwise-language", "es"))
    await page.reload()
    await page.getByText("o suéltelo aquí").waitFor()
    await choose(page, "libro.xlsx", readFileSync("test/validation/tables/fixtures/visits.xlsx"))
    await column(page, "Atropine %").selectOption("")
    await expectAccessible(page)
    await fitsWindow(page)
    await picture(page, "import-columns-es-768")
    await press(page, "Comprobar todo el archivo")
    await press(page, /^Es Zoë Núñez, 17, con fecha de nacimiento 9 nov 2015/)
    await inView(page, "1 niño ya conocido · 1 visita nueva")
    await expectAccessible(page)
    await fitsWindow(page)
    await picture(page, "import-checked-es-768")
    await press(page, "Registrar lo que es correcto")
    await page.getByRole("button", { name: "Deshacer libro.xlsx" }).waitFor()
    await page.context().close()
  })
})
