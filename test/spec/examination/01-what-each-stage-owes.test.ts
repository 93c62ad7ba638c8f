import { describe, expect, it } from "vitest"
import type { Visit } from "../../../src/engine/course.js"
import {
  examinationPlan,
  missingFrom,
  type PlanInput,
} from "../../../src/engine/protocol/examination-plan.js"
import { STAGES } from "../../../src/engine/protocol/protocol.js"
import { standardProtocol } from "../../../src/engine/protocol/standard.js"

// Stages, statuses and subjects: evidence/clinical/duties.json, by the ids named. Measures of a step: the protocol.
const plan = (input: Partial<PlanInput>) =>
  examinationPlan({ stage: "review", onAtropine: false, switches: {}, ...input })
const names = (input: Partial<PlanInput>) => plan(input).items.map(({ name }) => name)
const stepOf = (id: string) => standardProtocol.steps.find((step) => step.id === id)
const signs = ["flashes", "floaters", "curtain", "eye pain", "sudden loss of vision"]

describe("The order of the room", () => {
  it("has questions and acuity first, then the pupil before any drop, the reading under cycloplegia late, advice last", () => {
    const items = plan({ stage: "baseline", step: stepOf("baseline") }).items
    const at = (id: string) =>
      items.findIndex((item) => (item.kind === "measure" ? item.measure : item.question.id) === id)
    const order = [
      "heart-condition",
      "symptoms",
      "distance-acuity",
      "near-acuity",
      "photopic-pupil",
      "accommodation",
      "axial-length",
      "cornea-radius",
      "narrow-angle",
      "other-mydriatics",
      "cycloplegic-refraction",
      "fundus-examined",
      "advice-outdoors",
    ].map(at)
    expect(order).not.toContain(-1)
    expect(order).toEqual(order.toSorted((a, b) => a - b))
  })
})

describe("A baseline", () => {
  it("asks the cautions before atropine is considered (CD-010, CD-011, CD-012, CD-042)", () => {
    expect(names({ stage: "baseline" })).toEqual(
      expect.arrayContaining([
        "heart condition",
        "disease of the lungs or airways",
        "other medicines that act like atropine",
        "allergy to drops",
        "Down syndrome",
        "spastic paralysis",
        "brain injury",
        "other disease of the eye",
        "earlier operation on an eye",
      ]),
    )
  })

  it("measures what drops may change later, whether or not drops are planned (CD-014, CD-025, CD-026)", () => {
    expect(names({ stage: "baseline" })).toEqual(
      expect.arrayContaining([
        "near acuity",
        "photopic pupil",
        "mesopic pupil",
        "amplitude of accommodation",
      ]),
    )
  })

  it("looks at the angle before drops that widen the pupil, and at the fundus (CD-027, CD-030)", () => {
    expect(names({ stage: "baseline" })).toEqual(
      expect.arrayContaining(["angle of the anterior chamber", "fundus", "finding in the fundus"]),
    )
  })
})

describe("A safety check", () => {
  it("asks of effects, fever, missed drops and technique while drops are in use (CD-076, CD-059, CD-071, CD-065)", () => {
    expect(names({ stage: "safety-check", onAtropine: true })).toEqual(
      expect.arrayContaining([
        "effects on the whole body",
        "fever or great heat",
        "missed drops",
        "technique of the drops",
      ]),
    )
  })

  it("asks none of these without drops", () => {
    expect(names({ stage: "safety-check" })).not.toContain("missed drops")
  })

  it("measures no length", () => {
    expect(names({ stage: "safety-check", onAtropine: true, step: stepOf("start-check-1") })).not.toContain(
      "axial length",
    )
  })
})

describe("A review", () => {
  it("owes what the protocol's step measures, with the step as the reason", () => {
    const items = plan({ step: stepOf("start-review-6") }).items
    expect(items.find(({ name }) => name === "refraction with cycloplegia")?.why).toEqual([
      { from: "protocol", step: "6-month review" },
    ])
  })

  it("asks for the time of the cycloplegic drops only where there are some (CD-016)", () => {
    expect(names({ step: stepOf("start-review-6") })).toContain("time of the cycloplegic drops")
    expect(names({})).not.toContain("time of the cycloplegic drops")
  })

  it("explains the long-term risk once a year (CD-099)", () => {
    expect(names({})).toContain("explanation of the long-term risk")
    expect(names({ answeredThisYear: ["advice-long-term-risk"] })).not.toContain(
      "explanation of the long-term risk",
    )
  })
})

