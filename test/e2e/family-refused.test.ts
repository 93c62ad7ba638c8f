import type { Page } from "playwright-core"
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from "vitest"
import { BORN, DOOR, type Families, families, LANGUAGES } from "./families.js"
import { expectAccessible, picture } from "./support.js"

const WRONG = "2016-05-21"

let f: Families
beforeAll(async () => {
  f = await families()
})
afterAll(() => f?.close())
afterEach(() => vi.restoreAllMocks())

/** Whatever does not open says the same, so that trying teaches nothing; it is read out where the date was typed. */
async function expectRefused(page: Page, language: (typeof LANGUAGES)[number]): Promise<void> {
  await page.getByRole("alert").filter({ hasText: DOOR[language].wrong }).waitFor()
  expect(await page.getByRole("article").count()).toBe(0)
}

describe.each(LANGUAGES)("in %s the page does not open, and says so, ", (language) => {
  it("on a wrong date; on the right one it opens", async () => {
    const { url } = await f.newLink(language)
    const { page, context } = await f.phone(url, { language })
    await f.enter(page, language, WRONG)
    await expectRefused(page, language)
    expect(await page.getByLabel(DOOR[language].born).getAttribute("aria-invalid")).toBe("true")
    await expectAccessible(page)
    await picture(page, `family-refused-${language}`)
    await f.enter(page, language, BORN)
    await page.locator(`article[lang="${language}"]`).waitFor()
    await context.close()
  })

  it("by a link taken back, and by one whose days are over", async () => {
    const revoked = await f.newLink(language)
    await f.ofPractice("delete", `/${revoked.id}`)
    const taken = await f.phone(revoked.url, { language })
    await f.enter(taken.page, language)
    await expectRefused(taken.page, language)
    await taken.context.close()

    const expiring = await f.newLink(language, 7)
    const late = await f.phone(expiring.url, { language })
    const now = Date.now.bind(Date)
    vi.spyOn(Date, "now").mockImplementation(() => now() + 8 * 86_400_000)
    await f.enter(late.page, language)
    await expectRefused(late.page, language)
    await late.context.close()
  })
})

describe("after five wrong dates", () => {
  it("the right one opens no more, and the practice reads why", async () => {
    const { url } = await f.newLink("en")
    const { page, context } = await f.phone(url, { language: "en" })
    for (const day of ["01", "02", "03", "04", "05"]) {
      const answered = page.waitForResponse(/\/api\/shared\//)
      await f.enter(page, "en", `2016-01-${day}`)
      await answered
    }
    await f.enter(page, "en", BORN)
    await expectRefused(page, "en")
    await page
      .getByText("After five wrong dates the link locks. The practice can give you a new one.")
      .waitFor()
    await context.close()

    const listed = await f.app.open(`/children/${f.child}/family-links`)
    await listed.getByText("English, locked after wrong dates").first().waitFor()
    await listed.context().close()
  })

  it("asked too often, it says to wait", async () => {
    const { url } = await f.newLink("es")
    const { page, context } = await f.phone(url, { language: "es" })
    await page.route("**/api/shared/**", (route) =>
      route.fulfill({
        status: 429,
        contentType: "application/problem+json",
        body: '{"title":"","problems":[]}',
      }),
    )
    await f.enter(page, "es")
    await page
      .getByText("Han sido muchos intentos en poco tiempo. Espere un minuto e inténtelo de nuevo.")
      .waitFor()
    await page.unroute("**/api/shared/**")
    await context.setOffline(true)
    await f.enter(page, "es")
    await page
      .getByText("No se puede conectar con el servidor de la consulta. Inténtelo más tarde.")
      .waitFor()
    await context.close()
  })
})
