import { describe, expect, it } from "vitest"
import { assess } from "../../src/engine/assess.js"
import type { Assessment, Duty, Forecast } from "../../src/engine/assessment.js"
import type { Course } from "../../src/engine/course.js"
import { forecast } from "../../src/engine/forecast.js"
import { duties } from "../../src/engine/protocol/duties.js"
import { standardProtocol } from "../../src/engine/protocol/standard.js"
import { type DemoChild, demoCourses } from "../../src/engine/simulate/demo.js"
import { evidence } from "../../src/evidence/index.js"
import { readCourse } from "../../src/interop/course/read-course.js"

/** Either side of midsummer and midwinter, a leap day, a weekend; and more than one seed. */
const DAYS = [
  { today: "2026-11-25", seed: 7 },
  { today: "2027-06-20", seed: 7 },
  { today: "2028-02-29", seed: 11 },
] as const

const made = new Map<string, readonly DemoChild[]>()
function practiceOn({ today, seed }: { today: string; seed: number }): readonly DemoChild[] {
  const key = `${today}/${seed}`
  const known = made.get(key) ?? demoCourses({ today, seed, evidence })
  made.set(key, known)
  return known
}

const storyOf = ({ course }: DemoChild) => (course.child.id ?? "").replace(/-\d+$/, "")

describe.each(DAYS)("the invented practice on $today, seed $seed", ({ today, seed }) => {
  const children = practiceOn({ today, seed })
  const courses = children.map(({ course }) => course)

  it("has about 60 children, each with a name and number of its own", () => {
    expect(children.length).toBeGreaterThanOrEqual(55)
    expect(new Set(children.map(({ name }) => name)).size).toBe(children.length)
    expect(children[0]?.number).toBe("LW-0001")
    expect(new Set(children.map(({ number }) => number)).size).toBe(children.length)
  })

  it("has children of every ancestry the course file knows", () => {
    expect(new Set(courses.map(({ child }) => child.ancestry))).toEqual(
      new Set(["east-asian", "european", "south-asian", "african", "other", "unstated"]),
    )
  })

  it.each(children.map((child) => [child.course.child.id, child] as const))(
    "writes a course file that is read back whole: %s",
    (_, { course }) => {
      expect(readCourse(JSON.stringify(course), { today })).toMatchObject({ notes: [] })
      expect(readCourse(JSON.stringify(course), { today })).toHaveProperty("course", withoutNulls(course))
    },
  )

  it("dates nothing that has happened after today", () => {
    const dates = courses.flatMap((course) => [
      ...course.visits.map(({ date }) => date),
      ...(course.treatments ?? []).map(({ from }) => from),
      ...(course.supplies ?? []).flatMap(({ dispensed, opened }) => [dispensed ?? "", opened ?? ""]),
      ...(course.consents ?? []).map(({ date }) => date),
    ])
    expect(dates.filter((date) => date > today)).toEqual([])
  })

  it("measures as instruments print: lengths in hundredths, refractions in quarters", () => {
    const eyes = courses.flatMap(({ visits }) => visits.flatMap(({ right, left }) => [right, left]))
    const lengths = eyes.flatMap((eye) => eye?.axialLength?.mm ?? [])
    const powers = eyes.flatMap((eye) =>
      eye?.refraction ? [eye.refraction.sphere, eye.refraction.cylinder ?? 0] : [],
    )
    expect(lengths.filter((mm) => mm !== Number(mm.toFixed(2)))).toEqual([])
    expect(powers.filter((dioptres) => !Number.isInteger(4 * dioptres))).toEqual([])
    expect(Math.min(...lengths)).toBeGreaterThan(20.5)
    expect(Math.max(...lengths)).toBeLessThan(27.5)
  })

  it("has drops and pupils that go together: wider on the drop than before it", () => {
    const onStrong = courses.filter(({ treatments }) =>
      treatments?.some((t) => t.concentrationPercent === 0.05 && !t.to),
    )
    const widened = onStrong.flatMap(({ visits, treatments }) => {
      const start = treatments?.find((t) => t.concentrationPercent === 0.05)?.from ?? ""
      const pupil = (when: (date: string) => boolean) =>
        visits.findLast((visit) => when(visit.date) && visit.right?.pupil)?.right?.pupil?.photopic
      const [before, after] = [pupil((date) => date <= start), pupil((date) => date > start)]
      return before === undefined || after === undefined ? [] : [after - before]
    })
    expect(widened.length).toBeGreaterThan(10)
    expect(Math.min(...widened)).toBeGreaterThan(0)
  })

  it("gives a visitor something to do: visits, bottles and decisions are owed", () => {
    const owed = courses
      .flatMap((course) => duties({ course, protocol: standardProtocol, today }))
      .filter(({ state }) => state === "open" || state === "overdue")
    expect(new Set(owed.map(({ kind }) => kind))).toEqual(
      new Set(["bottle", "consent", "decision", "examination"]),
    )
    expect(owed.filter(({ state }) => state === "overdue").length).toBeGreaterThanOrEqual(3)
  })

  const told = children.map((child) => {
    const { course } = child
    return {
      story: storyOf(child),
      id: course.child.id,
      seen: {
        course,
        assessment: assess({ course, asOf: today, evidence }),
        ahead: forecast({ course, asOf: today, evidence, toAgeYears: 18 }),
        owed: duties({ course, protocol: standardProtocol, today }).filter(
          ({ state }) => state === "open" || state === "overdue",
        ),
      },
    }
  })

  it("tells every story", () => {
    expect(new Set(told.map(({ story }) => story))).toEqual(new Set(Object.keys(STORIES)))
  })

  it.each(told)("shows what it promises: $id", ({ story, seen }) => {
    STORIES[story]?.(seen)
  })

  it("has a slip of the hand only where the story has one", () => {
    const slips = told.filter(
      ({ seen, story }) =>
        story !== "exchanged-eyes" &&
        story !== "lost-sign" &&
        seen.assessment.checks.some(({ kind }) =>
          ["eyes-exchanged", "sign-changed", "implausible-change"].includes(kind),
        ),
    )
    expect(slips.map(({ id }) => id)).toEqual([])
  })
})

