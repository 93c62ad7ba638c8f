import { TREATMENT_KINDS } from "../course.js"
import type { Problem } from "../problem.js"
import { say } from "../say.js"
import { ANCHORS, DECIDES, IN_FORCE, MEASURES, STAGES, STEP_KINDS } from "./protocol.js"

type Fields = Readonly<Record<string, unknown>>
type Rule = (value: unknown) => boolean

/** Longest offset and window that is still a protocol for a child. Ours, to catch slips such as days given as months. */
const MOST_MONTHS = 240
const MOST_DAYS = 366

/**
 * Everything wrong with a protocol read from a file, each with its path, its value and what is allowed.
 * Empty when the value is a `Protocol`.
 *
 * @example
 * protocolProblems(standardProtocol) // => []
 */
export function protocolProblems(value: unknown): readonly Problem[] {
  const problems: Problem[] = []
  const tell: Tell = (path, found, allowed) =>
    problems.push({
      path,
      value: found,
      allowed,
      message: say("{path} must be {allowed}; it is {value}", {
        path: path || say("protocol|file"),
        allowed,
        value: shown(found),
      }),
    })
  if (!isObject(value)) {
    tell("", value, say("a JSON object"))
    return problems
  }
  const check = checker(tell)
  check(value, "", {
    id: TEXT,
    title: TEXT,
    version: TEXT,
    source: TEXT,
    longestPauseDays: DAYS,
    consentLeadDays: DAYS,
    bottleLeadDays: DAYS,
    bottleDaysAfterOpening: DAYS,
    steps: [() => say("a list of at least one step"), (steps) => Array.isArray(steps) && steps.length > 0],
  })
  if (!Array.isArray(value.steps)) return problems
  const firstWithId = new Map<unknown, number>()
  for (const [index, step] of (value.steps as readonly unknown[]).entries()) {
    const path = `steps[${index}]`
    if (!isObject(step)) {
      tell(path, step, say("a JSON object"))
      continue
    }
    check(step, path, STEP_RULES)
    checkMeaning(step, path, tell)
    const first = firstWithId.get(step.id)
    if (first === undefined) firstWithId.set(step.id, index)
    else if (isText(step.id)) {
      const allowed = say("unlike every other id ({place} has it)", { place: `steps[${first}]` })
      tell(`${path}.id`, step.id, allowed)
    }
  }
  return problems
}

// Rules between the fields of one step, checked only where the fields themselves are sound.
function checkMeaning(step: Fields, path: string, tell: Tell): void {
  const isExamination = step.kind === "examination"
  if (isExamination && isEmptyList(step.measures) && isEmptyList(step.measuresOnAtropine)) {
    tell(`${path}.measures`, step.measures, say("at least one measure for an examination"))
  }
  if (step.kind === "decision") {
    if (step.decides === undefined)
      tell(`${path}.decides`, undefined, say("one of {list}", { list: DECIDES.join(", ") }))
    if (!isEmptyList(step.measures)) tell(`${path}.measures`, step.measures, say("empty for a decision"))
    if (step.restartsOnChange === true) tell(`${path}.restartsOnChange`, true, say("false for a decision"))
  }
  const stepsDown = step.decides === "step-down"
  if (stepsDown !== (step.nightsPerWeek !== undefined)) {
    const allowed = stepsDown
      ? say("the nights of the week from then on")
      : say("absent, except for a step down")
    tell(`${path}.nightsPerWeek`, step.nightsPerWeek, allowed)
  }
  if (stepsDown && step.anchor === "stop")
    tell(`${path}.anchor`, "stop", say("start or restart for a step down"))
  if (step.anchor === "before-start" && step.offsetMonths !== 0) {
    tell(`${path}.offsetMonths`, step.offsetMonths, say("0 for a step before the start"))
  }
  if (step.anchor === "before-start" && step.offsetDays !== undefined && step.offsetDays !== 0) {
    tell(`${path}.offsetDays`, step.offsetDays, say("0 or absent for a step before the start"))
  }
  const isStanding = isText(step.anchor) && step.anchor.startsWith("last-visit")
  if (isStanding && step.offsetMonths === 0) {
    tell(`${path}.offsetMonths`, 0, say("at least 1 for a step counted from the last visit"))
  }
  if ((isStanding || step.anchor === "before-start") && step.kind === "decision") {
    tell(`${path}.anchor`, step.anchor, say("start, restart or stop for a decision"))
  }
}

type Tell = (path: string, found: unknown, allowed: string) => void
type Rules = Readonly<Record<string, readonly [allowed: () => string, holds: Rule]>>

function checker(tell: Tell) {
  return (fields: Fields, path: string, rules: Rules) => {
    for (const [name, [allowed, holds]] of Object.entries(rules)) {
      if (!holds(fields[name])) tell(path ? `${path}.${name}` : name, fields[name], allowed())
    }
    for (const name of Object.keys(fields)) {
      if (!(name in rules)) {
        tell(
          path ? `${path}.${name}` : name,
          fields[name],
          say("absent; known are {names}", { names: Object.keys(rules).join(", ") }),
        )
      }
    }
  }
}

const isObject = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value)
const isText = (value: unknown): value is string => typeof value === "string" && value.trim() !== ""
const isEmptyList = (value: unknown) => Array.isArray(value) && value.length === 0
const isWhole = (most: number) => (value: unknown) =>
  Number.isInteger(value) && (value as number) >= 0 && (value as number) <= most
const among = (list: readonly string[]) => (value: unknown) => list.includes(value as string)

const TEXT = [() => say("a text that is not empty"), isText] as const
const DAYS = [
  () => say("a whole number of days from 0 to {most}", { most: MOST_DAYS }),
  isWhole(MOST_DAYS),
] as const
const oneOf = (list: readonly string[]) =>
  [() => say("one of {list}", { list: list.join(", ") }), among(list)] as const
const listOf = (list: readonly string[]) =>
  [
    () => say("a list of any of {list}", { list: list.join(", ") }),
    (value: unknown) => Array.isArray(value) && value.every(among(list)),
  ] as const

function orAbsent([allowed, holds]: Rules[string]): Rules[string] {
  return [
    () => say("{allowed}, or absent", { allowed: allowed() }),
    (value) => value === undefined || holds(value),
  ]
}

const TREATED = TREATMENT_KINDS.filter((kind) => kind !== "none")

const STEP_RULES: Rules = {
  id: TEXT,
  title: TEXT,
  kind: oneOf(STEP_KINDS),
  stage: orAbsent(oneOf(STAGES)),
  anchor: oneOf(ANCHORS),
  offsetMonths: [
    () => say("a whole number of months from 0 to {most}", { most: MOST_MONTHS }),
    isWhole(MOST_MONTHS),
  ],
  offsetDays: orAbsent(DAYS),
  windowDaysBefore: DAYS,
  windowDaysAfter: DAYS,
  measures: listOf(MEASURES),
  measuresOnAtropine: listOf(MEASURES),
  inForce: listOf(IN_FORCE),
  restartsOnChange: [() => say("true or false"), (value) => typeof value === "boolean"],
  onlyFor: orAbsent([
    () => say("a list of at least one of {list}", { list: TREATED.join(", ") }),
    (value) => Array.isArray(value) && value.length > 0 && value.every(among(TREATED)),
  ]),
  decides: orAbsent(oneOf(DECIDES)),
  nightsPerWeek: orAbsent([
    () => say("a whole number of nights from 1 to 6"),
    (value) => isWhole(6)(value) && value !== 0,
  ]),
}

function shown(value: unknown): string {
  const text = value === undefined ? say("missing|value") : (JSON.stringify(value) ?? String(value))
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}
