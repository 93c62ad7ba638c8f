import { describe, expect, it } from "vitest"
import { consentInForce } from "../../../src/engine/consent/consent-in-force.js"
import type { Consent, TreatmentChoice } from "../../../src/engine/course.js"

const drops = (concentrationPercent?: number): TreatmentChoice => ({
  kind: "atropine",
  ...(concentrationPercent === undefined ? {} : { concentrationPercent }),
})
const consent = (date: string, covers: TreatmentChoice, more: Partial<Consent> = {}): Consent => ({
  date,
  covers,
  ...more,
})
const asked = (consents: readonly Consent[], treatment: TreatmentChoice, on: string) =>
  consentInForce({ course: { consents }, treatment, on })

describe("A consent covers one treatment", () => {
  it("from the day it was given", () => {
    const consents = [consent("2025-01-10", drops(0.05))]
    expect(asked(consents, drops(0.05), "2025-01-09").kind).toBe("none")
    expect(asked(consents, drops(0.05), "2025-01-10")).toEqual({ kind: "in-force", consent: consents[0] })
  })

  it.each([
    ["a higher strength", 0.1],
    ["a lower strength", 0.01],
  ])("%s is another treatment", (_, percent) => {
    expect(asked([consent("2025-01-10", drops(0.05))], drops(percent), "2025-02-01")).toEqual({
      kind: "another-strength",
      why: `consent to atropine names 0.05 %, not ${percent} %`,
    })
  })

  it("a consent to drops that names no strength covers none", () => {
    expect(asked([consent("2025-01-10", drops())], drops(0.05), "2025-02-01").kind).toBe("another-strength")
  })

  it("glasses have no strength: any consent to them covers them", () => {
    const kind = { kind: "lenslet-spectacles" } as const
    expect(asked([consent("2025-01-10", kind)], kind, "2025-02-01").kind).toBe("in-force")
    expect(asked([consent("2025-01-10", kind)], { kind: "orthokeratology" }, "2025-02-01")).toEqual({
      kind: "none",
      why: "no consent to orthokeratology is recorded",
    })
  })
})

describe("A consent holds until it is withdrawn", () => {
  const withdrawn = [consent("2025-01-10", drops(0.05), { until: "2025-06-01" })]

  it("until the day before", () => {
    expect(asked(withdrawn, drops(0.05), "2025-05-31").kind).toBe("in-force")
    expect(asked(withdrawn, drops(0.05), "2025-06-01")).toEqual({
      kind: "withdrawn",
      since: "2025-06-01",
      why: "consent to atropine 0.05 % was withdrawn on 2025-06-01",
    })
  })

  it("also on the very day it was given", () => {
    const consents = [consent("2025-01-10", drops(0.05), { until: "2025-01-10" })]
    expect(asked(consents, drops(0.05), "2025-01-10").kind).toBe("withdrawn")
  })

  it("an earlier consent to the same treatment does not come back to life", () => {
    const consents = [consent("2024-01-10", drops(0.05)), ...withdrawn]
    expect(asked(consents, drops(0.05), "2025-07-01").kind).toBe("withdrawn")
  })

  it("a consent to another strength stays as it was", () => {
    const consents = [consent("2024-01-10", drops(0.01)), ...withdrawn]
    expect(asked(consents, drops(0.01), "2025-07-01").kind).toBe("in-force")
  })

  it("a new consent, given on that day or later, holds again", () => {
    const again = consent("2025-06-01", drops(0.05))
    expect(asked([...withdrawn, again], drops(0.05), "2025-07-01")).toEqual({
      kind: "in-force",
      consent: again,
    })
  })

  it("after a withdrawal the strength once agreed to is asked about by itself", () => {
    expect(asked(withdrawn, drops(0.01), "2025-07-01").kind).toBe("none")
  })
})
