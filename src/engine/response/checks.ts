import type { Check } from "../assessment.js"
import type { Visit } from "../course.js"
import { EYES } from "../course.js"
import { withinAges } from "../growth/observations.js"
import type { Study } from "../growth/study.js"
import { sphericalEquivalent } from "../optics/spherical-equivalent.js"
import { say } from "../say.js"
import { fixed } from "../words.js"
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
          why: say(
            "the {eye, select, right {right} other {left}} eye has {now} D on {date} where {before} D stood on {day}: is a sign lost?",
            {
              eye,
              now: signed(refraction.sphere),
              date,
              before: signed(before.refraction.sphere),
              day: before.date,
            },
          ),
        },
      ]
    })
  })
}

const signed = (dioptres: number): string => `${dioptres > 0 ? "+" : ""}${fixed(dioptres)}`

function missing(study: Study): readonly Check[] {
  const { course, asOf, evidence } = study
  const { youngestAgeYears, oldestAgeYears } = evidence.growth.values
  const found: Check[] = []
  const lacks = (kind: string, path: string, why: string) => found.push({ kind, path, why })
  const paths = (wanted: (visit: Visit) => boolean) =>
    course.visits.flatMap((visit, i) => (wanted(visit) ? [`visits[${i}]`] : []))

  const known = (wanted: (visit: Visit) => boolean) => paths((visit) => visit.date <= asOf && wanted(visit))

  const later = paths((visit) => visit.date > asOf)
  if (later.length > 0) {
    lacks(
      "after-as-of",
      later[0] as string,
      say("{count, plural, one {# visit} other {# visits}} after {asOf} left out of this answer", {
        count: later.length,
        asOf,
      }),
    )
  }
  const outside = known((visit) => {
    const measured = EYES.some((eye) => visit[eye]?.axialLength || visit[eye]?.refraction)
    return measured && !withinAges({ born: course.child.born, on: visit.date }, evidence.growth)
  })
  if (outside.length > 0) {
    lacks(
      "outside-ages",
      outside[0] as string,
      say(
        "{count, plural, one {# visit} other {# visits}} outside the ages {youngest} to {oldest} that the growth evidence covers: shown, and left out of the answers",
        { count: outside.length, youngest: youngestAgeYears.value, oldest: oldestAgeYears.value },
      ),
    )
  }
  const unnamed = known((visit) =>
    EYES.some((eye) => visit[eye]?.axialLength && !visit[eye].axialLength.method),
  )
  if (unnamed.length > 0) {
    lacks(
      "method-not-stated",
      `${unnamed[0]}`,
      say(
        "{count, plural, one {# visit} other {# visits}} with a length whose method is not stated: taken as optical biometry",
        { count: unnamed.length },
      ),
    )
  }
  const dry = known((visit) =>
    EYES.some((eye) => {
      const refraction = visit[eye]?.refraction
      return refraction?.method === "autorefraction" && refraction.cycloplegic !== true
    }),
  )
  if (dry.length > 0) {
    lacks(
      "not-cycloplegic",
      dry.at(-1) as string,
      say(
        "{count, plural, one {# visit} other {# visits}} with autorefraction without cycloplegia: it makes children look more myopic, and before a treatment it counts for less",
        { count: dry.length },
      ),
    )
  }
  if (study.myopia === "unknown") {
    lacks("refraction-missing", "visits", say("no refraction is recorded: the child is taken as myopic"))
  }
  if (course.practice?.latitude === undefined) {
    lacks(
      "latitude-missing",
      "practice.latitude",
      say("the latitude is not stated: growth is not corrected for the season"),
    )
  }
  if (course.child.ancestry === undefined || course.child.ancestry === "unstated") {
    lacks(
      "ancestry-unstated",
      "child.ancestry",
      say(
        "ancestry is not stated: natural growth is that of children who are not East Asian, which is the slower one",
      ),
    )
  }
  return found
}
