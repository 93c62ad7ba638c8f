import type { Locator, Page } from "playwright-core"
import { expect } from "vitest"
import { addDays } from "../../src/engine/calendar.js"
import type { CalendarDate } from "../../src/engine/course.js"
import type { App } from "./support.js"

/** Steps of one child's life in the practice, as a person takes them on the pages. */

export interface Child {
  readonly app: App
  readonly page: Page
  readonly name: string
  readonly number: string
  /** Empty until the child is added. */
  readonly id: string
}

export interface Measured {
  readonly mm: number
  readonly sphere: number
}

/** Opens the list of the day for this child alone. */
export async function openToday({ app, page, number }: Child): Promise<void> {
  await page.goto(`${app.address}/today?search=${number}`)
  await page.getByRole("status").getByText(/owed/).first().waitFor()
}

/** What Today lists for this child, as "action: what"; read until it is what was expected. */
export async function expectToday(child: Child, expected: readonly string[]): Promise<void> {
  await openToday(child)
  await expect.poll(() => owedToday(child), { timeout: 15_000 }).toEqual(expected)
}

async function owedToday({ page, name }: Child): Promise<string[]> {
  const labels = await page
    .locator("main [data-action]")
    .evaluateAll((actions) => actions.map((action) => action.getAttribute("aria-label") ?? ""))
  return labels.map((label) => label.replace(`${name}, `, ""))
}

/** Takes the one action of a row of Today, which leads to where the thing is done. */
export async function takeAction(child: Child, action: string): Promise<void> {
  await openToday(child)
  const [label = "", what = ""] = action.split(": ")
  await child.page.getByLabel(`${label}: ${child.name}, ${what}`, { exact: true }).click()
}

export async function openCourse({ app, page, id }: Child): Promise<void> {
  await page.goto(`${app.address}/children/${id}`)
  await page.getByRole("heading", { name: "Next duty" }).waitFor()
}

export async function openPart(child: Child, part: string): Promise<void> {
  await openCourse(child)
  await child.page.getByRole("link", { name: part, exact: true }).click()
}

/** The next duty and those after it, as the card of the child's page says them. */
export async function expectNextDuty(child: Child, said: RegExp): Promise<void> {
  await openCourse(child)
  const card = child.page.getByRole("region", { name: "Next duty" })
  await expect
    .poll(() =>
      card
        .locator("p, li")
        .allTextContents()
        .then((texts) => texts.join(" ")),
    )
    .toMatch(said)
}

/** Questions whose good answer is yes. */
const ANSWERED_YES =
  /^(Fundus examined|Did the drops have their time|Are the spectacles right|Was it shown|Was the family|Plain report)/

const openQuestions = (form: Locator): Promise<string[]> =>
  form
    .locator("fieldset:has(input[type=radio]):not(:has(input[type=radio]:checked)) > legend")
    .allTextContents()

/** Fills the visit form with all that it asks for here and now, until it says that nothing is missing. */
export async function fillVisit(page: Page, { mm, sphere }: Measured): Promise<void> {
  await page.getByRole("heading", { name: /^Still missing for/ }).waitFor()
  const form = page.getByRole("region", { name: "Measurements" })
  const atOnce = form.getByRole("button", { name: /^All (others )?(no|told|0)$/ })
  while ((await atOnce.count()) > 0) await atOnce.first().click()
  if (await form.getByRole("group", { name: "Cycloplegia", exact: true }).count())
    await form.getByRole("group", { name: "Cycloplegia", exact: true }).getByLabel("yes").check()
  for (const words of await openQuestions(form)) {
    const row = form.getByRole("group", { name: words, exact: true })
    await row.getByLabel(ANSWERED_YES.test(words) ? "yes" : "no", { exact: true }).check()
  }
  for (const value of await form.getByLabel(/hours a day$|nights a week$/).all()) await value.fill("1")
  if (await form.getByLabel(/minutes from first drop/).count())
    await form.getByLabel(/minutes from first drop/).fill("35")
  const figures: readonly (readonly [label: string, text: string])[] = [
    ["Acuity, far", "0.0"],
    ["Acuity, near", "0.1"],
    ["Pupil", "4.2"],
    ["Pupil, dim", "6.1"],
    ["Accommodation", "12"],
    ["Cornea", "7.85 7.70"],
    ["Length", `${mm.toFixed(2)} ${(mm + 0.01).toFixed(2)} ${(mm - 0.01).toFixed(2)}`],
    ["Refraction", sphere.toFixed(2)],
  ]
  for (const [label, text] of figures)
    for (const eye of ["right", "left"]) {
      const field = form.getByLabel(`${label}, ${eye}`, { exact: true })
      if (await field.count()) await field.fill(text)
    }
}

