import {
  type Consent,
  type Course,
  DECISION_KINDS,
  type Decision,
  type DecisionKind,
  type Eye,
  type EyeExamination,
  type Supply,
  TREATMENT_KINDS,
  type Treatment,
  type TreatmentChoice,
  type Visit,
} from "../../../src/engine/course.js"
import { treatmentName } from "../../../src/engine/treatment-name.js"

/** A story as the files in `scenarios/` tell it; the README there says how. */
export interface Scenario {
  readonly title: string
  readonly protocol: string
  readonly course: Course
  readonly days: readonly ExpectedDay[]
}

export interface ExpectedDay {
  readonly on: string
  readonly duties: readonly ExpectedDuty[]
}

export interface ExpectedDuty {
  readonly state: string
  readonly due: string
  readonly step: string
  /** Null where the story leaves them out. */
  readonly needs: string | null
}

export function parseScenario(text: string): Scenario {
  const lines = text.split("\n").filter((line) => line.trim() !== "")
  const title = lines[0] ?? ""
  const [, protocol = "", chosen] =
    /^Protocol: ([\w-]+)(, chosen for this child)?$/.exec(
      lines.find((line) => line.startsWith("Protocol:")) ?? "",
    ) ?? []
  const happened: Happened = { visits: [], treatments: [], consents: [], supplies: [], decisions: [] }
  const days: { on: string; duties: ExpectedDuty[] }[] = []
  for (const line of lines.slice(1)) {
    const event = /^(\d{4}-\d{2}-\d{2})\s+(.+)$/.exec(line)
    const day = /^On (\d{4}-\d{2}-\d{2})$/.exec(line)
    if (event) tell(happened, event[1]!, event[2]!)
    else if (day) days.push({ on: day[1]!, duties: [] })
    else if (/^\s/.test(line) && line.trim() !== "nothing") days.at(-1)!.duties.push(expectedDuty(line))
  }
  if (protocol === "" || days.length === 0) throw new Error(`${title}: no protocol or no day asked about`)
  const child = { born: "2016-05-02", sex: "female" as const, ...(chosen && { protocol }) }
  return { title, protocol, course: { lengthwise: 1, child, ...happened }, days }
}

/** The course as it was known on a day: treatments begun by then, and their ends only once they have come. */
export function knownOn(course: Course, today: string): Course {
  const treatments = (course.treatments ?? [])
    .filter(({ from }) => from <= today)
    .map(({ to, ...treatment }) => (to != null && to <= today ? { ...treatment, to } : treatment))
  return { ...course, treatments }
}

function expectedDuty(line: string): ExpectedDuty {
  const [, state, due, step, needs] =
    /^\s+(\w+)\s+(\d{4}-\d{2}-\d{2})\s+([^:]+?)(?:: (.+))?$/.exec(line) ?? []
  if (!state || !due || !step) throw new Error(`not a line of what is owed: ${line}`)
  return { state, due, step, needs: needs === "..." ? null : (needs ?? "") }
}

interface Happened {
  readonly visits: Visit[]
  readonly treatments: Treatment[]
  readonly consents: Consent[]
  readonly supplies: Supply[]
  readonly decisions: Decision[]
}

