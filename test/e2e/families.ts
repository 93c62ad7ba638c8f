import type { BrowserContext, Page } from "playwright-core"
import { expect } from "vitest"
import type { Language } from "../../src/engine/say.js"
import type { LinksAnswer } from "../../src/server/contract/family-links.js"
import { slowedCourse } from "./courses.js"
import { type App, startApp } from "./support.js"

/** The child whose family has a link; invented. */
const NAME = "Ilse Vandermeer"
export const BORN = slowedCourse.child.born
export const LANGUAGES = ["en", "es", "zh-Hans"] as const

/** What the door says, in each language. */
export const DOOR = {
  en: {
    tag: "en-GB",
    title: "Your child’s page",
    born: "Date of birth",
    open: "Open",
    wrong: "This link and this date do not open a page. Check the date, or ask the practice for a new link.",
  },
  es: {
    tag: "es-MX",
    title: "La página de su hijo o hija",
    born: "Fecha de nacimiento",
    open: "Abrir",
    wrong:
      "Este enlace y esta fecha no abren ninguna página. Revise la fecha o pida a la consulta un enlace nuevo.",
  },
  "zh-Hans": {
    tag: "zh-CN",
    title: "您孩子的页面",
    born: "出生日期",
    open: "打开",
    wrong: "此链接与该日期无法打开页面。请核对日期，或向诊所索取新的链接。",
  },
} as const satisfies Record<Language, object>

type Link = LinksAnswer["links"][number] & { readonly url: string }

export interface Families {
  readonly app: App
  readonly child: string
  /** Asks of the child's links as somebody of the practice. */
  readonly ofPractice: (
    method: "get" | "post" | "delete",
    path?: string,
    body?: object,
  ) => Promise<LinksAnswer["links"]>
  readonly newLink: (language?: Language, days?: number) => Promise<Link>
  /** A family's own phone at the door of the page: no session, and a language of its own. */
  readonly phone: (
    url: string,
    options: { readonly language: Language; readonly width?: number },
  ) => Promise<{ readonly page: Page; readonly context: BrowserContext }>
  readonly enter: (page: Page, language: Language, born?: string) => Promise<void>
  readonly close: () => Promise<void>
}

/** A practice with a child, and phones of its family. */
export async function families(): Promise<Families> {
  const app = await startApp()
  const child = await app.addCourse({ name: NAME, number: "F-70", course: slowedCourse })
  const practice = (await app.open("/children")).context()
  const ofPractice: Families["ofPractice"] = async (method, path = "", data) => {
    const answer = await practice.request[method](`${app.address}/api/children/${child}/links${path}`, {
      ...(data ? { data } : {}),
    })
    expect(answer.ok(), await answer.text()).toBe(true)
    return ((await answer.json()) as LinksAnswer).links
  }
  return {
    app,
    child,
    ofPractice,
    newLink: async (language = "en", days = 30) => {
      const before = new Set((await ofPractice("get")).map(({ id }) => id))
      const made = (await ofPractice("post", "", { language, days })).find(({ id }) => !before.has(id))
      if (!made?.url) throw new Error("no link was made")
      return { ...made, url: made.url }
    },
    phone: async (url, { language, width = 380 }) => {
      const context = await app.browser.newContext({
        viewport: { width, height: 760 },
        locale: DOOR[language].tag,
        reducedMotion: "reduce",
      })
      const page = await context.newPage()
      page.setDefaultTimeout(10_000)
      await page.goto(url)
      await page.getByRole("heading", { level: 1, name: DOOR[language].title }).waitFor()
      return { page, context }
    },
    enter: async (page, language, born = BORN) => {
      await page.getByLabel(DOOR[language].born).fill(born)
      await page.getByRole("button", { name: DOOR[language].open, exact: true }).click()
    },
    close: () => app.close(),
  }
}
