import { execFileSync } from "node:child_process"
import { copyFileSync, mkdtempSync, rmSync } from "node:fs"
import { readFile } from "node:fs/promises"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { gzipSync } from "node:zlib"
import type { Page } from "playwright-core"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { BORN, type Families, families, LANGUAGES } from "./families.js"
import { expectAccessible, picture } from "./support.js"

const WIDTHS = [1280, 768, 380] as const
const EVERY = LANGUAGES.flatMap((language) => WIDTHS.map((width) => [language, width] as const))

let f: Families
beforeAll(async () => {
  f = await families()
})
afterAll(() => f?.close())

/** All that a page could be found by later: its address, its title, and what it left on the phone. */
const leftBehind = (page: Page) =>
  page.evaluate(async () =>
    JSON.stringify({
      address: location.href,
      title: document.title,
      cookies: document.cookie,
      stored: [{ ...localStorage }, { ...sessionStorage }],
      databases: await indexedDB.databases(),
      caches: await caches.keys(),
      history: history.state,
    }),
  )

const expectNothingOfTheChild = (text: string) => {
  for (const word of ["Ilse", "Vandermeer", f.child, BORN, "F-70"]) expect(text).not.toContain(word)
}

/** The text of the page as it is printed, and how many sheets it takes. */
async function printed(page: Page): Promise<{ readonly text: string; readonly sheets: number }> {
  const folder = mkdtempSync(join(tmpdir(), "lengthwise-print-"))
  const path = join(folder, "page.pdf")
  await page.pdf({ path, format: "A4", margin: { top: "15mm", bottom: "15mm", left: "15mm", right: "15mm" } })
  const text = execFileSync("pdftotext", ["-layout", path, "-"], { encoding: "utf8" })
  const kept = process.env.KEEP_PRINT
  if (kept)
    copyFileSync(
      path,
      join(kept, `${(await page.getAttribute("html", "lang")) ?? "en"}-${page.viewportSize()?.width}.pdf`),
    )
  rmSync(folder, { recursive: true, force: true })
  return { text, sheets: text.split("\f").length - 1 }
}

describe("the links of a child", () => {
  it.each([1280, 768])("are made, copied and taken back, at %i px", async (width) => {
    const page = await f.app.open(`/children/${f.child}/family-links`, { width })
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"])
    await page.getByLabel("Language", { exact: true }).selectOption("es")
    await page.getByLabel("Opens for").selectOption({ label: "30 days" })
    await page.getByRole("button", { name: "Make a link" }).click()
    await page.getByText("A link is made. It opens after the child’s birth date is entered.").waitFor()
    const row = page.getByRole("listitem").filter({ hasText: "Español, open until 2" })
    const url = await row.getByLabel("Address of the page").inputValue()
    expect(url).toMatch(/\/f\/[\w.-]{45}$/)
    expectNothingOfTheChild(url)
    await row.getByText("Not opened yet.").waitFor()
    await row.getByRole("button", { name: "Copy the address" }).click()
    await row.getByRole("button", { name: "Copied" }).waitFor()
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(url)
    await expectAccessible(page)
    await picture(page, `family-links-${width}`)
    await row.getByRole("button", { name: "Take back" }).click()
    await expectAccessible(page)
    await picture(page, `family-links-take-back-${width}`)
    await page.getByRole("button", { name: "Take it back" }).click()
    await page.getByText("The link is taken back. It opens no more.").waitFor()
    await page.getByText("Español, taken back").first().waitFor()
    await page.context().close()
  })

  it("are read in Spanish by who reads the pages in Spanish", async () => {
    await f.newLink("zh-Hans")
    const page = await f.app.open(`/children/${f.child}/family-links`, { width: 768 })
    await page.evaluate(() => localStorage.setItem("lengthwise-language", "es"))
    await page.reload()
    await page.getByText("简体中文, abierto hasta el 2").first().waitFor()
    await expectAccessible(page)
    await picture(page, "family-links-es-768")
    await page.context().close()
  })
})

describe("the page behind a link, in each language", () => {
  it.each(EVERY)("in %s at %i px is large, whole and without a fault of access", async (language, width) => {
    const { url } = await f.newLink(language)
    const { page, context } = await f.phone(url, { language, width })
    await expectAccessible(page)
    await picture(page, `family-door-${language}-${width}`)
    await f.enter(page, language)
    await page.locator(`article[lang="${language}"]`).waitFor()
    expect(await page.locator("article figure").count()).toBe(3)
    // Nothing runs out of the page, and no word of a figure is drawn so small that it cannot be read.
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    )
    const sizes = await page.locator("article svg text").evaluateAll((texts) =>
      texts.map((text) => {
        const drawing = (text as SVGTextElement).ownerSVGElement
        const scale = drawing ? drawing.getBoundingClientRect().width / drawing.viewBox.baseVal.width : 0
        return Number.parseFloat(getComputedStyle(text).fontSize) * scale
      }),
    )
    expect(Math.min(...sizes)).toBeGreaterThan(12)
    await expectAccessible(page)
    await picture(page, `family-page-${language}-${width}`)
    await context.close()
  })
})

