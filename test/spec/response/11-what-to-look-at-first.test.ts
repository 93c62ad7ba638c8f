import { describe, expect, it } from "vitest"
import type { Visit } from "../../../src/engine/course.js"
import { forecast } from "../../../src/engine/forecast.js"
import { evidence } from "../../../src/evidence/index.js"
import { asked, courseOf, drops, halfYearly, kindsOf, lengths, refracted, withCycloplegia } from "./child.js"

const even = halfYearly("2024-06-15", [24, 24.21, 24.41, 24.6, 24.78])
const replaced = (place: number, visit: Visit) => even.map((one, i) => (i === place ? visit : one))

describe("What is missing is said, never guessed in silence", () => {
  const complete = { visits: even, latitude: 51.5 }

  it("a complete course has nothing to say", () => {
    expect(asked(complete).checks).toEqual([])
  })

  it("no latitude: no season is counted", () => {
    expect(asked({ visits: even }).checks).toEqual([
      {
        kind: "latitude-missing",
        path: "practice.latitude",
        why: expect.stringMatching(/not corrected for the season/),
      },
    ])
  })

  it.each([undefined, "unstated"] as const)(
    "no ancestry (%s): the slower natural growth is used",
    (ancestry) => {
      const answer = asked({ ...complete, child: { ancestry } })
      expect(answer.checks).toEqual([
        { kind: "ancestry-unstated", path: "child.ancestry", why: expect.stringMatching(/the slower one$/) },
      ])
      expect(answer.growth.naturalMmPerYear).toBeLessThan(asked(complete).growth.naturalMmPerYear as number)
    },
  )

  it("no method of a length: taken as optical biometry", () => {
    const unnamed = lengths("2025-06-15", 24.41, 24.51, { method: undefined })
    const answer = asked({ ...complete, visits: replaced(2, unnamed) })
    expect(answer.checks).toEqual([
      {
        kind: "method-not-stated",
        path: "visits[2]",
        why: expect.stringMatching(/^1 visit .* optical biometry$/),
      },
    ])
    expect(answer.growth).toEqual(asked(complete).growth)
  })

  it("autorefraction without cycloplegia: counts for less", () => {
    const dry = refracted(even[2] as Visit, { sphere: -2.5, method: "autorefraction" })
    expect(asked({ ...complete, visits: replaced(2, dry) }).checks).toEqual([
      {
        kind: "not-cycloplegic",
        path: "visits[2]",
        why: expect.stringMatching(/more myopic, and before a treatment it counts for less$/),
      },
    ])
  })

  it("a visit before the sixth birthday: shown, and left out of the answers", () => {
    const early = lengths("2021-06-15", 22)
    const answer = asked({ ...complete, visits: [early, ...even] })
    expect(answer.checks).toEqual([
      {
        kind: "outside-ages",
        path: "visits[0]",
        why: expect.stringMatching(/ages 6 to 18 .* left out of the answers$/),
      },
    ])
    expect(answer.growth.mmPerYear).toBeCloseTo(asked(complete).growth.mmPerYear as number, 9)
  })
})

describe("Right and left exchanged", () => {
  // Eyes half a millimetre apart, exchanged at the fourth visit.
  const apart = even.map(({ date, left }) =>
    lengths(date, left?.axialLength?.mm as number, (left?.axialLength?.mm as number) + 0.5),
  )
  const exchanged = apart.map((visit, i) =>
    i === 3 ? { ...visit, right: visit.left, left: visit.right } : visit,
  )

  it("is named once, with its day and how much better the other way fits", () => {
    const { checks } = asked({ visits: exchanged, latitude: 51.5 })
    expect(checks).toEqual([
      {
        kind: "eyes-exchanged",
        path: "visits[3]",
        why: expect.stringMatching(
          /^right and left look exchanged on 2025-12-15: .* times better the other way round$/,
        ),
      },
    ])
  })

  it("is not said of eyes that are only unlike", () => {
    expect(asked({ visits: apart, latitude: 51.5 }).checks).toEqual([])
  })
})

