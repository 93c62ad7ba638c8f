import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { associateRequest, dataSet, release, say, store } from "../app/dicom-raw.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

const PORT = 18110

let app: App
beforeAll(async () => {
  app = await startApp()
})
afterAll(() => app?.close())

describe("instruments", () => {
  it("are not answered until they are set up, and the page says what to do", async () => {
    const page = await app.open("/settings/instruments")
    await page.getByText("Not set up: instruments get no answer.").waitFor()
    await page.getByText("No instrument was heard since Lengthwise was started.", { exact: false }).waitFor()
    await expectAccessible(page)
    await picture(page, "instruments-unset")
    await page.context().close()
  })

  it("are set up on the page, where a fault stands at its field", async () => {
    const page = await app.open("/settings/instruments")
    await page.getByLabel("Port", { exact: true }).fill("eleven")
    await page.getByRole("button", { name: "Record settings" }).click()
    await page.getByText(/at least one instrument/).waitFor()
    await page.getByText(/a whole number from 1 to 65535/).waitFor()
    await expectAccessible(page)
    await picture(page, "instruments-fault")
    await page.getByLabel("Port", { exact: true }).fill(String(PORT))
    await page.getByLabel("Title of instrument 1").fill("BIOMETER")
    await page.getByRole("button", { name: "Record settings" }).click()
    await page.getByText("Recorded: instruments that are allowed may send.").waitFor()
    await page.getByText(`Listens as LENGTHWISE at 127.0.0.1, port ${PORT}`, { exact: false }).waitFor()
    await page.context().close()
  })

  it("are seen when they call, and let in by a person", async () => {
    const [rejected] = await say(PORT, [associateRequest({ calling: "REFRACTOR" })])
    expect(rejected?.type).toBe(3)
    const answers = await say(PORT, [associateRequest(), store(dataSet()), release()])
    expect(answers[1]?.status).toBe(0xc000)
    await say(PORT, [associateRequest({ called: "ELSEWHERE" })])
    const page = await app.open("/settings/instruments")
    await page.getByText("Its title is not among the allowed instruments.").waitFor()
    await page.getByText("It called us ELSEWHERE, which is not our title.").waitFor()
    await page.getByRole("cell", { name: "Axial measurements" }).waitFor()
    await expectAccessible(page)
    await picture(page, "instruments")
    await page.getByRole("button", { name: "Allow REFRACTOR …" }).click()
    await page.getByText("Filled in for you and not recorded yet", { exact: false }).waitFor()
    await page.getByRole("button", { name: "Record settings" }).click()
    await page.getByText("Recorded: instruments that are allowed may send.").waitFor()
    expect((await say(PORT, [associateRequest({ calling: "REFRACTOR" }), release()]))[0]?.type).toBe(2)
    await page.context().close()
  })

  it("can be searched for, by the words of the page", async () => {
    const page = await app.open("/settings/instruments")
    await page.getByRole("cell", { name: "Axial measurements" }).waitFor()
    await page.keyboard.press("/")
    await page.keyboard.type("elsewhere")
    await expect.poll(() => page.getByRole("cell", { name: "Axial measurements" }).count()).toBe(0)
    await page.getByText("It called us ELSEWHERE, which is not our title.").waitFor()
    await page.keyboard.press("Control+A")
    await page.keyboard.type("nobody at all")
    await page.getByText("Nothing matches.").waitFor()
    await page.context().close()
  })

  it("go back to earlier settings after a look at them", async () => {
    const page = await app.open("/settings/instruments")
    await page.getByText("Earlier settings").click()
    await page
      .getByRole("button", { name: /^Put the settings of/ })
      .first()
      .click()
    await page.getByText("Filled in for you and not recorded yet", { exact: false }).waitFor()
    await page.getByRole("button", { name: "Record settings" }).click()
    await page.getByText("Recorded: instruments that are allowed may send.").waitFor()
    expect((await say(PORT, [associateRequest({ calling: "REFRACTOR" })]))[0]?.type).toBe(3)
    await page.context().close()
  })

  it("are set up at 768 pixels and in Spanish", async () => {
    const page = await app.open("/settings/instruments", { width: 768 })
    await page.getByRole("cell", { name: "Axial measurements" }).waitFor()
    const fits = () => page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)
    expect(await fits()).toBe(true)
    await picture(page, "instruments-narrow")
    await page.evaluate(() => localStorage.setItem("lengthwise-language", "es"))
    await page.reload()
    await page.getByRole("cell", { name: "Medidas axiales" }).waitFor()
    await page.getByText("Nos llamó ELSEWHERE, que no es nuestro título.").waitFor()
    expect(await fits()).toBe(true)
    await expectAccessible(page)
    await picture(page, "instruments-spanish")
    await page.context().close()
  })
})
