import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { concernCourse } from "./courses.js"
import { type App, expectAccessible, picture, startApp } from "./support.js"

let app: App
let flagged = ""
let quiet = ""
let followed = ""

beforeAll(async () => {
  app = await startApp()
  const [first, last] = concernCourse.visits
  if (!first || !last) throw new Error("the course has two visits")
  const course = {
    ...concernCourse,
    visits: [
      {
        ...first,
        answers: [
          { question: "heart-condition", answer: "no" },
          { question: "antimuscarinic-medicines", answer: "yes", note: "syrup for the bladder" },
        ] as const,
      },
      { ...last, answers: [{ question: "floaters", answer: "yes", note: "since Saturday" }] as const },
    ],
  }
  flagged = await app.addCourse({ name: "Mira Solberg", number: "E-1044", course })
  followed = await app.addCourse({ name: "Edda Brandl", number: "E-1045", course: concernCourse })
  quiet = await app.addCourse({
    name: "Tomas Brandl",
    course: { ...concernCourse, visits: [first], treatments: [] },
  })
})
afterAll(() => app?.close())

const safety = async (id: string, width?: number) => {
  const page = await app.open(`/children/${id}/safety`, width === undefined ? {} : { width })
  await page
    .getByRole("heading", { name: /open|Nothing is open/ })
    .first()
    .waitFor()
  return page
}

describe("the safety of a child", () => {
  it("has red flags first, with whom to call and that no number is set", async () => {
    const page = await safety(flagged)
    const first = page.locator("article").first()
    await first.getByRole("heading", { name: "Red flag: care on the same day" }).waitFor()
    expect(await first.textContent()).toContain("Floaters: told on 9 Nov 2026. Noted: since Saturday.")
    expect(await page.getByText("the practice has not set a poison centre").count()).toBe(1)
    await page.context().close()
  })

  it("says which cautions were answered, and which were not asked yet", async () => {
    const page = await safety(flagged)
    const row = (name: string) => page.getByRole("row", { name: new RegExp(name) })
    expect(await row("Heart condition").textContent()).toContain("no, 4 May 2026")
    expect(await row("Other medicines").textContent()).toContain("syrup for the bladder")
    expect(await row("Narrow angle").textContent()).toContain("not asked yet")
    await page.context().close()
  })

  it("offers what can be considered, with its figures and its source", async () => {
    const page = await safety(flagged)
    const card = page.getByRole("article", { name: "Light sensitivity" })
    await card.getByText("What can be considered").click()
    await card.getByText("A lower strength can be considered.").waitFor()
    expect(await card.textContent()).toMatch(/CHAMP, 36 months: light sensitivity in 3.1 % on placebo/)
    await picture(page, "safety")
    await page.context().close()
  })

  it("says that nothing open is no proof", async () => {
    const page = await safety(quiet)
    await page.getByRole("heading", { name: "Nothing is open" }).waitFor()
    await page.getByText("this is no proof of safety").waitFor()
    await page.context().close()
  })

  it.each([1280, 768])("can be used by everyone at %i pixels", async (width) => {
    const page = await safety(flagged, width)
    await expectAccessible(page)
    await picture(page, `safety-${width}`)
    await page.context().close()
  })
})

describe("a concern", () => {
  it("is taken up as an adverse event, closed with a note, and told of the child", async () => {
    const page = await safety(followed)
    const card = page.getByRole("article", { name: "Light sensitivity" })
    await card.getByRole("button", { name: /Take it up/ }).click()
    const dialog = page.getByRole("dialog")
    await dialog.getByLabel("Looked after by").fill("Dr Osei")
    await dialog.getByLabel("Keep as an adverse event of the treatment").check()
    await dialog.getByLabel("moderate").check()
    await dialog.getByLabel("probable").check()
    await expectAccessible(page)
    await dialog.getByRole("button", { name: "Record" }).click()
    await page.getByText("Recorded: Light sensitivity, looked after by Dr Osei.").waitFor()
    expect(await card.count()).toBe(1)
    expect(await card.textContent()).toContain(
      "looked after by Dr Osei; an adverse event, moderate, probable",
    )

    await card.getByRole("button", { name: /Close with a note/ }).click()
    await dialog.getByRole("button", { name: "Close it" }).click()
    await dialog.getByText(/must be how it ended, in words/).waitFor()
    await dialog.getByLabel("How it ended").fill("Tinted lenses; comfortable after a week")
    await dialog.getByRole("button", { name: "Close it" }).click()
    await page.getByText("Closed: Light sensitivity. It stays in the record.").waitFor()
    expect(await card.count()).toBe(0)
    const events = page.getByRole("region", { name: "Adverse events", exact: true })
    expect(await events.textContent()).toMatch(/Light sensitivity, 9 Nov 2026, under atropine 0.05 %/)
    await page.context().close()
  })

  it("of the whole practice is downloaded as a table, by number and not by name", async () => {
    const page = await safety(followed)
    await page.getByText("Adverse events of the whole practice").click()
    const link = page.getByRole("link", { name: "Download table (CSV)" })
    const answer = await page.request.get(app.address + (await link.getAttribute("href")))
    const text = await answer.text()
    expect(text).toContain('"E-1045","2026-11-09"')
    expect(text).not.toContain("Edda Brandl")
    await page.context().close()
  })
})

describe("the practice's contacts", () => {
  it("are set once and stand on every child's safety page", async () => {
    const page = await app.open("/settings/contacts")
    await page.getByLabel("Poison centre").fill("01 555 0100")
    await page.getByLabel("Urgent contact").fill("01 555 0101, day and night")
    await page.getByLabel("Country").fill("xx")
    await expectAccessible(page)
    await page.getByRole("button", { name: "Record contacts" }).click()
    await page.getByText("Recorded: the practice’s contacts.").waitFor()
    await page.goto(`${app.address}/children/${flagged}/safety`)
    const emergency = page.getByRole("region", { name: "In an emergency" })
    await emergency.getByText("01 555 0100").waitFor()
    expect(await emergency.textContent()).toContain("Poison centre (XX): 01 555 0100")
    await page.context().close()
  })
})
