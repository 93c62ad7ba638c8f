import { mkdirSync, mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join, resolve } from "node:path"
import AxeBuilder from "@axe-core/playwright"
import { type Browser, chromium, type Page } from "playwright-core"
import { expect } from "vitest"
import type { Course } from "../../src/engine/course.js"
import type { ChildView } from "../../src/server/contract/child.js"
import { type RunningServer, startServer } from "../../src/server/main.js"

/** The practice's day in these tests: a child's figures must not depend on when they run. */
export const TODAY = "2026-11-25"

const PAGES = resolve("dist/web")
const PICTURES = "test/output/pages"

const CHROMIUM_FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
]

export interface App {
  readonly address: string
  readonly dataFolder: string
  readonly logIn: { readonly name: string; readonly password: string }
  readonly browser: Browser
  /** A page of a window that nobody else has used; logged in unless said otherwise. */
  readonly open: (
    path: string,
    options?: { readonly width?: number; readonly loggedIn?: boolean },
  ) => Promise<Page>
  /** Records a course through the API, as the pages would. */
  readonly addCourse: (child: {
    readonly name: string
    readonly number?: string
    readonly course: Course
  }) => Promise<string>
  /** Moves the practice to another day; whoever is logged in stays so. */
  readonly moveTo: (today: string) => void
  readonly close: () => Promise<void>
}

/** The real server on a folder of its own with the demo, and a browser. */
export async function startApp(): Promise<App> {
  const dataFolder = mkdtempSync(join(tmpdir(), "lengthwise-e2e-"))
  let today = TODAY
  const server = await startServer({
    dataFolder,
    port: 0,
    demo: true,
    staticFolder: PAGES,
    clock: { nowMs: () => Date.now(), today: () => today },
    say: () => {},
  })
  const logIn = firstLogInOf(server)
  const browser = await chromium.launch({
    executablePath: process.env.CHROME_PATH ?? "/usr/bin/chromium",
    args: CHROMIUM_FLAGS,
  })
  mkdirSync(PICTURES, { recursive: true })
  const failures: string[] = []
  const cookie = await sessionCookie(server.address, logIn)
  return {
    address: server.address,
    dataFolder,
    logIn,
    browser,
    open: async (path, { width = 1280, loggedIn = true } = {}) => {
      const context = await browser.newContext({ viewport: { width, height: 860 }, reducedMotion: "reduce" })
      if (loggedIn) {
        const [name = "", value = ""] = cookie.split("=")
        await context.addCookies([{ name, value, url: server.address }])
      }
      const page = await context.newPage()
      page.on("pageerror", (error) => failures.push(error.message))
      await page.goto(server.address + path)
      return page
    },
    addCourse: ({ name, number, course }) =>
      addCourse({ address: server.address, cookie, name, number, course }),
    moveTo: (day) => {
      today = day
    },
    close: async () => {
      await browser.close()
      await server.close()
      rmSync(dataFolder, { recursive: true, force: true })
      if (failures.length > 0) throw new Error(`pages failed: ${failures.join("; ")}`)
    },
  }
}

function firstLogInOf({ firstLogIn }: RunningServer): { name: string; password: string } {
  if (!firstLogIn?.password) throw new Error("the first start of the server told no password")
  return { name: firstLogIn.name, password: firstLogIn.password }
}

async function sessionCookie(address: string, logIn: { name: string; password: string }): Promise<string> {
  const response = await fetch(`${address}/api/session`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(logIn),
  })
  const cookie = response.headers.getSetCookie()[0]?.split(";")[0]
  if (!response.ok || cookie === undefined) throw new Error(`log-in answered ${response.status}`)
  return cookie
}

async function addCourse(input: {
  readonly address: string
  readonly cookie: string
  readonly name: string
  readonly number: string | undefined
  readonly course: Course
}): Promise<string> {
  const post = async (path: string, body: unknown): Promise<ChildView> => {
    const response = await fetch(input.address + path, {
      method: "POST",
      headers: { "content-type": "application/json", cookie: input.cookie },
      body: JSON.stringify(body),
    })
    if (!response.ok) throw new Error(`${path} answered ${response.status}: ${await response.text()}`)
    return (await response.json()) as ChildView
  }
  const { course } = input
  const { child } = await post("/api/children", {
    ...course.child,
    name: input.name,
    ...(input.number === undefined ? {} : { number: input.number }),
  })
  const lists = [
    ["visits", course.visits],
    ["treatments", course.treatments ?? []],
    ["consents", course.consents ?? []],
    ["supplies", course.supplies ?? []],
    ["missed-nights", course.missedNights ?? []],
    ["decisions", course.decisions ?? []],
    ["concerns", course.concerns ?? []],
    ["orders", course.orders ?? []],
    ["explanations", course.explanations ?? []],
    ["payments", course.payments ?? []],
  ] as const
  for (const [path, items] of lists)
    for (const item of items) await post(`/api/children/${child.id}/${path}`, item)
  return child.id
}

/** Fails with the rule and the element of every fault that axe finds. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  const faults = violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary }) => `${id}: ${html}\n${failureSummary}`),
  )
  expect(faults).toEqual([])
}

/** A picture of the whole page, or of the window when something lies over it; git ignores the folder. */
export async function picture(page: Page, name: string): Promise<void> {
  const fullPage = (await page.locator("dialog").count()) === 0
  await page.screenshot({ path: join(PICTURES, `${name}.png`), fullPage })
}