/** Saves the visit and marks it as explained, as it is done while the family is still there. */
export async function saveVisit(child: Child): Promise<void> {
  const { page } = child
  await page.getByText("Nothing: all that is owed is entered.").waitFor()
  await page.getByRole("button", { name: "Save visit" }).click()
  await page.getByText(/Visit of .* saved\./).waitFor()
  await page.getByRole("button", { name: "Explained to the family" }).click()
  await page.getByText("Explained to the family on").waitFor()
}

/** Records a decision where Choices has it. */
export async function decide(
  { page }: Child,
  what: {
    readonly decision: string
    readonly treatment?: string
    readonly from?: string
    readonly why: string
  },
): Promise<void> {
  await page.getByRole("heading", { name: "Options side by side" }).waitFor()
  await page.getByLabel("Decision", { exact: true }).selectOption({ label: what.decision })
  if (what.treatment)
    await page.getByLabel("Treatment", { exact: true }).selectOption({ label: what.treatment })
  if (what.from) await page.getByLabel("First day", { exact: true }).fill(what.from)
  await page.getByRole("textbox", { name: "Why" }).fill(what.why)
  await page.getByRole("button", { name: "Record decision" }).click()
  const recorded = page.getByText(/^Recorded: decision of/)
  await recorded.waitFor()
  // It stands above the long table: whoever pressed the button below it must see it.
  await expect.poll(async () => (await recorded.boundingBox())?.y ?? -1).toBeGreaterThan(0)
}

/** Sends what the pages would send, with the log-in of the page. */
async function post({ app, page, id }: Child, path: string, body: object): Promise<void> {
  const answer = await page.request.post(`${app.address}/api/children/${id}/${path}`, { data: body })
  expect([answer.status(), answer.ok() ? "" : await answer.text()]).toEqual([201, ""])
}

/** A bottle every 30 days, handed out and opened at once, from one day until before another. */
async function giveBottles(
  child: Child,
  { from, until }: { readonly from: CalendarDate; readonly until: CalendarDate },
): Promise<void> {
  for (let opened = from; opened < until; opened = addDays(opened, 30))
    await post(child, "supplies", {
      dispensed: opened,
      opened,
      concentrationPercent: 0.05,
      volumeMl: 5,
      beyondUse: addDays(opened, 29),
      lot: `L-${opened}`,
    })
}

/** Moves the practice to a day, up to which the family was given its bottles. */
export async function comeTo(
  child: Child,
  { day, bottlesFrom }: { readonly day: CalendarDate; readonly bottlesFrom: CalendarDate },
): Promise<void> {
  child.app.moveTo(day)
  await giveBottles(child, { from: bottlesFrom, until: addDays(day, 1) })
}

/** A whole visit and its explanation without the pages, where the pages have shown theirs before. */
export async function examine(
  child: Child,
  { date, mm, sphere }: Measured & { readonly date: CalendarDate },
): Promise<void> {
  const eye = {
    axialLength: { mm, readings: 5, method: "optical-biometry" },
    refraction: { sphere, cycloplegic: true, method: "autorefraction" },
    pupil: { photopic: 4.2 },
    accommodation: { dioptres: 12, method: "push-up" },
    acuity: { distanceLogMAR: 0, nearLogMAR: 0.1 },
  }
  await post(child, "visits", { date, right: eye, left: eye, symptoms: [] })
  await post(child, "explanations", { date, to: "family" })
}
