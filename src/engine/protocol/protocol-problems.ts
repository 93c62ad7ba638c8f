import { TREATMENT_KINDS } from "../course.js"
import type { Problem } from "../problem.js"
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
  const say = (path: string, found: unknown, allowed: string) =>
    problems.push({
      path,
      value: found,
      allowed,
      message: `${path || "protocol"} must be ${allowed}; it is ${shown(found)}`,
    })
  if (!isObject(value)) {
    say("", value, "a JSON object")
    return problems
  }
  const check = checker(say)
  check(value, "", {
    id: TEXT,
    title: TEXT,
    version: TEXT,
    source: TEXT,
    longestPauseDays: DAYS,
    consentLeadDays: DAYS,
    bottleLeadDays: DAYS,
    bottleDaysAfterOpening: DAYS,
    steps: ["a list of at least one step", (steps) => Array.isArray(steps) && steps.length > 0],
  })
  if (!Array.isArray(value.steps)) return problems
  const firstWithId = new Map<unknown, number>()
  for (const [index, step] of (value.steps as readonly unknown[]).entries()) {
    const path = `steps[${index}]`
    if (!isObject(step)) {
      say(path, step, "a JSON object")
      continue
    }
    check(step, path, STEP_RULES)
    checkMeaning(step, path, say)
    const first = firstWithId.get(step.id)
    if (first === undefined) firstWithId.set(step.id, index)
    else if (isText(step.id)) say(`${path}.id`, step.id, `unlike every other id (steps[${first}] has it)`)
  }
  return problems
}

// Rules between the fields of one step, checked only where the fields themselves are sound.
function checkMeaning(step: Fields, path: string, say: Say): void {
  const isExamination = step.kind === "examination"
  if (isExamination && isEmptyList(step.measures) && isEmptyList(step.measuresOnAtropine)) {
    say(`${path}.measures`, step.measures, "at least one measure for an examination")
  }
  if (step.kind === "decision") {
    if (step.decides === undefined) say(`${path}.decides`, undefined, `one of ${DECIDES.join(", ")}`)
    if (!isEmptyList(step.measures)) say(`${path}.measures`, step.measures, "empty for a decision")
    if (step.restartsOnChange === true) say(`${path}.restartsOnChange`, true, "false for a decision")
  }
  const stepsDown = step.decides === "step-down"
  if (stepsDown !== (step.nightsPerWeek !== undefined)) {
    const allowed = stepsDown ? "the nights of the week from then on" : "absent, except for a step down"
    say(`${path}.nightsPerWeek`, step.nightsPerWeek, allowed)
  }
  if (stepsDown && step.anchor === "stop") say(`${path}.anchor`, "stop", "start or restart for a step down")
  if (step.anchor === "before-start" && step.offsetMonths !== 0) {
    say(`${path}.offsetMonths`, step.offsetMonths, "0 for a step before the start")
  }
  if (step.anchor === "before-start" && step.offsetDays !== undefined && step.offsetDays !== 0) {
    say(`${path}.offsetDays`, step.offsetDays, "0 or absent for a step before the start")
  }
  const isStanding = isText(step.anchor) && step.anchor.startsWith("last-visit")
  if (isStanding && step.offsetMonths === 0) {
    say(`${path}.offsetMonths`, 0, "at least 1 for a step counted from the last visit")
  }
  if ((isStanding || step.anchor === "before-start") && step.kind === "decision") {
    say(`${path}.anchor`, step.anchor, "start, restart or stop for a decision")
  }
}

type Say = (path: string, found: unknown, allowed: string) => void
type Rules = Readonly<Record<string, readonly [allowed: string, holds: Rule]>>

function checker(say: Say) {
  return (fields: Fields, path: string, rules: Rules) => {
    for (const [name, [allowed, holds]] of Object.entries(rules)) {
      if (!holds(fields[name])) say(path ? `${path}.${name}` : name, fields[name], allowed)
    }
    for (const name of Object.keys(fields)) {
      if (!(name in rules)) {
        say(
          path ? `${path}.${name}` : name,
          fields[name],
          `absent; known are ${Object.keys(rules).join(", ")}`,
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

const TEXT = ["a text that is not empty", isText] as const
const DAYS = [`a whole number of days from 0 to ${MOST_DAYS}`, isWhole(MOST_DAYS)] as const
const oneOf = (list: readonly string[]) => [`one of ${list.join(", ")}`, among(list)] as const
const listOf = (list: readonly string[]) =>
  [
    `a list of any of ${list.join(", ")}`,
    (value: unknown) => Array.isArray(value) && value.every(among(list)),
  ] as const

function orAbsent([allowed, holds]: readonly [string, Rule]): readonly [string, Rule] {
  return [`${allowed}, or absent`, (value) => value === undefined || holds(value)]
}

const TREATED = TREATMENT_KINDS.filter((kind) => kind !== "none")

const STEP_RULES: Rules = {
  id: TEXT,
  title: TEXT,
  kind: oneOf(STEP_KINDS),
  stage: orAbsent(oneOf(STAGES)),
  anchor: oneOf(ANCHORS),
  offsetMonths: [`a whole number of months from 0 to ${MOST_MONTHS}`, isWhole(MOST_MONTHS)],
  offsetDays: orAbsent(DAYS),
  windowDaysBefore: DAYS,
  windowDaysAfter: DAYS,
  measures: listOf(MEASURES),
  measuresOnAtropine: listOf(MEASURES),
  inForce: listOf(IN_FORCE),
  restartsOnChange: ["true or false", (value) => typeof value === "boolean"],
  onlyFor: orAbsent([
    `a list of at least one of ${TREATED.join(", ")}`,
    (value) => Array.isArray(value) && value.length > 0 && value.every(among(TREATED)),
  ]),
  decides: orAbsent(oneOf(DECIDES)),
  nightsPerWeek: orAbsent([
    "a whole number of nights from 1 to 6",
    (value) => isWhole(6)(value) && value !== 0,
  ]),
}

function shown(value: unknown): string {
  const text = value === undefined ? "missing" : (JSON.stringify(value) ?? String(value))
  return text.length > 60 ? `${text.slice(0, 60)}…` : text
}