describe("the seed", () => {
  const day = DAYS[0]

  it("gives the same children every time", () => {
    expect(demoCourses({ ...day, evidence })).toEqual(practiceOn(day))
  })

  it("gives other measurements when it is another", () => {
    const other = demoCourses({ today: day.today, seed: 8, evidence })
    expect(other.map(({ course }) => course)).not.toEqual(practiceOn(day).map(({ course }) => course))
  })
})

interface Seen {
  readonly course: Course
  readonly assessment: Assessment
  readonly ahead: Forecast
  readonly owed: readonly Duty[]
}

const undecided = ({ assessment }: Seen) => expect(assessment.finding.state).toBe("cannot-tell-yet")
const growing =
  (state: string) =>
  ({ assessment }: Seen) =>
    expect(assessment.growth.state).toBe(state)
const leaning =
  (lean: string | null) =>
  ({ assessment }: Seen) => {
    expect(assessment.finding.state).toBe("cannot-tell-yet")
    expect(assessment.finding.lean).toBe(lean)
  }
const stopped = ({ course }: Seen) =>
  expect(course.treatments?.every(({ to }) => typeof to === "string")).toBe(true)
const warning =
  (kind: string) =>
  ({ assessment }: Seen) =>
    expect(assessment.checks.map((check) => check.kind)).toContain(kind)
const both =
  (...tellings: readonly ((seen: Seen) => void)[]) =>
  (seen: Seen) => {
    for (const telling of tellings) telling(seen)
  }

const STORIES: Readonly<Record<string, (seen: Seen) => void>> = {
  slowed: ({ assessment }) => expect(assessment.finding.state).toBe("slowed"),
  "lean-slowed": leaning("slowed"),
  "not-slowed": ({ assessment }) => expect(assessment.finding.state).toBe("not-slowed"),
  "lean-not-slowed": leaning("not-slowed"),
  "too-early": both(leaning(null), ({ course }) =>
    expect(course.visits.filter(({ right }) => right?.axialLength)).toHaveLength(1),
  ),
  "weak-drop": both(leaning(null), ({ course }) =>
    expect(course.treatments?.[0]?.concentrationPercent).toBe(0.01),
  ),
  "stopped-near-normal": both(stopped, growing("near-normal")),
  "stopped-rebound": both(stopped, growing("faster")),
  "stopped-loss-of-effect": both(stopped, growing("as-untreated")),
  "changed-instrument": both(undecided, ({ course }) =>
    expect(new Set(course.visits.flatMap(({ right }) => right?.axialLength?.device ?? []))).toEqual(
      new Set(["Biometer A", "Biometer B"]),
    ),
  ),
  "ultrasound-first": both(undecided, ({ course }) =>
    expect(course.visits[0]?.right?.axialLength?.method).toBe("ultrasound"),
  ),
  "missed-visits": both(undecided, ({ owed }) =>
    expect(owed.some(({ state, kind }) => state === "overdue" && kind === "examination")).toBe(true),
  ),
  "pre-myopic": both(
    ({ assessment }) => expect(assessment.finding.state).toBe("no-treatment"),
    ({ ahead }) => expect(ahead.refused).toContain("not myopic"),
  ),
  optical: ({ course, assessment }) => {
    expect(course.treatments?.[0]?.kind).not.toBe("atropine")
    expect(assessment.finding.state).not.toBe("not-slowed")
  },
  combined: ({ assessment }) => expect(assessment.finding.treatment).toContain(" with "),
  "stronger-drop": ({ course, assessment }) => {
    expect(course.treatments?.map(({ concentrationPercent }) => concentrationPercent)).toEqual([0.01, 0.05])
    expect(assessment.finding.treatment).toBe("atropine 0.05 %")
  },
  watched: both(
    ({ assessment }) => expect(assessment.finding.state).toBe("no-treatment"),
    ({ ahead }) => expect(ahead.refused).toBeUndefined(),
  ),
  "poor-coverage": ({ assessment }) =>
    expect(assessment.finding.reasons.join()).toMatch(/only \d+ % of nights had a bottle in date/),
  "exchanged-eyes": warning("eyes-exchanged"),
  "lost-sign": warning("sign-changed"),
  "light-sensitivity": ({ assessment }) =>
    expect(assessment.concerns.map(({ why }) => why).join()).toContain("Light sensitivity grade 2"),
  "fast-grower": growing("faster"),
  "growth-ending": ({ assessment }) => expect(assessment.growth.reasons.join()).toContain("growth is ending"),
  "one-eye": ({ assessment }) => {
    expect(assessment.eyes.left.length).toBeNull()
    expect(assessment.eyes.right.rate).not.toBeNull()
  },
  "too-young": ({ assessment }) => expect(assessment.refused).toContain("covers children of 6 to 18 years"),
}

/** The reader takes a null end as absent. */
function withoutNulls(course: Course): unknown {
  return JSON.parse(JSON.stringify(course, (_, value) => value ?? undefined))
}