describe("A figure that does not fit the child's others", () => {
  it("one eye 0.8 mm too long is named, with the eye and the day", () => {
    const { checks } = asked({ visits: replaced(2, lengths("2025-06-15", 24.41, 25.31)), latitude: 51.5 })
    expect(checks).toEqual([
      {
        kind: "implausible-change",
        path: "visits[2].right.axialLength",
        why: expect.stringMatching(/^the right eye's length of 25\.31 mm on 2025-06-15 does not go/),
      },
    ])
  })

  it("both eyes too long are named together: perhaps another child's", () => {
    const { checks } = asked({ visits: replaced(2, lengths("2025-06-15", 25.2)), latitude: 51.5 })
    expect(checks).toEqual([expect.objectContaining({ kind: "implausible-change", path: "visits[2]" })])
  })

  it("0.1 mm in one eye or in both is not named: measurement and chance explain it", () => {
    for (const [leftMm, rightMm] of [
      [24.41, 24.61],
      [24.51, 24.61],
    ] as const) {
      const visits = replaced(2, lengths("2025-06-15", leftMm, rightMm))
      expect(asked({ visits, latitude: 51.5 }).checks).toEqual([])
    }
  })
})

describe("While a figure is in doubt", () => {
  const treated = halfYearly("2024-06-15", [24, 24.03, 24.05, 24.07, 24.08])
  const wrong = treated.map((visit, i) => (i === 2 ? lengths("2025-06-15", 24.9) : visit))
  const asEntered = (visits: readonly Visit[]) => asked({ visits, treatments: [drops(0.05)], latitude: 51.5 })
  const wait = "a figure of 2025-06-15 is in doubt: no answer until it has been measured again or put right"

  it("the growth is unclear, and the reason names the visit", () => {
    expect(asEntered(treated).growth.state).not.toBe("unclear")
    expect(asEntered(wrong).growth).toMatchObject({ state: "unclear", probabilities: null, reasons: [wait] })
  })

  it("nothing is said for or against the treatment", () => {
    expect(asEntered(treated).finding.lean).toBe("slowed")
    expect(asEntered(wrong).finding).toMatchObject({ state: "cannot-tell-yet", lean: null })
  })

  it("it is in doubt no more once it was measured again and stands, though it stays named", () => {
    const answers = [{ question: "figures-measured-again", answer: "yes" as const }]
    const again = wrong.map((visit, i) => (i === 2 ? { ...visit, answers } : visit))
    expect(asEntered(again).growth.reasons).not.toContain(wait)
    expect(kindsOf(asEntered(again))).toContain("implausible-change")
    const no = wrong.map((visit, i) =>
      i === 2 ? { ...visit, answers: [{ ...answers[0]!, answer: "no" as const }] } : visit,
    )
    expect(asEntered(no).growth.reasons).toEqual([wait])
  })

  it("a child that truly grows fast gets its answer that way, and is not left unclear", () => {
    const fast = halfYearly("2024-06-15", [24, 24.15, 24.3, 24.45, 25.4])
    const answers = [{ question: "figures-measured-again", answer: "yes" as const }]
    const last = fast.map((visit, i) => (i === 4 ? { ...visit, answers } : visit))
    expect(asked({ visits: fast, latitude: 51.5 }).growth.state).toBe("unclear")
    expect(asked({ visits: last, latitude: 51.5 }).growth.state).toBe("faster")
  })

  it("the forecast says so first", () => {
    const course = courseOf({ visits: wrong, treatments: [drops(0.05)], latitude: 51.5 })
    const { notes } = forecast({ course, asOf: "2026-06-15", evidence, toAgeYears: 18 })
    expect(notes[0]).toBe("a figure of 2025-06-15 is in doubt: check it before this forecast is used")
  })
})

describe("A lost minus sign", () => {
  const later = (sphere: number) =>
    asked({ visits: replaced(2, refracted(even[2] as Visit, withCycloplegia(sphere))), latitude: 51.5 })

  it("+2.25 where -2.00 stood is asked about, at either eye", () => {
    const { checks } = later(2.25)
    expect(checks.filter(({ kind }) => kind === "sign-changed")).toEqual([
      {
        kind: "sign-changed",
        path: "visits[2].right.refraction.sphere",
        why: "the right eye has +2.25 D on 2025-06-15 where -2.00 D stood on 2024-06-15: is a sign lost?",
      },
      expect.objectContaining({ path: "visits[2].left.refraction.sphere" }),
    ])
  })

  it("-2.75 is not", () => expect(kindsOf(later(-2.75))).not.toContain("sign-changed"))

  it("nor is a small step across zero, from -0.25 to +0.50", () => {
    const visits = replaced(2, refracted(even[2] as Visit, withCycloplegia(0.5)))
    expect(kindsOf(asked({ visits, refractionD: -0.25 }))).not.toContain("sign-changed")
  })
})

describe("A check never changes the course", () => {
  it("the figures stay as entered", () => {
    const story = { visits: replaced(2, lengths("2025-06-15", 24.41, 25.31)) }
    const before = JSON.stringify(courseOf(story))
    const course = courseOf(story)
    asked(story)
    expect(JSON.stringify(course)).toBe(before)
  })
})
