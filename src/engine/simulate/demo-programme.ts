import { addDays, ageYears } from "../calendar.js"
import type {
  Answer,
  BottleOrder,
  CalendarDate,
  Consent,
  Course,
  Decision,
  Explanation,
  MissedNights,
  SafetyConcern,
  Treatment,
  Visit,
} from "../course.js"
import { seenHere } from "../protocol/measured.js"
import { treatmentName } from "../treatment-name.js"
import type { Story } from "./demo-scenarios.js"
import type { Random } from "./random.js"

/** Every so many children something is left undone, so that a visitor sees work waiting. */
const UNTOLD_EVERY = 7
const UNDECIDED_EVERY = 4
const UNCONFIRMED_EVERY = 9
const CLOSED_CONCERN_EVERY = 6

/**
 * The programme around an invented child's measurements: what was decided, who consented, what the family was told,
 * what was ordered. Invented throughout, in words of an invented practice.
 */
export function withProgramme(
  course: Course,
  {
    story,
    index,
    today,
    random,
  }: { readonly story: Story; readonly index: number; readonly today: CalendarDate; readonly random: Random },
): Course {
  const reviews = course.visits.filter((visit) => seenHere(visit) && visit.right?.axialLength !== undefined)
  const lists = {
    missedNights: missedNights(course, story, today),
    decisions: decisions({ course, reviews, undecided: index % UNDECIDED_EVERY === 0 }),
    concerns: index % CLOSED_CONCERN_EVERY === 0 ? closedConcerns(course) : [],
    orders: index % UNCONFIRMED_EVERY === 0 ? orders(course, today) : [],
    explanations: explanations(reviews, index % UNTOLD_EVERY === 0),
  }
  const filled = Object.entries(lists).filter(([, items]) => items.length > 0)
  return {
    ...course,
    visits: course.visits.map((visit) => withAnswers({ visit, course, first: reviews[0], random })),
    ...(course.consents
      ? { consents: course.consents.map((consent) => signed(consent, course, random)) }
      : {}),
    ...Object.fromEntries(filled),
  }
}

function decisions({
  course,
  reviews,
  undecided,
}: {
  readonly course: Course
  readonly reviews: readonly Visit[]
  readonly undecided: boolean
}): readonly Decision[] {
  const treatments = course.treatments ?? []
  const made = reviews.flatMap(({ date }, index): Decision[] => {
    const begun = treatments.find(({ from }) => from >= date && from <= addDays(date, 21))
    const ended = treatments.find(({ to }) => to === date)
    if (begun) return [startOf({ begun, date, index, treatments })]
    if (ended)
      return [
        {
          date,
          kind: "stop",
          reason: "two years as planned; look again after six months",
          treatment: choice(ended),
        },
      ]
    const running = treatments.find(({ from, to }) => from <= date && (!to || date < to))
    if (running)
      return [
        {
          date,
          kind: "continue",
          reason: "well borne; the family wishes to go on",
          treatment: choice(running),
        },
      ]
    if (index === 0 && treatments.length === 0)
      return [{ date, kind: "decline", reason: "the family wishes to wait and measure again" }]
    return []
  })
  return undecided
    ? made.filter(({ date, kind }) => kind !== "continue" || date !== reviews.at(-1)?.date)
    : made
}

function startOf({
  begun,
  date,
  index,
  treatments,
}: {
  readonly begun: Treatment
  readonly date: CalendarDate
  readonly index: number
  readonly treatments: readonly Treatment[]
}): Decision {
  const before = treatments.find(({ from, to }) => from <= date && (!to || to >= date))
  const kind =
    before === undefined
      ? index === 0
        ? "start"
        : "restart"
      : before.kind === begun.kind
        ? "change-strength"
        : "add"
  const reason =
    kind === "change-strength"
      ? "the eye still grows; the stronger drop was discussed"
      : "growth discussed with the family, who chose this"
  return { date, kind, reason, treatment: choice(begun), offered: ["observation", treatmentName(begun)] }
}

const choice = ({ kind, concentrationPercent }: Treatment) =>
  concentrationPercent === undefined ? { kind } : { kind, concentrationPercent }

function explanations(reviews: readonly Visit[], lastIsUntold: boolean): readonly Explanation[] {
  const told = lastIsUntold ? reviews.slice(0, -1) : reviews
  return told.map(({ date }) => ({ date, to: "family" }))
}

function missedNights(course: Course, story: Story, today: CalendarDate): readonly MissedNights[] {
  const drops = course.treatments?.find(({ kind }) => kind === "atropine")
  const from = addDays(today, -60)
  if (story !== "poor-coverage" || !drops || drops.from > from) return []
  return [{ from, to: addDays(today, -31), nights: 6 }]
}

/** Light hurt for some weeks after the start and was closed at the next visit. */
function closedConcerns(course: Course): readonly SafetyConcern[] {
  const drops = course.treatments?.find(
    ({ kind, concentrationPercent }) => kind === "atropine" && concentrationPercent === 0.05,
  )
  const after = course.visits.filter(({ date }) => drops && date > drops.from)
  const [first, second] = after
  if (!first || !second) return []
  return [
    {
      opened: first.date,
      kind: "light-sensitivity",
      what: "Squints in bright sun since the drops were begun.",
      owner: "clinician",
      seriousness: "mild",
      relatedness: "probable",
      adverseEvent: true,
      closed: second.date,
      outcome: "Hat and tinted lenses; no complaint at the next visit.",
    },
  ]
}

function orders(course: Course, today: CalendarDate): readonly BottleOrder[] {
  const drops = course.treatments?.find(({ kind, to }) => kind === "atropine" && !to)
  if (drops?.concentrationPercent === undefined || drops.from > addDays(today, -30)) return []
  return [
    {
      date: addDays(today, -5),
      concentrationPercent: drops.concentrationPercent,
      bottles: 3,
      volumeMl: 5,
      pharmacy: "Ninth Well Pharmacy",
    },
  ]
}

function signed(consent: Consent, course: Course, random: Random): Consent {
  const isOldEnough = ageYears({ born: course.child.born, on: consent.date }) >= 7
  return {
    ...consent,
    by: { relation: random.pick(["mother", "father", "mother"]) },
    form: "paper",
    assent: isOldEnough ? "given" : "not-asked",
  }
}

const CAUTIONS = ["heart-condition", "allergy-drops", "down-syndrome", "narrow-angle"]
const RED_FLAGS = ["flashes", "floaters", "curtain", "eye-pain", "sudden-vision-loss"]

/** Cautions asked at the first visit here, warning signs and time outdoors at every full one. */
function withAnswers({
  visit,
  course,
  first,
  random,
}: {
  readonly visit: Visit
  readonly course: Course
  readonly first: Visit | undefined
  readonly random: Random
}): Visit {
  if (!seenHere(visit) || visit.right?.axialLength === undefined) return visit
  const no = (question: string): Answer => ({ question, answer: "no" })
  const hours = Math.round(2 * (0.7 + 1.4 * random.uniform())) / 2
  const answers: readonly Answer[] = [
    ...(visit === first && course.treatments?.some(({ kind }) => kind === "atropine")
      ? CAUTIONS.map(no)
      : []),
    ...RED_FLAGS.map(no),
    { question: "outdoor-hours", answer: "yes", value: hours },
  ]
  return { ...visit, answers }
}
