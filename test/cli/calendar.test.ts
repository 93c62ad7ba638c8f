import { describe, expect, it } from "vitest"
import { commandLine, json } from "./fake-io.js"

const course = {
  lengthwise: 1,
  child: { id: "c-7", born: "2017-03-14", sex: "female" },
  visits: [{ date: "2026-01-10", right: { axialLength: { mm: 24.1 } } }],
  treatments: [{ from: "2026-01-12", kind: "atropine", concentrationPercent: 0.05 }],
  consents: [{ date: "2026-01-10", covers: { kind: "atropine", concentrationPercent: 0.05 } }],
  supplies: [
    { dispensed: "2026-01-12", opened: "2026-01-12", beyondUse: "2026-02-11", concentrationPercent: 0.05 },
  ],
}
const calendar = (options: readonly string[] = [], file: unknown = course) =>
  commandLine(["calendar", "c.json", "--out", "f.ics", "--as-of", "2026-01-20", ...options], {
    files: { "c.json": file },
  })

describe("lengthwise calendar", () => {
  it("writes the file and says what stands in it", async () => {
    const { code, stdout, stderr, written } = await calendar()
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" })
    expect(stdout).toMatch(/^\d+ entries written to f\.ics\.\n/)
    expect(stdout).toContain("11 February 2026: Something to collect (bottle).")
    expect(written["f.ics"]).toMatch(
      /^BEGIN:VCALENDAR\r\n[\s\S]*DTSTART;VALUE=DATE:20260211[\s\S]*END:VCALENDAR\r\n$/,
    )
  })

  it("says the same as JSON", async () => {
    const answer = json(await calendar(["--json"]))
    expect(answer).toMatchObject({ asOf: "2026-01-20", language: "en", out: "f.ics", checks: [] })
    expect(answer.entries[0]).toMatchObject({
      kind: "bottle",
      day: "2026-02-11",
      state: "upcoming",
      hasAlarm: true,
    })
  })

  it("speaks the family's language and names the practice where it is given", async () => {
    const { written } = await calendar(["--language", "zh-Hans", "--practice", "公园旁"])
    expect(written["f.ics"]).toContain("SUMMARY;LANGUAGE=zh-Hans:有物品待领取")
    expect(written["f.ics"]).toContain("LOCATION;LANGUAGE=zh-Hans:公园旁")
  })

  it("can be handed on, with what a person should read on stderr", async () => {
    const { stdout, stderr, written } = await commandLine(
      ["calendar", "c.json", "--out", "-", "--as-of", "2026-01-20"],
      { files: { "c.json": course } },
    )
    expect(stdout).toMatch(/^BEGIN:VCALENDAR[\s\S]*END:VCALENDAR\r\n$/)
    expect(stderr).toContain("In the calendar")
    expect(written).toEqual({})
  })

  it("writes no file where nothing lies ahead, and says so", async () => {
    const bare = { lengthwise: 1, child: course.child, visits: [] }
    const off = { ...bare, decisions: [{ date: "2026-01-15", kind: "discharge", reason: "moved away" }] }
    const { code, stdout, written } = await calendar([], off)
    expect({ code, written }).toEqual({ code: 0, written: {} })
    expect(stdout).toContain("Nothing lies ahead on 20 January 2026, so no calendar was written.")
    expect(json(await calendar(["--json"], off))).toMatchObject({ out: null, entries: [] })
  })

  it("warns where a child has no id to tell its entries from another's", async () => {
    const { id: _, ...child } = course.child
    const { stdout } = await calendar([], { ...course, child })
    expect(stdout).toContain("child.id: The child has no id")
  })
})

describe("a calendar that cannot be written", () => {
  it.each([
    ["a name without a letter", ["--practice", " "], "--practice must be a name of 1 to 200 characters"],
    ["a name of 201", ["--practice", "a".repeat(201)], "--practice must be a name of 1 to 200 characters"],
    ["the course file itself", ["--out", "./c.json"], "--out must be another file than the course file"],
    ["stdout beside JSON", ["--out", "-", "--json"], "--out must be a file, since the JSON takes stdout"],
    ["a place that is closed", ["--out", "locked/f.ics"], "writing it is not permitted"],
  ])("%s", async (_, options, message) => {
    const { code, stderr, written } = await calendar(options)
    expect({ code, written }).toEqual({ code: 1, written: {} })
    expect(stderr).toContain(message)
  })

  it("because the course is at fault, with every fault told", async () => {
    const { code, stderr } = await calendar(["--practice", ""], { ...course, child: { born: "2017" } })
    expect(code).toBe(1)
    expect(stderr).toContain("child.born")
    expect(stderr).toContain("--practice")
  })

  it("because no file, or no such language, is named", async () => {
    expect((await commandLine(["calendar", "c.json"])).code).toBe(2)
    expect((await calendar(["--language", "fr"])).code).toBe(2)
  })
})
