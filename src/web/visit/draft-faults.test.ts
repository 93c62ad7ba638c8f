import { describe, expect, it } from "vitest"
import { fieldAtPath, limitFaults, serverFaults, withoutFields } from "./draft-faults.js"

describe("figures outside what the record takes", () => {
  it("meets a lost and a doubled decimal place in a length", () => {
    const visit = {
      date: "2026-09-08",
      right: { axialLength: { mm: 2.41 } },
      left: { axialLength: { mm: 241 } },
    }
    expect(limitFaults(visit)).toEqual([
      {
        eye: "right",
        field: "length",
        message: "must be a number from 15 to 40 mm, not 2.41; did you mean 24.1?",
      },
      {
        eye: "left",
        field: "length",
        message: "must be a number from 15 to 40 mm, not 241; did you mean 24.1?",
      },
    ])
  })
  it("lets a sound visit pass", () => {
    expect(
      limitFaults({ date: "2026-09-08", right: { axialLength: { mm: 24.1 }, pupil: { photopic: 4 } } }),
    ).toEqual([])
  })
  it("meets corneal powers typed as radii once for the field, and a dim pupil of 12", () => {
    const right = { corneaRadius: { flat: 43.5, steep: 42 }, pupil: { photopic: 4, mesopic: 12 } }
    const faults = limitFaults({ date: "2026-09-08", right })
    expect(faults.map(({ field, message }) => `${field} ${message}`)).toEqual([
      "pupilDim must be a number from 1 to 10 mm, not 12",
      "cornea must be a number from 5.5 to 10 mm, not 43.5",
    ])
  })
  it("are taken out, and the rest stays", () => {
    const visit = { date: "2026-09-08", right: { axialLength: { mm: 241 }, pupil: { photopic: 4 } } }
    expect(withoutFields(visit, limitFaults(visit)).right).toEqual({ pupil: { photopic: 4 } })
  })
})

describe("the server's problems", () => {
  it("are found at the field their path speaks of", () => {
    expect(fieldAtPath("right.axialLength.mm")).toEqual({ eye: "right", field: "length" })
    expect(fieldAtPath("visit.left.acuity.nearLogMAR")).toEqual({ eye: "left", field: "acuityNear" })
    expect(fieldAtPath("right.pupil.mesopic")).toEqual({ eye: "right", field: "pupilDim" })
    expect(fieldAtPath("left.corneaRadius.steep")).toEqual({ eye: "left", field: "cornea" })
    expect(fieldAtPath("date")).toBeNull()
  })
  it("are never lost when they have no field", () => {
    const problem = (path: string) => ({
      path,
      value: 1,
      allowed: "else",
      message: `${path} must be else, not 1`,
    })
    const faults = serverFaults([
      problem("date"),
      problem("left.refraction.axis"),
      problem("symptoms[0].grade"),
    ])
    expect(faults.date).toBe("must be else")
    expect(faults.fields).toEqual([{ eye: "left", field: "refraction", message: "must be else" }])
    expect(faults.general).toEqual(["symptoms[0].grade must be else, not 1"])
  })
})
