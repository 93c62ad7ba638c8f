import type { CalendarDate, Course } from "../../engine/course.js"
import { noRules } from "../../engine/practice-rules.js"
import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import { isInUse, realTreatments } from "../../engine/protocol/treatment-course.js"
import { type AdverseEvent, adverseEvents, adverseEventTable } from "../../engine/safety/adverse-events.js"
import type { StartCaution } from "../../engine/safety/caution.js"
import { type Offer, offersFor } from "../../engine/safety/offers.js"
import { type OpenConcern, openConcerns } from "../../engine/safety/open-concerns.js"
import { startCautions } from "../../engine/safety/start-cautions.js"
import { SWITCHED_RULES } from "../../engine/safety/switched-concerns.js"
import { capitalised, sentence } from "../../engine/words.js"
import { duties } from "../../evidence/clinical.js"
import { evidence } from "../../evidence/index.js"
import { adverseEffects } from "../../evidence/treatments.js"
import { csvText } from "../../interop/table/csv-text.js"
import { courseInput } from "../course-input.js"
import type { ExitCode, Io } from "../io.js"
import { toldJson, toldProblems } from "../told.js"
import { CAUTION, dateInWords, paragraph, section } from "../words.js"

export interface SafetyArguments {
  readonly file: string
  readonly asOf?: CalendarDate | undefined
  readonly json?: boolean | undefined
  /** Only the adverse events, as a document of their own. */
  readonly adverseEvents?: boolean | undefined
  readonly format?: "csv" | "json" | undefined
}

const SAFETY_EVIDENCE = { adverseEffects, duties, effects: evidence.growth.effects }

/** What is open about a child's safety, what was not asked before drops, and the adverse events on record. */
export async function run(args: SafetyArguments, io: Io): Promise<ExitCode> {
  const { json = false } = args
  const input = await courseInput(args, io)
  if ("problems" in input) return toldProblems(input.problems, { io, json })
  const { course, asOf } = input
  const events = adverseEvents({ course, child: { number: course.child.id ?? null }, to: asOf })
  if (args.adverseEvents) {
    if (json || args.format === "json") return toldJson({ asOf, adverseEvents: events }, io)
    io.out(csvText(adverseEventTable(events)))
    return 0
  }
  const protocol = protocolFor({ course, today: asOf, rules: noRules })
  const open = openConcerns({ course, today: asOf, protocol }).map((concern) => ({
    ...concern,
    offers: offersFor({ concern, course, today: asOf, evidence: SAFETY_EVIDENCE }),
  }))
  const cautions = startCautions({ course, today: asOf, treatment: { kind: "atropine" } })
  if (json) {
    return toldJson(
      {
        asOf,
        concerns: open.filter(({ isRedFlag }) => !isRedFlag),
        redFlags: open.filter(({ isRedFlag }) => isRedFlag),
        cautions,
        notWatched: SWITCHED_RULES,
        adverseEvents: events,
      },
      io,
    )
  }
  io.out(safetyText({ course, asOf, open, cautions, events }))
  return 0
}

function safetyText({
  course,
  asOf,
  open,
  cautions,
  events,
}: {
  readonly course: Course
  readonly asOf: CalendarDate
  readonly open: readonly (OpenConcern & { readonly offers: readonly Offer[] })[]
  readonly cautions: readonly StartCaution[]
  readonly events: readonly AdverseEvent[]
}): string {
  const [flags, others] = [
    open.filter(({ isRedFlag }) => isRedFlag),
    open.filter(({ isRedFlag }) => !isRedFlag),
  ]
  const isOnDrops = realTreatments(course).some(
    (treatment) => treatment.kind === "atropine" && isInUse(treatment, asOf),
  )
  const heading = isOnDrops ? "Cautions of the drops in use" : "Cautions before drops are started"
  const of = (state: StartCaution["state"]) => cautions.filter((caution) => caution.state === state)
  return [
    section("Red flags: care on the same day", flags.map(concernInWords)),
    section(
      "Concerns",
      open.length === 0
        ? [`Nothing is open on ${dateInWords(asOf)}. What was not measured or asked raises nothing.`]
        : others.map(concernInWords),
    ),
    section("What can be considered", others.flatMap(offersInWords)),
    section(
      `${heading}: answered with yes`,
      of("asked-yes").map((caution) => sentence(`${caution.name}: ${yesInWords(caution)}`)),
    ),
    section(
      `${heading}: not asked yet`,
      of("not-asked").map(({ name, duty }) => `${capitalised(name)}${duty === null ? "" : ` (${duty})`}`),
    ),
    section(
      `${heading}: answered with no`,
      of("asked-no").map(({ name, on, note }) => `${capitalised(name)}, ${on}${note ? ` (${note})` : ""}`),
    ),
    section(
      "Not watched: off until a practice turns the duty on",
      SWITCHED_RULES.map(({ duty, what, figure, why }) => `${duty}, ${what}: ${figure}. ${sentence(why)}`),
    ),
    section("Adverse events", events.map(eventInWords)),
    paragraph(CAUTION, 0),
  ].join("")
}

function concernInWords({ what, since, recorded, owner }: OpenConcern): string {
  const kept =
    recorded === null
      ? "Not taken up yet."
      : `On record since ${since}, ${owner ? `looked after by ${owner}` : "without an owner"}.`
  return `${sentence(what)} ${kept}`
}

const offersInWords = ({ kind, offers }: { readonly kind: string; readonly offers: readonly Offer[] }) =>
  offers.map(
    ({ what, words, grade }) =>
      `${capitalised(kind.replaceAll("-", " "))}: ${[what, ...words].map(sentence).join(" ")} (${grade})`,
  )

const yesInWords = ({ on, note, says, duty, grade }: StartCaution): string =>
  `${on}${note ? ` (${note})` : ""}; ${says} (${duty === null ? "" : `${duty}, `}${grade})`

function eventInWords(event: AdverseEvent): string {
  const under = event.treatment === null ? "no treatment in use" : `under ${event.treatment}`
  const lot = event.lot === null ? "" : `, lot ${event.lot}`
  const end = event.closed === null ? "open" : `closed ${event.closed}: ${event.outcome}`
  return `${event.opened}, ${event.kind}: ${event.what} (${under}${lot}; ${event.seriousness ?? "seriousness not said"}; ${
    event.relatedness ?? "relatedness not said"
  }; ${end})`
}