describe("A check after the stop", () => {
  it("asks nothing of the drops any more", () => {
    const asked = names({ stage: "washout", step: stepOf("after-stop-6") })
    expect(asked).toContain("axial length")
    expect(asked).not.toContain("missed drops")
  })
})

describe("A discharge", () => {
  it("agrees on later checks, since some go on growing as adults (CD-090)", () => {
    expect(names({ stage: "discharge" })).toContain("plan for later checks")
  })
})

describe("Signs that need care the same day", () => {
  it.each([...STAGES, null])("are asked about at every visit: %s", (stage) => {
    expect(names({ stage })).toEqual(expect.arrayContaining(signs))
  })

  it("stay asked about when every duty is switched off", () => {
    expect(names({ stage: "review", switches: { "CD-112": false, "CD-113": false } })).toEqual(
      expect.arrayContaining(signs),
    )
  })

  it("are all that an extra visit owes", () => {
    expect(names({ stage: null })).toEqual(signs)
  })
})

describe("Switches of the practice", () => {
  it("a row read in part is off until it is switched on: intraocular pressure (CD-028)", () => {
    expect(names({ stage: "baseline" })).not.toContain("intraocular pressure")
    expect(names({ stage: "baseline", switches: { "CD-028": true } })).toContain("intraocular pressure")
  })

  it("a row that rests on memory is off until it is switched on: what came back after the stop (CD-097)", () => {
    expect(names({ stage: "washout" })).not.toContain("photopic pupil")
    const on = plan({ stage: "washout", switches: { "CD-097": true } }).items
    expect(on.find(({ name }) => name === "photopic pupil")?.why).toEqual([
      { from: "duty", duty: "CD-097", status: "unverified" },
    ])
  })

  it("a verified row can be switched off: distance acuity (CD-013)", () => {
    expect(names({ switches: { "CD-013": false } })).not.toContain("distance acuity")
  })

  it("take nothing away that the protocol asks for", () => {
    const off = { "CD-018": false, "CD-074": false }
    expect(names({ switches: off, step: stepOf("start-review-6") })).toContain("axial length")
  })
})

describe("What is missing before a visit is saved", () => {
  const check = plan({ stage: null })
  const answers = signs.map((_, index) => ({
    question:
      check.items.flatMap((item) => (item.kind === "question" ? [item.question.id] : []))[index] ?? "",
    answer: "no" as const,
  }))

  it("is said by name, in the order of the room", () => {
    expect(missingFrom(check, { date: "2026-11-25" }).map(({ name }) => name)).toEqual(signs)
  })

  it("is nothing once all is answered", () => {
    expect(missingFrom(check, { date: "2026-11-25", answers })).toEqual([])
  })

  it("counts what was left out on purpose as answered", () => {
    const visit: Visit = { date: "2026-11-25", answers: [{ question: "curtain", answer: "not-done" }] }
    expect(missingFrom(check, visit).map(({ name }) => name)).not.toContain("curtain")
  })

  it("is no length that another visit of the same examination has, but every sign again", () => {
    const review = plan({ step: stepOf("start-review-6") })
    const length = { axialLength: { mm: 24.1 } }
    const first: Visit = { date: "2026-11-18", right: length, left: length, answers }
    const missing = missingFrom(review, { date: "2026-11-25" }, [first]).map(({ name }) => name)
    expect(missing).not.toContain("axial length")
    expect(missing).toEqual(expect.arrayContaining(signs))
  })

  it("names the eye when only one is missing", () => {
    const pressure = plan({ stage: "baseline", switches: { "CD-028": true } })
    const visit: Visit = { date: "2026-11-25", right: { intraocularPressure: { mmHg: 14 } } }
    expect(missingFrom(pressure, visit).map(({ name }) => name)).toEqual(
      expect.arrayContaining(["intraocular pressure (left eye)", "mesopic pupil", "axial length"]),
    )
  })
})
