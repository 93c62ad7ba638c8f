import { beforeAll, describe, expect, it } from "vitest"
import type { Duty } from "../../engine/assessment.js"
import { LANGUAGES } from "../../engine/say.js"
import { learnEveryLanguage } from "../../words/index.js"
import { calendarOf } from "./calendar.js"
import { type CalendarInput, calendarEntries } from "./calendar-entries.js"

beforeAll(learnEveryLanguage)

const duty = (changes: Partial<Duty> = {}): Duty => ({
  kind: "examination",
  step: "6-month review",
  opens: "2026-06-10",
  due: "2026-07-10",
  closes: "2026-08-09",
  state: "upcoming",
  needs: ["axial length", "refraction with cycloplegia"],
  ...changes,
})
const bottle = duty({
  kind: "bottle",
  step: "next bottle",
  opens: "2026-03-20",
  due: "2026-04-03",
  closes: "2026-04-03",
  needs: ["a bottle of atropine 0.05 %; the last one is good until 2026-04-03"],
})
const consent = duty({
  kind: "consent",
  step: "consent to atropine 0.05 %",
  due: "2026-06-10",
  closes: "2026-06-10",
})
const input = (changes: Partial<CalendarInput> = {}): CalendarInput => ({
  duties: [duty(), bottle, consent],
  today: "2026-03-10",
  language: "en",
  childKey: "child-7",
  ...changes,
})
const only = (changes: Partial<Duty>, more: Partial<CalendarInput> = {}) =>
  calendarEntries(input({ duties: [duty(changes)], ...more }))[0]

describe("what a family's calendar gets", () => {
  it("is an entry for each examination, bottle and consent ahead, in order of the days", () => {
    expect(calendarEntries(input()).map(({ day, title }) => [day, title])).toEqual([
      ["2026-04-03", "Something to collect"],
      ["2026-06-10", "Something to sign"],
      ["2026-07-10", "Appointment to book"],
    ])
  })

  it("is nothing of what is done, missed, or for the practice to decide", () => {
    const duties = [
      duty({ state: "done" }),
      duty({ state: "missed" }),
      duty({ kind: "decision", state: "open" }),
    ]
    expect(calendarEntries(input({ duties }))).toEqual([])
    expect(calendarOf(input({ duties }))).toBeNull()
  })

  it("stands on the due day with the whole window in words", () => {
    expect(only({})).toMatchObject({
      day: "2026-07-10",
      description: "Any day from 10 June 2026 to 9 August 2026.\nThis is a reminder: it books no day.",
    })
  })

  it("stands on today once the due day is past, with the days that are left", () => {
    expect(only({ state: "overdue" }, { today: "2026-07-20" })).toMatchObject({
      day: "2026-07-20",
      window: { from: "2026-07-20", to: "2026-08-09" },
      hasAlarm: false,
    })
    expect(only({ state: "overdue" }, { today: "2026-08-09" })?.description).toMatch(
      /^On 9 August 2026 at the latest\./,
    )
  })

  it("asks for as soon as can be once no day is left", () => {
    const late = only({ state: "overdue" }, { today: "2026-09-01" })
    expect(late).toMatchObject({ day: "2026-09-01", window: null })
    expect(late?.description).toMatch(/^As soon as you can: it was due by 9 August 2026\./)
  })

  it("has an alarm only where a week before the day lies ahead", () => {
    expect(only({}, { today: "2026-07-02" })?.hasAlarm).toBe(true)
    expect(only({}, { today: "2026-07-03" })?.hasAlarm).toBe(false)
  })

  it("names the practice as the place and whom to ask, only where it is given", () => {
    expect(calendarOf(input())).not.toContain("LOCATION")
    const text = calendarOf(input({ practiceName: "Haus am Park; 2, links" }))
    expect(text).toContain("LOCATION;LANGUAGE=en:Haus am Park\\; 2\\, links\r\n")
    expect(only({}, { practiceName: "Haus am Park" })?.description).toContain("Please ask Haus am Park.")
  })
})

describe("what nobody may read in it", () => {
  const HEALTH =
    /eye|drop|atropin|myop|short.?sight|bottle|pharmac|doctor|clinic|treat|consent|exam|review|length|ojo|gota|miop|frasco|farmac|médic|tratam|consent|revisi|眼|滴|阿托品|近视|药|医|治疗|检查|复查/i

  it.each(LANGUAGES)("is anything about health, in %s", (language) => {
    const text = calendarOf(input({ language })) as string
    expect(text.replaceAll("\r\n ", "").replace(/PRODID:.*/, "")).not.toMatch(HEALTH)
  })

  it("is the child, in the names of the entries either", () => {
    const childKey = "ren-galwain-2016-05-02"
    const text = calendarOf(input({ childKey })) as string
    expect(text).not.toMatch(/galwain|2016-?05|0502/i)
    for (const { uid } of calendarEntries(input({ childKey }))) {
      expect(uid).toMatch(/^[\da-f]{8}-[\da-f]{4}-8[\da-f]{3}-[89ab][\da-f]{3}-[\da-f]{12}$/)
    }
  })
})

describe("the names of entries", () => {
  const uids = (changes: Partial<CalendarInput> = {}) => calendarEntries(input(changes)).map(({ uid }) => uid)

  it("stay on another day, in another language and when the due day moves within the window", () => {
    expect(uids({ today: "2026-03-11", language: "es" })).toEqual(uids())
    expect(only({ due: "2026-07-12" })?.uid).toBe(only({})?.uid)
  })

  it("differ by child, kind, step and first day", () => {
    const all = [
      only({}),
      only({}, { childKey: "child-8" }),
      only({ kind: "bottle" }),
      only({ step: "12-month review" }),
      only({ opens: "2026-06-11" }),
    ].map((entry) => entry?.uid)
    expect(new Set(all).size).toBe(all.length)
  })

  it("differ where two duties are alike", () => {
    expect(new Set(uids({ duties: [bottle, bottle] })).size).toBe(2)
  })
})

describe("the text", () => {
  it("is the same for the same day", () => expect(calendarOf(input())).toBe(calendarOf(input())))

  it("ends each entry with its alarm, after all that is said of it", () => {
    expect(calendarOf(input())).toMatch(
      /CLASS:PRIVATE\r\nBEGIN:VALARM\r\n[\s\S]*?END:VALARM\r\nEND:VEVENT\r\n/,
    )
    expect(calendarOf(input())).not.toMatch(/END:VALARM\r\n(?!END:VEVENT)/)
  })

  it("is written in the family's language", () => {
    const spanish = calendarOf(input({ language: "es" }))?.replaceAll("\r\n ", "")
    expect(spanish).toContain("SUMMARY;LANGUAGE=es:Cita por reservar")
    expect(spanish).toContain("Cualquier día\\, del 10 de junio de 2026 al 9 de agosto de 2026.")
    const chinese = calendarOf(input({ language: "zh-Hans" }))?.replaceAll("\r\n ", "")
    expect(chinese).toContain("SUMMARY;LANGUAGE=zh-Hans:请预约时间")
    expect(chinese).toContain("2026年6月10日至2026年8月9日之间任意一天均可。")
  })
})
