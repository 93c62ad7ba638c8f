import { type ExaminationSwitch, examinationSwitches } from "../../engine/protocol/examination-switches.js"
import { STAGES, type Stage } from "../../engine/protocol/protocol.js"
import type { EvidenceStatus } from "../../engine/protocol/question.js"
import { SWITCHED_RULES } from "../../engine/safety/switched-concerns.js"
import { msg, say } from "../../engine/say.js"
import { duties } from "../../evidence/clinical.js"
import { sentence } from "../format.js"
import { STAGE_WORDS } from "../visit/visit-plan.js"

/** One switch as it is shown. Words and sources are the evidence's own; nothing from memory is among them. */
export interface SwitchRow {
  readonly duty: string
  readonly status: EvidenceStatus
  readonly asks: readonly string[]
  /** At which stages and for whom. */
  readonly when: string
  readonly words: string
  readonly statusWords: string
  readonly source: string | null
  readonly note: string | null
}

interface CarriedDuty {
  readonly id: string
  readonly duty: string
  readonly evidence_status: string
  readonly how_obtained: string
  readonly source_ids: readonly string[]
  readonly note?: string
}

const carried: ReadonlyMap<string, CarriedDuty> = new Map(
  (duties.duties as readonly CarriedDuty[]).map((row) => [row.id, row]),
)

const STATUS_WORDS: Readonly<Record<EvidenceStatus, string>> = {
  verified: msg("a text that was read supports it."),
  partly: msg(
    "the principle was read; an interval, a threshold or a list was not, so it is yours to decide.",
  ),
  unverified: msg(
    "no text was read, general clinical knowledge only; it needs a clinician’s confirmation and a source.",
  ),
}

const ONLY_WORDS = {
  "on-atropine": msg("on atropine"),
  "before-myopia": msg("before myopia"),
  cycloplegia: msg("with cycloplegia"),
} as const

/** Every switch under the first stage at which it asks; those that only judge figures come last, under no stage. */
export function switchGroups(): readonly {
  readonly stage: Stage | null
  readonly rows: readonly SwitchRow[]
}[] {
  const switches = examinationSwitches()
  const judged = SWITCHED_RULES.filter(({ duty }) => !switches.some((row) => row.duty === duty))
  const groups = [
    ...STAGES.map((stage) => ({
      stage,
      rows: switches.filter(({ stages }) => stages[0] === stage).map(rowOf),
    })),
    { stage: null, rows: judged.map(judgedRow) },
  ]
  return groups.filter(({ rows }) => rows.length > 0)
}

/** The paper to record: a switch that stands as it would without one is left out. */
export function switchPaper(switches: Readonly<Record<string, boolean>>): Readonly<Record<string, boolean>> {
  const verified = new Set(
    examinationSwitches()
      .filter(({ status }) => status === "verified")
      .map(({ duty }) => duty),
  )
  return Object.fromEntries(Object.entries(switches).filter(([duty, isOn]) => isOn !== verified.has(duty)))
}

function rowOf({ duty, status, stages, only, asks, words }: ExaminationSwitch): SwitchRow {
  const row = carried.get(duty)
  const rule = SWITCHED_RULES.find((candidate) => candidate.duty === duty)
  const where =
    stages.length === STAGES.length
      ? say("every visit")
      : stages.map((stage) => say(STAGE_WORDS[stage])).join(", ")
  const whom = only.map((part) => say(ONLY_WORDS[part])).join(", ")
  return {
    duty,
    status,
    asks,
    when: whom === "" ? where : `${where}; ${whom}`,
    words: row?.duty ?? words ?? "",
    statusWords: say(STATUS_WORDS[status]),
    source: row ? readAs(row) : null,
    note: rule
      ? sentence(
          say("on, it also raises a concern: {figure}; {why}", {
            figure: say(rule.figure),
            why: say(rule.why),
          }),
        )
      : noteOf(row),
  }
}

function judgedRow({ duty, what, figure, why }: (typeof SWITCHED_RULES)[number]): SwitchRow {
  const row = carried.get(duty)
  return {
    duty,
    status: "partly",
    asks: [say(what)],
    when: say("whenever it is measured"),
    words: sentence(say("A concern is raised at {figure}", { figure: say(figure) })),
    statusWords: say(STATUS_WORDS.partly),
    source: row ? readAs(row) : null,
    note: sentence(say(why)),
  }
}

const readAs = ({ source_ids, how_obtained }: CarriedDuty): string =>
  say("Source: {sources}; read as {how}.", { sources: source_ids.join(", "), how: how_obtained })

const noteOf = (row: CarriedDuty | undefined): string | null => (row?.note ? sentence(row.note) : null)
