import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { type App, expectAccessible, picture, startApp, TODAY } from "./support.js"

const COURSE = {
  lengthwise: 1,
  child: { id: "K-77", born: "2017-09-05", sex: "female" },
  visits: [
    {
      date: "2026-11-20",
      right: { axialLength: { mm: 24.12, readings: 5 }, corneaRadius: { flat: 7.8, steep: 7.6 } },
      left: { axialLength: { mm: 24.04 } },
    },
  ],
}
const file = (name: string, content: unknown) => ({
  name,
  mimeType: "application/json",
  buffer: Buffer.from(typeof content === "string" ? content : JSON.stringify(content)),
})

let app: App
beforeAll(async () => {
  app = await startApp()
  await app.addCourse({
    name: "Mira Solberg",
    number: "A-7",
    course: {
      lengthwise: 1,
      child: { born: "2017-09-05", sex: "female" },
      visits: [{ date: "2026-11-20", right: { axialLength: { mm: 24.5 } } }],
    },
  })
}, 120_000)
afterAll(() => app?.close())

describe("the Inbox", () => {
  it(`takes files, shows one beside the record, corrects it and takes it back (${TODAY})`, async () => {
    const page = await app.open("/inbox")
    await page
      .locator('input[type="file"][aria-label="Choose files"]')
      .setInputFiles([file("course.json", COURSE), file("table.csv", "a;b"), file("note.txt", "\u0000")])
    await page.getByText("0 recorded, 0 known already, 1 waiting, 2 skipped.").waitFor()
    await expectAccessible(page)
    await picture(page, "inbox-1280")
    await page.getByRole("link", { name: /number K-77/ }).click()
    await page.getByRole("heading", { name: "Whose is it" }).waitFor()
    // Nothing is chosen beforehand.
    expect(await page.locator('input[name="whose"]:checked').count()).toBe(0)
    await page.getByLabel("Find a child").fill("Mira Solberg")
    await page.getByRole("radio", { name: /Mira Solberg/ }).check()
    await page.getByText("differs from the file").waitFor()
    await expectAccessible(page)
    await picture(page, "inbox-item-1280")
    await page.getByLabel("Reason").fill("typed wrongly")
    await page.getByRole("button", { name: "Correct the record" }).click()
    await page.getByText("Put under Mira Solberg.").waitFor()
    await page.getByRole("button", { name: "Take back" }).click()
    await page.getByText("Taken back. It waits again.").waitFor()
  }, 180_000)

  it("fits a tablet, in Spanish as well", async () => {
    const page = await app.open("/inbox", { width: 768 })
    await page.getByRole("heading", { name: "Inbox" }).waitFor()
    const fits = () => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)
    await page.getByRole("link", { name: /number K-77/ }).waitFor()
    expect(await fits()).toBe(true)
    await picture(page, "inbox-768")
    await page.getByRole("link", { name: /number K-77/ }).click()
    await page.getByRole("button", { name: "Set aside …" }).click()
    await page.getByRole("dialog").waitFor()
    await page.keyboard.press("Escape")
    expect(await fits()).toBe(true)
    await picture(page, "inbox-item-768")
  }, 180_000)
})
