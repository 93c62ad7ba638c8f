import { describe, expect, it } from "vitest"
import { child, drops, fullVisit, visitWithout } from "./child.js"

// Treatment began on 10 January 2025: the 6-month review is due on 10 July, its window runs from 10 June to 9 August.
const started = (...later: ReturnType<typeof fullVisit>[]) => ({
  treatments: [drops("2025-01-10", 0.05)],
  visits: [fullVisit("2025-01-10"), fullVisit("2025-02-10"), ...later],
})

describe("A review has a window", () => {
  it.each([
    ["2025-06-09", "upcoming"],
    ["2025-06-10", "open"],
    ["2025-07-10", "open"],
    ["2025-08-09", "open"],
    ["2025-08-10", "overdue"],
  ])("on %s the 6-month review without a visit is %s", (today, state) => {
    expect(child(started()).on(today).state("6-month review")).toBe(state)
  })

  it("and is missed once the window of the next one opens", () => {
    expect(child(started()).on("2025-12-10").state("6-month review")).toBe("overdue")
    const then = child(started()).on("2025-12-11")
    expect(then.state("6-month review")).toBe("missed")
    expect(then.state("12-month review")).toBe("open")
  })

  it("and is done by a visit on any day of the window", () => {
    for (const day of ["2025-06-10", "2025-07-01", "2025-08-09"]) {
      expect(
        child(started(fullVisit(day)))
          .on(day)
          .state("6-month review"),
      ).toBe("done")
    }
  })
})

describe("A visit outside every window counts for the step whose due date is nearest", () => {
  it("an early visit at 4 months is the 6-month review", () => {
    expect(
      child(started(fullVisit("2025-05-10")))
        .on("2025-05-10")
        .state("6-month review"),
    ).toBe("done")
  })

  it("a late visit at 8 months is still the 6-month review", () => {
    const then = child(started(fullVisit("2025-09-10"))).on("2025-09-10")
    expect(then.state("6-month review")).toBe("done")
    expect(then.state("12-month review")).toBe("upcoming")
  })

  it("a visit at 10 months is the 12-month review done early, and the 6-month review was missed", () => {
    const then = child(started(fullVisit("2025-11-10"))).on("2025-11-10")
    expect(then.state("12-month review")).toBe("done")
    expect(then.state("6-month review")).toBe("missed")
  })
})

describe("A visit that leaves something out does not finish a step", () => {
  it("the step stays open and names what is missing", () => {
    const visit = visitWithout("2025-07-10", "pupil", "symptoms")
    const duty = child(started(visit)).on("2025-07-11").duty("6-month review")
    expect(duty.state).toBe("open")
    expect(duty.needs.slice(0, 2)).toEqual(["symptoms", "photopic pupil"])
  })

  it("a refraction without cycloplegia is named", () => {
    const eye = { ...fullVisit("2025-07-10").right, refraction: { sphere: -2, cycloplegic: false } }
    const visit = { ...fullVisit("2025-07-10"), right: eye, left: eye }
    expect(child(started(visit)).on("2025-07-11").duty("6-month review").needs).toContain(
      "refraction with cycloplegia",
    )
  })

  it("an eye left out is named", () => {
    const visit = { ...fullVisit("2025-07-10"), left: {} }
    expect(child(started(visit)).on("2025-07-11").duty("6-month review").needs).toContain(
      "axial length (left eye)",
    )
  })

  it("it is overdue when the window closes", () => {
    const visit = visitWithout("2025-07-10", "axialLength")
    expect(child(started(visit)).on("2025-08-10").state("6-month review")).toBe("overdue")
  })

  it("it is done when a second visit supplies the rest", () => {
    const visits = [visitWithout("2025-07-10", "axialLength"), visitWithout("2025-07-17", "refraction")]
    expect(
      child(started(...visits))
        .on("2025-07-17")
        .state("6-month review"),
    ).toBe("done")
  })
})

describe("Missing two reviews in a row", () => {
  it("leaves both missed and the third one owed", () => {
    const then = child(started()).on("2026-07-01")
    expect(then.examinations("missed")).toEqual(["6-month review", "12-month review"])
    expect(then.state("18-month review")).toBe("open")
  })
})

describe("The day of the question", () => {
  it("hides every visit after it", () => {
    expect(
      child(started(fullVisit("2025-07-10")))
        .on("2025-07-09")
        .state("6-month review"),
    ).toBe("open")
  })

  it("does not depend on the order of the visits in the file", () => {
    const story = started(fullVisit("2025-07-10"))
    const turned = { ...story, visits: [...story.visits].reverse() }
    expect(child(turned).on("2026-01-01").duties).toEqual(child(story).on("2026-01-01").duties)
  })
})

describe("Figures that were not measured here", () => {
  const oldGlasses = {
    date: "2023-05-01",
    from: "old glasses",
    right: { refraction: { sphere: -1 } },
    left: { refraction: { sphere: -1 } },
  }

  it("are no visit: a child known by old glasses alone still owes a first visit, today", () => {
    const then = child({ visits: [oldGlasses] }).on("2025-01-10")
    expect(then.duty("baseline")).toMatchObject({ due: "2025-01-10", state: "open" })
    expect(then.steps).toEqual(["baseline"])
  })

  it("do not bring the next observation forward", () => {
    const then = child({ visits: [oldGlasses, fullVisit("2025-01-10")] }).on("2025-02-01")
    expect(then.duty("observation").due).toBe("2025-07-10")
  })
})
