import fc from "fast-check"
import { beforeAll, describe, expect, it } from "vitest"
import type { Duty } from "../../src/engine/assessment.js"
import { addDays, calendarDate, dayNumber } from "../../src/engine/calendar.js"
import { LANGUAGES } from "../../src/engine/say.js"
import { calendarOf } from "../../src/interop/ical/calendar.js"
import { type CalendarInput, calendarEntries } from "../../src/interop/ical/calendar-entries.js"
import { learnEveryLanguage } from "../../src/words/index.js"
import { hasIcalendar, type ReadCalendar, readCalendars } from "./ical/read-calendars.js"

/** Any duties, in windows around any day, with any text where a text is taken. */
const day = fc.integer({ min: dayNumber("1990-01-01"), max: dayNumber("2090-12-31") }).map(calendarDate)
const duty = fc
  .record({
    kind: fc.constantFrom("examination", "bottle", "consent", "decision"),
    step: fc.constantFrom("6-month review", "next bottle", "Überprüfung; 6, 12"),
    opens: day,
    days: fc.tuple(fc.nat(200), fc.nat(200)),
    state: fc.constantFrom("open", "overdue", "upcoming", "done", "missed"),
  })
  .map(({ opens, days: [before, after], ...rest }): Duty => {
    const due = addDays(opens, before)
    return { ...rest, opens, due, closes: addDays(due, after), needs: [] } as Duty
  })
const practiceName = fc.oneof(
  fc.string({ minLength: 1, maxLength: 120 }),
  fc.string({ unit: "binary", minLength: 1, maxLength: 120 }),
  fc.constantFrom(
    "眼科门诊部眼科门诊部眼科门诊部眼科门诊部眼科门诊部眼科",
    'a;b,c\\d\ne:f"g',
    "👁️‍🗨️".repeat(20),
  ),
)
const input: fc.Arbitrary<CalendarInput> = fc
  .record({
    duties: fc.array(duty, { minLength: 1, maxLength: 12 }),
    today: day,
    language: fc.constantFrom(...LANGUAGES),
    childKey: fc.string({ minLength: 1 }),
    practiceName: fc.option(practiceName, { nil: undefined }),
  })
  .map(({ practiceName: name, ...rest }) => (name === undefined ? rest : { ...rest, practiceName: name }))

const inputs = (() => {
  learnEveryLanguage()
  return fc.sample(input, { numRuns: 1500, seed: 5545 }).filter((each) => calendarOf(each) !== null)
})()
const texts = inputs.map((each) => calendarOf(each) as string)

describe("the format of any calendar (RFC 5545)", () => {
  it("has lines of at most 75 octets, all ended by CR and LF, and no control character in them", () => {
    for (const text of texts) {
      expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true)
      for (const line of text.split("\r\n")) {
        if (Buffer.byteLength(line) > 75) expect.fail(`longer than 75 octets: ${line}`)
        // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not be there
        if (/[\u0000-\u001F\u007F]/.test(line)) expect.fail(`control character in ${JSON.stringify(line)}`)
      }
    }
  })

  it("folds between characters and never inside one", () => {
    for (const text of texts) expect(Buffer.from(text).toString()).toBe(text)
  })
})

describe.skipIf(!hasIcalendar())("any calendar read by python3-icalendar (needs that Debian package)", () => {
  let read: readonly ReadCalendar[]
  beforeAll(() => {
    read = readCalendars(texts)
  }, 120_000)
  const pairs = () => inputs.map((each, i) => ({ each, found: read[i] as ReadCalendar }))

  it("is read without a complaint, as published", () => {
    for (const { version, method, errors, entries } of read) {
      expect({ version, method, errors }).toEqual({ version: "2.0", method: "PUBLISH", errors: [] })
      expect(entries.flatMap((entry) => entry.errors)).toEqual([])
    }
  })

  it("has an all-day entry on the due day of each duty that lies ahead, and on today where that is past", () => {
    for (const { each, found } of pairs()) {
      const expected = each.duties
        .filter(({ kind, state }) => kind !== "decision" && state !== "done" && state !== "missed")
        .map(({ due }) => [due, each.today].toSorted()[1])
      expect(found.entries.map(({ start }) => start)).toEqual(expected.toSorted())
    }
  })

  it("reads back the words as they were, in the family's language", () => {
    for (const { each, found } of pairs()) {
      const entries = calendarEntries(each)
      expect(found.entries.map(({ summary }) => summary)).toEqual(entries.map(({ title }) => title))
      for (const entry of found.entries) expect(entry.languages).toEqual([each.language])
      if (each.practiceName !== undefined && /^[\p{L}\p{N} ;,.\\:"]+$/u.test(each.practiceName)) {
        for (const { location, description } of found.entries) {
          expect(location).toBe(each.practiceName)
          expect(description).toContain(each.practiceName)
        }
      }
    }
  })

  it("is private, leaves the day free, and is newer than a calendar of the day before", () => {
    const { each, found } = pairs()[0] as { each: CalendarInput; found: ReadCalendar }
    const before = readCalendars([calendarOf({ ...each, today: addDays(each.today, -1) }) as string])[0]
    for (const entry of found.entries) {
      expect(entry).toMatchObject({ class: "PRIVATE", transparency: "TRANSPARENT" })
      expect(entry.stamp).toBe(`${each.today}T00:00:00+00:00`)
      const older = before?.entries.find(({ uid }) => uid === entry.uid)
      expect(older?.sequence).toBe(entry.sequence - 1)
    }
  })

  it("sounds at nine in the morning a week before, where that lies ahead", () => {
    for (const { each, found } of pairs()) {
      for (const { start, alarms } of found.entries) {
        const expected =
          addDays(start, -7) > each.today ? [{ action: "DISPLAY", secondsBefore: 572_400 }] : []
        expect(alarms).toMatchObject(expected)
        expect(alarms).toHaveLength(expected.length)
      }
    }
  })

  it("names each entry once", () => {
    for (const { entries } of read) expect(new Set(entries.map(({ uid }) => uid)).size).toBe(entries.length)
  })
})

describe("what would be found wrong", () => {
  it.skipIf(!hasIcalendar())("is found: a day moved by one is another day to python3-icalendar", () => {
    const moved = (texts[0] as string).replace(/(DTSTART;VALUE=DATE:)\d{8}/, "$119990101")
    expect(readCalendars([moved])[0]?.entries[0]?.start).toBe("1999-01-01")
  })
})