function tell(happened: Happened, date: string, words: string): void {
  const [event = "", refraction] = words.split("; refraction ")
  const sphere = refraction === undefined ? -2 : Number.parseFloat(refraction)
  const [, verb, rest = ""] =
    /^(seen|starts|ends|consents to|opens|decides:|everything)\s*,?\s*(.*)$/.exec(event) ?? []
  if (verb === "seen") happened.visits.push(visitOf(date, rest, sphere))
  else if (event === "everything measured elsewhere") {
    happened.visits.push({ ...visitOf(date, "everything measured", sphere), from: "another practice" })
  } else if (verb === "starts") happened.treatments.push({ from: date, ...given(rest) })
  else if (verb === "ends") {
    const index = happened.treatments.findLastIndex(
      (one) => one.to === undefined && isGiven(one, given(rest)),
    )
    if (index < 0) throw new Error(`nothing to end: ${words}`)
    happened.treatments[index] = { ...happened.treatments[index]!, to: date }
  } else if (verb === "consents to") happened.consents.push({ date, covers: given(rest) })
  else if (verb === "opens") {
    const [, drops = "", beyondUse] = /^a bottle of (.+?)(?:, good until (\S+))?$/.exec(rest) ?? []
    const { concentrationPercent } = given(drops)
    happened.supplies.push({ opened: date, concentrationPercent, ...(beyondUse && { beyondUse }) })
  } else if (verb === "decides:" && (DECISION_KINDS as readonly string[]).includes(rest)) {
    happened.decisions.push({ date, kind: rest as DecisionKind, reason: "told in a story" })
  } else throw new Error(`not an event: ${words}`)
}

type Given = TreatmentChoice & Pick<Treatment, "eye" | "nightsPerWeek">

function given(words: string): Given {
  const [, name, percent, eye, nights] =
    /^([a-z- ]+?)(?: ([\d.]+) %)?(?: in the (right|left) eye)?(?:, (\d) nights? a week)?$/.exec(words) ?? []
  const kind = TREATMENT_KINDS.find((one) => treatmentName({ kind: one }) === name)
  if (!kind) throw new Error(`not a treatment: ${words}`)
  return {
    kind,
    ...(percent && { concentrationPercent: Number(percent) }),
    ...(eye && { eye: eye as Eye }),
    ...(nights && { nightsPerWeek: Number(nights) }),
  }
}

const isGiven = (one: Treatment, wanted: Given): boolean =>
  one.kind === wanted.kind &&
  one.concentrationPercent === wanted.concentrationPercent &&
  one.eye === wanted.eye &&
  (wanted.nightsPerWeek === undefined || one.nightsPerWeek === wanted.nightsPerWeek)

const FIGURES: Readonly<Record<string, (sphere: number) => EyeExamination>> = {
  "axial length": () => ({ axialLength: { mm: 24.1 } }),
  refraction: (sphere) => ({ refraction: { sphere, cycloplegic: true } }),
  "photopic pupil": () => ({ pupil: { photopic: 3.8 } }),
  accommodation: () => ({ accommodation: { dioptres: 12, method: "push-up" } }),
  "near acuity": () => ({ acuity: { nearLogMAR: 0.1 } }),
  "distance acuity": () => ({ acuity: { distanceLogMAR: 0 } }),
}

function visitOf(date: string, words: string, sphere: number): Visit {
  const [, which, list = ""] = /^(everything measured|everything but|only) ?(.*)$/.exec(words) ?? []
  if (!which) throw new Error(`not a visit: ${words}`)
  const named = list.split(", ").filter((one) => one !== "")
  const names = [...Object.keys(FIGURES), "symptoms"]
  for (const one of named) {
    if (!names.includes(one.replace(/ \((right|left) eye\)$/, ""))) throw new Error(`not a figure: ${one}`)
  }
  const isNamed = (figure: string, eye: Eye) =>
    named.includes(figure) || named.includes(`${figure} (${eye} eye)`)
  const has = (figure: string, eye: Eye) => (which === "only") === isNamed(figure, eye)
  const examined = (eye: Eye): EyeExamination => {
    const figures = Object.entries(FIGURES)
      .filter(([figure]) => has(figure, eye))
      .map(([, figure]) => figure(sphere))
    const acuity = Object.assign({}, ...figures.map((figure) => figure.acuity))
    return { ...Object.assign({}, ...figures), ...(Object.keys(acuity).length > 0 && { acuity }) }
  }
  const symptoms = has("symptoms", "right") ? { symptoms: [] } : {}
  return { date, right: examined("right"), left: examined("left"), ...symptoms }
}
