import type { Check } from "../assessment.js"
import type { Visit } from "../course.js"
import { EYES } from "../course.js"
import { withinAges } from "../growth/observations.js"
import type { Study } from "../growth/study.js"
import { sphericalEquivalent } from "../optics/spherical-equivalent.js"
import { doubtfulFigures } from "./doubtful-figures.js"

/** What to look at before the answers are believed: doubtful figures first, then what is missing. */
export function checks(study: Study, doubts = doubtfulFigures(study)): readonly Check[] {
  return [...doubts, ...signChanges(study), ...missing(study)]
}

/** Both eyes' worth of a change that no eye makes between two visits: more likely a lost minus sign. */
const SIGN_CHANGE_D = 1.5

function signChanges({ course, asOf }: Study): readonly Check[] {
  return EYES.flatMap((eye) => {
    const seen = course.visits.flatMap((visit, index) => {
      const refraction = visit[eye]?.refraction
      return refraction && visit.date <= asOf ? [{ index, date: visit.date, refraction }] : []
    })
    seen.sort((a, b) => (a.date < b.date ? -1 : 1))
    return seen.flatMap(({ index, date, refraction }, i) => {
      const before = seen[i - 1]
      if (!before) return []
      const opposite = Math.sign(refraction.sphere) === -Math.sign(before.refraction.sphere)
      const change = Math.abs(sphericalEquivalent(refraction) - sphericalEquivalent(before.refraction))
      if (!opposite || change < SIGN_CHANGE_D) return []
      return [
        {
          kind: "sign-changed",
          path: `visits[${index}].${eye}.refraction.sphere`,
          why:
            `the ${eye} eye has ${signed(refraction.sphere)} D on ${date} where ` +
            `${signed(before.refraction.sphere)} D stood on ${before.date}: is a sign lost?`,
        },
      ]
    })
  })
}

const signed = (dioptres: number): string => `${dioptres > 0 ? "+" : ""}${dioptres.toFixed(2)}`

function missing(study: Study): readonly Check[] {
  const { course, asOf, evidence } = study
  const { youngestAgeYears, oldestAgeYears } = evidence.growth.values
  const found: Check[] = []
  const say = (kind: string, path: string, why: string) => found.push({ kind, path, why })
  const paths = (wanted: (visit: Visit) => boolean) =>
    course.visits.flatMap((visit, i) => (wanted(visit) ? [`visits[${i}]`] : []))

  const known = (wanted: (visit: Visit) => boolean) => paths((visit) => visit.date <= asOf && wanted(visit))

  const later = paths((visit) => visit.date > asOf)
  if (later.length > 0) {
    say("after-as-of", later[0] as string, `${visits(later.length)} after ${asOf} left out of this answer`)
  }
  const outside = known((visit) => {
    const measured = EYES.some((eye) => visit[eye]?.axialLength || visit[eye]?.refraction)
    return measured && !withinAges({ born: course.child.born, on: visit.date }, evidence.growth)
  })
  if (outside.length > 0) {
    say(
      "outside-ages",
      outside[0] as string,
      `${visits(outside.length)} outside the ages ${youngestAgeYears.value} to ${oldestAgeYears.value} ` +
        "that the growth evidence covers: shown, and left out of the answers",
    )
  }
  const unnamed = known((visit) =>
    EYES.some((eye) => visit[eye]?.axialLength && !visit[eye].axialLength.method),
  )
  if (unnamed.length > 0) {
    say(
      "method-not-stated",
      `${unnamed[0]}`,
      `${visits(unnamed.length)} with a length whose method is not stated: taken as optical biometry`,
    )
  }
  const dry = known((visit) =>
    EYES.some((eye) => {
      const refraction = visit[eye]?.refraction
      return refraction?.method === "autorefraction" && refraction.cycloplegic !== true
    }),
  )
  if (dry.length > 0) {
    say(
      "not-cycloplegic",
      dry.at(-1) as string,
      `${visits(dry.length)} with autorefraction without cycloplegia: it makes children look more myopic, and before a treatment it counts for less`,
    )
  }
  if (study.myopia === "unknown") {
    say("refraction-missing", "visits", "no refraction is recorded: the child is taken as myopic")
  }
  if (course.practice?.latitude === undefined) {
    say(
      "latitude-missing",
      "practice.latitude",
      "the latitude is not stated: growth is not corrected for the season",
    )
  }
  if (course.child.ancestry === undefined || course.child.ancestry === "unstated") {
    say(
      "ancestry-unstated",
      "child.ancestry",
      "ancestry is not stated: natural growth is that of children who are not East Asian, which is the slower one",
    )
  }
  return found
}

const visits = (count: number): string => (count === 1 ? "1 visit" : `${count} visits`)
