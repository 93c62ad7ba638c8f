import { assess } from "../../../src/engine/assess.js"
import type { Assessment, PracticeSettings } from "../../../src/engine/assessment.js"
import { addMonths } from "../../../src/engine/calendar.js"
import type {
  CalendarDate,
  Child,
  Course,
  EyeExamination,
  Refraction,
  Treatment,
  Visit,
} from "../../../src/engine/course.js"
import { evidence } from "../../../src/evidence/index.js"

/**
 * The invented girl of this chapter: East Asian, born on 15 December 2015, so 8 and a half on 15 June 2024. Untreated
 * such an eye is expected to grow 0.41 mm in the year after that day and 0.36 mm in the next; without myopia 0.11 and 0.09 mm.
 */
const she: Child = { born: "2015-12-15", sex: "female", ancestry: "east-asian" }

/** The day on which treatment begins in most courses of this chapter. */
export const START = "2024-06-15"

export const drops = (concentrationPercent: number, from = START, to?: CalendarDate): Treatment => ({
  kind: "atropine",
  concentrationPercent,
  from,
  ...(to ? { to } : {}),
})

export const withCycloplegia = (sphere: number): Refraction => ({
  sphere,
  cycloplegic: true,
  method: "autorefraction",
})

type Measured = Partial<Omit<NonNullable<EyeExamination["axialLength"]>, "mm">>

/** Lengths of one day, mm: the left eye as given, the right eye 0.10 mm longer unless it is given too. */
export function lengths(
  date: CalendarDate,
  leftMm: number,
  rightMm = leftMm + 0.1,
  how: Measured = {},
): Visit {
  const eye = (mm: number): EyeExamination => ({
    axialLength: { mm: Number(mm.toFixed(3)), method: "optical-biometry", device: "A", ...how },
  })
  return { date, right: eye(rightMm), left: eye(leftMm) }
}

/** Lengths at half-yearly visits from a day on; the left eye's are written down, the right eye is 0.10 mm longer. */
export const halfYearly = (
  from: CalendarDate,
  leftMm: readonly number[],
  how: Measured = {},
): readonly Visit[] => leftMm.map((mm, i) => lengths(addMonths(from, 6 * i), mm, mm + 0.1, how))

/** A visit at which the same refraction of both eyes is written down as well. */
export function refracted(visit: Visit, refraction: Refraction): Visit {
  return { ...visit, right: { ...visit.right, refraction }, left: { ...visit.left, refraction } }
}

/** An old prescription of both eyes, found without drops by asking "better or worse". */
export const oldGlasses = (date: CalendarDate, sphere: number): Visit =>
  refracted({ date, from: "old glasses" }, { sphere, method: "subjective" })

export interface Story {
  readonly child?: Partial<Child>
  readonly visits: readonly Visit[]
  readonly treatments?: readonly Treatment[]
  readonly supplies?: Course["supplies"]
  readonly missedNights?: Course["missedNights"]
  readonly latitude?: number
  /** Spherical equivalent of both eyes at the first visit; null where nobody refracted. */
  readonly refractionD?: number | null
}

export function courseOf(story: Story): Course {
  const { child, visits, treatments, supplies, missedNights, latitude, refractionD = -2 } = story
  const [first, ...later] = visits
  return {
    lengthwise: 1,
    child: { ...she, ...child },
    ...(latitude === undefined ? {} : { practice: { latitude } }),
    visits:
      first && refractionD !== null ? [refracted(first, withCycloplegia(refractionD)), ...later] : visits,
    ...(treatments ? { treatments } : {}),
    ...(supplies ? { supplies } : {}),
    ...(missedNights ? { missedNights } : {}),
  }
}

/** What is said of a child on a day; on the day of the last visit unless another is named. */
export function asked(story: Story, on?: CalendarDate, settings?: PracticeSettings): Assessment {
  const course = courseOf(story)
  const last = course.visits
    .map(({ date }) => date)
    .toSorted()
    .at(-1) as CalendarDate
  return assess({ course, asOf: on ?? last, evidence, ...(settings ? { settings } : {}) })
}

export const kindsOf = (answer: Assessment): readonly string[] => answer.checks.map(({ kind }) => kind)
