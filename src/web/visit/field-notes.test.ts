import { describe, expect, it } from "vitest"
import { firstVisitCourse, slowedCourse } from "../../../test/e2e/courses.js"
import type { Course } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { defaultSettings } from "../../engine/settings.js"
import { readCourse } from "../reading.js"
import { readDraft } from "./examination.js"
import { expectedLength, fieldNotes } from "./field-notes.js"
import { ifSaved } from "./if-saved.js"
import { type EyeDraft, emptyDraft, instrumentsOf, type VisitDraft } from "./visit-draft.js"

const today = "2026-11-25"

function typed(course: Course, right: Partial<EyeDraft>, more: Partial<VisitDraft> = {}) {
  const reading = readCourse(course, { today, settings: defaultSettings, rules: noRules })
  const empty = emptyDraft("2026-11-25", instrumentsOf(course))
  const draft = { ...empty, ...more, right: { ...empty.right, ...right } }
  return { reading, draft, visit: readDraft(draft).visit, eye: "right" as const }
}
const texts = (notes: readonly { text: string }[] | undefined) => (notes ?? []).map(({ text }) => text)

describe("notes under a length", () => {
  it("say mean, spread, change and what was expected", () => {
    const [readings, change] = texts(fieldNotes(typed(slowedCourse, { length: "24.09 24.08 24.10" })).length)
    expect(readings).toBe("24.09 from 3 readings, spread 0.02")
    expect(change).toMatch(/^\+0\.13 since 10 Mar 2026, expected −?0\.\d\d to 0\.\d\d$/)
  })
  it("look again at readings that disagree and at a length outside the expected", () => {
    const notes = fieldNotes(typed(slowedCourse, { length: "24.90 24.50" })).length ?? []
    expect(notes.filter(({ caution }) => caution)).toHaveLength(2)
  })
  it("look again when the device is another one than last time", () => {
    const notes = fieldNotes(typed(slowedCourse, { length: "24.09" }, { device: "B" })).length ?? []
    expect(texts(notes).some((text) => text.startsWith("another device than A"))).toBe(true)
  })
  it("expect more growth of an eye that was left longer alone", () => {
    const near = typed(slowedCourse, { length: "24.0" }, { date: "2026-04-10" })
    const far = typed(slowedCourse, { length: "24.0" })
    const length = { mm: 24, readings: 3 }
    const [soon, late] = [expectedLength(near, length), expectedLength(far, length)]
    expect(late!.high).toBeGreaterThan(soon!.high)
    expect(soon!.low).toBeLessThan(23.96)
    expect(soon!.high).toBeGreaterThan(23.96)
  })
})

describe("notes under the other fields", () => {
  it("give the spherical equivalent and ask for an unanswered cycloplegia", () => {
    const notes = fieldNotes(typed(slowedCourse, { refraction: "-2.00 -0.50 x 175" })).refraction ?? []
    expect(texts(notes)[0]).toBe("−2.25 D spherical equivalent · −0.25 since 10 Mar 2026")
    expect(notes[1]?.caution).toBe(true)
  })
  it("compare accommodation only within one method", () => {
    const same = fieldNotes(typed(slowedCourse, { accommodation: "11.0" })).accommodation
    const other = fieldNotes(
      typed(slowedCourse, { accommodation: "11.0" }, { accommodationMethod: "retinoscopy" }),
    ).accommodation
    expect(texts(same)).toEqual(["−1.5 since 10 Mar 2026"])
    expect(texts(other)).toEqual([])
  })
})

describe("notes under the folded fields", () => {
  it("give AL/CR beside the radii, and say what it waits for", () => {
    const cornea = (length: string) =>
      texts(fieldNotes(typed(slowedCourse, { length, cornea: "7.70 7.90" })).cornea)
    expect(cornea("23.40")).toEqual(["flat 7.90, steep 7.70 · AL/CR 3.00"])
    expect(cornea("")).toEqual(["flat 7.90, steep 7.70 · AL/CR once the length is entered"])
  })
  it("look again at a pupil that is smaller in dim light", () => {
    const notes = (pupilDim: string) =>
      fieldNotes(typed(slowedCourse, { pupil: "4.5", pupilDim })).pupilDim ?? []
    expect(notes("4.1").map(({ caution }) => caution)).toEqual([true])
    expect(notes("6.2")).toEqual([])
  })
})

describe("if saved now", () => {
  it("gives a growth state from the draft that the page did not have", () => {
    const { reading, visit } = typed(firstVisitCourse, { length: "24.33" })
    expect(reading.assessment.growth.mmPerYear).toBeNull()
    expect(ifSaved(reading, visit).assessment.growth.mmPerYear).not.toBeNull()
  })
  it("finds a lost minus sign at its field", () => {
    const { reading, visit } = typed(slowedCourse, { refraction: "+2.00 -0.50 x 175" }, { cycloplegic: true })
    const { checks } = ifSaved(reading, visit)
    expect(
      checks.some(({ kind, path }) => kind === "sign-changed" && path.startsWith("right.refraction")),
    ).toBe(true)
  })
  it("says nothing of the other visits", () => {
    const { reading, visit } = typed(slowedCourse, { length: "24.05" })
    expect(ifSaved(reading, visit).checks.every(({ path }) => !path.startsWith("visits"))).toBe(true)
  })
})