describe("the page behind a link", () => {
  // A practice of its own: a server opens links twenty times a minute and no more.
  beforeAll(async () => {
    await f.close()
    f = await families()
  })

  it("says nothing of the child before it opens, and keeps nothing of it afterwards", async () => {
    const { url } = await f.newLink()
    const asked: string[] = []
    const { page, context } = await f.phone(url, { language: "en" })
    page.on("request", (request) => asked.push(request.url()))
    expectNothingOfTheChild(await page.content())
    expectNothingOfTheChild(await leftBehind(page))
    await f.enter(page, "en")
    await page.getByRole("heading", { level: 1, name: /Ilse Vandermeer/ }).waitFor()
    expectNothingOfTheChild(await leftBehind(page))
    expect(await page.title()).toBe("Your child’s page")
    expect(asked.length).toBeGreaterThan(0)
    for (const address of asked) expectNothingOfTheChild(address)
    await page.reload()
    await page.getByLabel("Date of birth").waitFor()
    expect(await page.getByLabel("Date of birth").inputValue()).toBe("")
    expectNothingOfTheChild(await page.content())
    await context.close()
  })

  it("is opened, read in another language and unfolded by keyboard alone", async () => {
    const { url } = await f.newLink()
    const { page, context } = await f.phone(url, { language: "en" })
    const isAt = (name: string) =>
      page.evaluate(() => document.activeElement?.textContent?.trim()).then((text) => text === name)
    const tabTo = async (name: string) => {
      for (let press = 0; press < 30 && !(await isAt(name)); press++) await page.keyboard.press("Tab")
      expect(await isAt(name), name).toBe(true)
    }
    await tabTo("简体中文")
    await page.keyboard.press("Tab")
    await page.keyboard.type(BORN.replace(/^(\d+)-(\d+)-(\d+)$/, "$2$3$1"))
    await page.keyboard.press("Enter")
    await page.getByRole("article").waitFor()
    // Reading begins at the page, not at what is gone.
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("MAIN")
    await tabTo("Español")
    await page.keyboard.press("Enter")
    await page.locator('article[lang="es"]').waitFor()
    expect(await page.title()).toBe("La página de su hijo o hija")
    await tabTo("¿Son seguras las gotas?")
    await page.keyboard.press("Enter")
    expect(await page.locator("details[open]").count()).toBe(1)
    await expectAccessible(page)
    await context.close()
  })

  it("draws its figures anew when a phone is turned", async () => {
    const { url } = await f.newLink()
    const { page, context } = await f.phone(url, { language: "en" })
    await f.enter(page, "en")
    await page.locator('article svg[viewBox^="0 0 360 "]').first().waitFor()
    await page.setViewportSize({ width: 820, height: 380 })
    await page.locator('article svg[viewBox^="0 0 760 "]').first().waitFor()
    await context.close()
  })

  it.each([1280, 380])(
    "is printed whole, with every answer and nothing to press, from %i px",
    async (width) => {
      const { url } = await f.newLink()
      const { page, context } = await f.phone(url, { language: "en", width })
      await f.enter(page, "en")
      await page.getByRole("article").waitFor()
      const answer = await page.locator("details p").first().textContent()
      const { text, sheets } = await printed(page)
      expect(text).toContain("How Ilse Vandermeer's eyes are doing")
      expect(text).toContain(answer?.slice(0, 40))
      for (const button of ["Print", "Save as PDF", "Español"]) expect(text).not.toContain(button)
      expect(sheets).toBeLessThanOrEqual(4)
      await context.close()
    },
  )

  it("is kept as a PDF under a name that tells nothing of the child", async () => {
    const { url } = await f.newLink("es")
    const { page, context } = await f.phone(url, { language: "es" })
    await f.enter(page, "es")
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Guardar como PDF" }).click(),
    ])
    expect(download.suggestedFilename()).toBe("family-page.pdf")
    const text = execFileSync("pdftotext", [await download.path(), "-"], { encoding: "utf8" })
    expect(text.replace(/\s+/g, " ")).toContain("Cómo están los ojos de Ilse Vandermeer")
    const [calendar] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Fechas para el calendario" }).click(),
    ])
    expect(calendar.suggestedFilename()).toBe("appointments.ics")
    const dates = await readFile(await calendar.path(), "utf8")
    expect(dates).toContain("SUMMARY;LANGUAGE=es:")
    expect(dates).not.toContain("Ilse")
    await context.close()
  })

  it("loads less than 110 kB, and nothing of the practice's own pages", async () => {
    const page = await readFile("dist/web/family.html")
    const files = [...page.toString().matchAll(/assets\/[\w.-]+\.(?:js|css)/g)].map(([name]) => name)
    expect(files.length).toBeGreaterThan(0)
    const sizes = await Promise.all(
      files.map(async (name) => gzipSync(await readFile(join("dist/web", name))).length),
    )
    expect(sizes.reduce((sum, size) => sum + size, gzipSync(page).length)).toBeLessThan(110_000)
  })
})

describe("the screen turned round", () => {
  it.each(EVERY)(
    "in %s at %i px is the same page, with nothing of the practice around it",
    async (language, width) => {
      const page = await f.app.open(`/children/${f.child}/family`, { width })
      await page.getByRole("button", { name: "Close" }).waitFor()
      await page.locator(`button[lang="${language}"]`).click()
      await page.locator(`article[lang="${language}"]`).waitFor()
      expect(await page.locator("article figure").count()).toBe(3)
      expect(await page.locator("article details").count()).toBeGreaterThan(4)
      expect(await page.getByRole("navigation", { name: "Main" }).count()).toBe(0)
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0)
      await expectAccessible(page)
      await picture(page, `family-turned-${language}-${width}`)
      await page.context().close()
    },
  )
})
