import { describe, expect, it } from "vitest"
import { isQuiet, isTimeZone } from "./quiet-hours.js"

const hours = { quietFrom: "21:00", quietTo: "08:00", timeZone: "Europe/Dublin" }
const at = (instant: string, changes: object = {}) =>
  isQuiet({ nowMs: Date.parse(instant), ...hours, ...changes })

describe("quiet hours", () => {
  it.each([
    ["2026-01-10T20:59:59Z", false],
    ["2026-01-10T21:00:00Z", true],
    ["2026-01-11T00:00:00Z", true],
    ["2026-01-11T07:59:59Z", true],
    ["2026-01-11T08:00:00Z", false],
  ])("reach over midnight: %s", (instant, quiet) => expect(at(instant)).toBe(quiet))

  it.each([
    // Irish clocks go forward on 29 March 2026 at 01:00 UTC, and back on 25 October at 01:00 UTC.
    ["the morning before", "2026-03-28T07:30:00Z", true],
    ["the morning after", "2026-03-29T07:30:00Z", false],
    ["the evening after", "2026-03-29T20:30:00Z", true],
    ["the morning before they go back", "2026-10-24T07:30:00Z", false],
    ["the morning after", "2026-10-25T07:30:00Z", true],
  ])("follow the clock on the wall: %s", (_, instant, quiet) => expect(at(instant)).toBe(quiet))

  it("end although the hour they end in does not exist that night", () => {
    // 02:30 is left out in Berlin on 29 March 2026: the wall goes from 01:59 to 03:00.
    const night = { quietFrom: "22:00", quietTo: "02:30", timeZone: "Europe/Berlin" }
    expect(at("2026-03-29T00:59:00Z", night)).toBe(true)
    expect(at("2026-03-29T01:00:00Z", night)).toBe(false)
  })
  it("stay quiet in the hour that comes twice", () => {
    const night = { quietFrom: "02:00", quietTo: "03:00", timeZone: "Europe/Berlin" }
    expect(at("2026-10-25T00:30:00Z", night)).toBe(true)
    expect(at("2026-10-25T01:30:00Z", night)).toBe(true)
    expect(at("2026-10-25T02:00:00Z", night)).toBe(false)
  })
  it("can lie within a day, and there are none where both ends are the same", () => {
    const noon = { quietFrom: "12:00", quietTo: "14:00" }
    expect(at("2026-01-10T13:00:00Z", noon)).toBe(true)
    expect(at("2026-01-10T14:00:00Z", noon)).toBe(false)
    expect(at("2026-01-10T12:00:00Z", { quietFrom: "12:00", quietTo: "12:00" })).toBe(false)
  })
  it("are counted where the practice is", () => {
    expect(at("2026-01-10T13:30:00Z", { timeZone: "Asia/Shanghai" })).toBe(true)
    expect(at("2026-01-10T13:30:00Z", { timeZone: "America/Lima" })).toBe(false)
  })
})

it("a time zone is one of the IANA list", () => {
  expect(["Europe/Dublin", "Asia/Shanghai", "UTC"].every(isTimeZone)).toBe(true)
  expect(["Dublin", "", "Mars/Base"].some(isTimeZone)).toBe(false)
})
