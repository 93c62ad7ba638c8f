import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
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
    const history = page.getByRole("region", { name: "History" }).getByRole("listitem")
    await history.nth(2).waitFor()
    expect(await history.allInnerTexts()).toEqual([
      expect.stringMatching(/Received; it waited\.$/),
      expect.stringMatching(/Put under a child by .+\.\n?.*typed wrongly$/s),
      expect.stringMatching(/Taken back by .+; it waits again\./),
    ])
  }, 180_000)

  it("takes a folder with what is below it, and files that are dropped", async () => {
    const folder = mkdtempSync(join(tmpdir(), "lengthwise-dropped-"))
    try {
      mkdirSync(join(folder, "below"))
      writeFileSync(join(folder, "below", "deep.json"), JSON.stringify(COURSE))
      writeFileSync(join(folder, ".hidden"), "x")
      writeFileSync(join(folder, "note.txt"), "\u0000")
      const page = await app.open("/inbox")
      await page.locator('input[type="file"][aria-label="Choose a folder"]').setInputFiles(folder)
      const report = page.getByRole("region", { name: "What became of each file" })
      await report.getByRole("row", { name: /below\/deep\.json/ }).waitFor()
      expect(await report.getByRole("row").count()).toBe(3)
      const dropped = await page.evaluateHandle(() => {
        const data = new DataTransfer()
        data.items.add(new File(["\u0000"], "dropped.bin"))
        return data
      })
      await page.locator(".drop").dispatchEvent("drop", { dataTransfer: dropped })
      await report.getByRole("row", { name: /dropped\.bin/ }).waitFor()
      await page.getByText("0 recorded, 0 known already, 0 waiting, 1 skipped.").waitFor()
    } finally {
      rmSync(folder, { recursive: true })
    }
  }, 180_000)

  it("is cancelled while files are being sent: the rest is not sent, and what was is told", async () => {
    const page = await app.open("/inbox")
    let sent = 0
    await page.route("**/api/inbox/files**", async (route) => {
      sent += 1
      // The second never arrives.
      if (sent === 1) await route.continue()
    })
    await page
      .locator('input[type="file"][aria-label="Choose files"]')
      .setInputFiles(["one", "two", "three"].map((name) => file(`${name}.txt`, "\u0000")))
    await page.getByText("1 of 3 files").waitFor()
    await page.getByRole("button", { name: "Cancel" }).click()
    await page.getByText("Cancelled after 1 of 3 files.").waitFor()
    await page.getByText("0 recorded, 0 known already, 0 waiting, 1 skipped.").waitFor()
    expect(sent).toBe(2)
  }, 180_000)

  it("makes a new child, with what the form of a new child asks", async () => {
    const page = await app.open("/inbox")
    const nora = {
      ...COURSE,
      child: { id: "K-78", born: "2018-02-01", sex: "female", ancestry: "south-asian", myopicParents: 1 },
    }
    await page.locator('input[type="file"][aria-label="Choose files"]').setInputFiles([file("n.json", nora)])
    await page.getByRole("link", { name: /number K-78/ }).click()
    await page.getByRole("button", { name: "New child from this …" }).click()
    const form = page.getByRole("dialog")
    expect(await form.getByLabel("Ancestry").inputValue()).toBe("south-asian")
    expect(await form.getByLabel("Myopic parents").inputValue()).toBe("1")
    await form.getByLabel("Name").fill("Nora Vale")
    await form.getByLabel("Myopic parents").selectOption("2")
    await form.getByRole("button", { name: "Add child" }).click()
    await page.getByText("Put under Nora Vale.").waitFor()
    await page.getByRole("link", { name: "Nora Vale" }).click()
    await page.getByRole("heading", { name: /Nora Vale/ }).waitFor()
    const { id } = /children\/(?<id>[^/?]+)/.exec(page.url())?.groups ?? {}
    const view = await page.evaluate(async (child) => (await fetch(`/api/children/${child}`)).json(), id)
    expect(view.course.child).toMatchObject({ ancestry: "south-asian", myopicParents: 2 })
  }, 180_000)

  it("fits a tablet", async () => {
    const page = await app.open("/inbox", { width: 768 })
    const fits = () => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)
    await page.getByRole("link", { name: /number K-77/ }).waitFor()
    expect(await fits()).toBe(true)
    await picture(page, "inbox-768")
    await page.getByRole("link", { name: /number K-77/ }).click()
    await page.getByRole("button", { name: "Set aside …" }).click()
    await page.getByRole("dialog").waitFor()
    await page.keyboard.press("Escape")
    await page.getByRole("heading", { name: "History" }).waitFor()
    expect(await fits()).toBe(true)
    await picture(page, "inbox-item-768")
  }, 180_000)

  it("is read in Spanish", async () => {
    const page = await app.open("/inbox", { width: 768 })
    await page.evaluate(() => localStorage.setItem("lengthwise-language", "es"))
    await page.reload()
    const fits = () => page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)
    const link = page.getByRole("link", { name: /K-77/ })
    await link.waitFor()
    await page
      .locator('input[type="file"]')
      .first()
      .setInputFiles([file("nota.txt", "\u0000")])
    // What the server says of a file is said in the language of the page.
    await page.locator(".drop-report").waitFor()
    expect(await page.locator(".drop-report").textContent()).not.toContain("It is no kind")
    expect(await fits()).toBe(true)
    await expectAccessible(page)
    await picture(page, "inbox-es")
    await link.first().click()
    await page.getByRole("heading", { name: "Cronología" }).waitFor()
    await page.getByRole("searchbox").fill("Mira Solberg")
    await page.getByRole("radio", { name: /Mira Solberg/ }).check()
    await page.locator(".against").waitFor()
    expect(await fits()).toBe(true)
    await expectAccessible(page)
    await picture(page, "inbox-item-es")
  }, 180_000)
})
