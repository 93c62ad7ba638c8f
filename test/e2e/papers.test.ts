import { readFileSync } from "node:fs"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { slowedCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let child = ""
let fresh = ""
beforeAll(async () => {
  app = await startApp()
  child = await app.addCourse({ name: "Noor Halvorsen", number: "E-3301", course: slowedCourse })
  fresh = await app.addCourse({
    name: "Timo Brask",
    course: { ...slowedCourse, visits: [], treatments: [], consents: [] },
  })
})
afterAll(() => app?.close())

const papers = (id = child, width = 1280) => app.open(`/children/${id}/papers`, { width })

describe("the papers of a child", () => {
  it.each([1280, 768])(
    "show the family's report first, with what can be done with it, at %i px",
    async (width) => {
      const page = await papers(child, width)
      const sheet = page.getByRole("article")
      await sheet.getByRole("heading", { name: /Noor Halvorsen/ }).waitFor()
      expect(await sheet.getAttribute("lang")).toBe("en")
      expect(await sheet.getByRole("img").count()).toBeGreaterThan(0)
      for (const image of await sheet.locator("figure > [role=img]").all())
        expect((await image.getAttribute("aria-label"))?.length).toBeGreaterThan(20)
      await page.getByRole("button", { name: "Download PDF" }).waitFor()
      await expectAccessible(page)
      await picture(page, `papers-${width}`)
      await page.context().close()
    },
  )

  it("are read in the language asked for, whatever the page is read in", async () => {
    const page = await papers()
    const sheet = page.getByRole("article")
    await sheet.waitFor()
    await page.getByLabel("Language").selectOption("zh-Hans")
    await page.locator('article[lang="zh-Hans"]').waitFor()
    expect(await sheet.textContent()).toMatch(/\p{Script=Han}{10}/u)
    await page.getByRole("button", { name: "Download PDF" }).waitFor()
    await expectAccessible(page)
    await picture(page, "papers-zh-Hans")
    await page.context().close()
  })

  it("come as a PDF under a name that does not tell whose it is", async () => {
    const page = await papers()
    await page.getByLabel("Size of the sheet").selectOption("letter")
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Download PDF" }).click(),
    ])
    expect(download.suggestedFilename()).toBe("family-2026-11-25.pdf")
    expect(
      readFileSync(await download.path())
        .subarray(0, 5)
        .toString(),
    ).toBe("%PDF-")
    await page.context().close()
  })

  it("have figures that can be saved as drawing and as picture", async () => {
    const page = await papers()
    for (const [button, name, start] of [
      ["save as SVG", /^figure-family-.*\.svg$/, "<svg"],
      ["save as PNG", /^figure-family-.*\.png$/, "\u0089PNG"],
    ] as const) {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: button }).first().click(),
      ])
      expect(download.suggestedFilename()).toMatch(name)
      const bytes = readFileSync(await download.path())
      expect(bytes.subarray(0, 4).toString("latin1")).toBe(start)
      expect(bytes.length).toBeGreaterThan(1000)
    }
    await page.context().close()
  })

  it("fold the answers on the screen and open them on paper", async () => {
    const page = await papers()
    const answers = page.locator("article details")
    await answers.first().waitFor()
    expect(await page.locator("article details[open]").count()).toBe(0)
    await page.evaluate(() => dispatchEvent(new Event("beforeprint")))
    expect(await page.locator("article details[open]").count()).toBe(await answers.count())
    await page.emulateMedia({ media: "print" })
    for (const gone of ["Which paper", "Main", "Parts of the child’s page"])
      expect(await page.getByText(gone, { exact: true }).or(page.getByLabel(gone)).first().isVisible()).toBe(
        false,
      )
    await page.context().close()
  })

  it("say why one cannot be made, and keep no other in view", async () => {
    const page = await papers(fresh)
    await page.getByLabel("Paper", { exact: true }).selectOption("adverse-event")
    await page.getByRole("heading", { name: "This paper cannot be made yet" }).waitFor()
    expect(await page.getByRole("article").count()).toBe(0)
    expect(await page.getByRole("button", { name: "Download PDF" }).count()).toBe(0)
    await expectAccessible(page)
    await picture(page, "papers-refused")
    await page.context().close()
  })

  it("are of the treatment asked about", async () => {
    const page = await papers()
    await page.getByLabel("Paper", { exact: true }).selectOption("consent")
    await page.getByRole("article").waitFor()
    await page.getByLabel("Treatment", { exact: true }).selectOption({ label: "Orthokeratology" })
    await page
      .getByRole("article")
      .getByText(/orthokeratology/i)
      .first()
      .waitFor()
    await expectAccessible(page)
    await picture(page, "papers-consent")
    await page.context().close()
  })

  it("are marked as given to the family, which tells the results", async () => {
    const page = await papers()
    await page.getByRole("button", { name: "Given to the family" }).click()
    await page.getByText(/Recorded: report given to the family, 25 Nov/).waitFor()
    await page.goto(`${app.address}/children/${child}`)
    await page.getByText(/Explained to the family on 25 Nov/).waitFor()
    await page.context().close()
  })
})

describe("the screen turned round", () => {
  it.each([1280, 768, 390])(
    "has the family's report large and nothing of the practice's pages, at %i px",
    async (width) => {
      const page = await app.open(`/children/${child}/family`, { width })
      await page.getByRole("heading", { level: 1, name: /Noor Halvorsen/ }).waitFor()
      expect(await page.getByRole("navigation", { name: "Main" }).count()).toBe(0)
      expect(await page.getByRole("link", { name: "Children" }).count()).toBe(0)
      expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true)
      await expectAccessible(page)
      await picture(page, `family-screen-${width}`)
      await page.context().close()
    },
  )

  it("changes its language, and is left by Escape", async () => {
    const page = await papers()
    await page.getByRole("link", { name: "Turn the screen round" }).click()
    await page.getByRole("button", { name: "Español" }).click()
    await page.locator('article[lang="es"]').waitFor()
    await page.keyboard.press("Escape")
    await page.waitForURL(`**/children/${child}/papers`)
    await page.getByRole("navigation", { name: "Main" }).waitFor()
    await page.context().close()
  })

  it("is shown to nobody who is not logged in", async () => {
    const page = await app.open(`/children/${child}/family`, { loggedIn: false })
    await page.getByLabel("Password").waitFor()
    expect(await page.getByRole("article").count()).toBe(0)
    await page.context().close()
  })
})
