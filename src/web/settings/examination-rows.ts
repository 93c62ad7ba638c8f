import { type ExaminationSwitch, examinationSwitches } from "../../engine/protocol/examination-switches.js"
import { STAGES, type Stage } from "../../engine/protocol/protocol.js"
import type { EvidenceStatus } from "../../engine/protocol/question.js"
import { SWITCHED_RULES } from "../../engine/safety/switched-concerns.js"
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
  verified: "a text that was read supports it.",
  partly: "the principle was read; an interval, a threshold or a list was not, so it is yours to decide.",
  unverified:
    "no text was read, general clinical knowledge only; it needs a clinician’s confirmation and a source.",
}

const ONLY_WORDS = {
  "on-atropine": "on atropine",
  "before-myopia": "before myopia",
  cycloplegia: "with cycloplegia",
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
    stages.length === STAGES.length ? "every visit" : stages.map((stage) => STAGE_WORDS[stage]).join(", ")
  const whom = only.map((part) => ONLY_WORDS[part]).join(", ")
  return {
    duty,
    status,
    asks,
    when: whom === "" ? where : `${where}; ${whom}`,
    words: row?.duty ?? words ?? "",
    statusWords: STATUS_WORDS[status],
    source: row ? readAs(row) : null,
    note: rule ? sentence(`on, it also raises a concern: ${rule.figure}; ${rule.why}`) : noteOf(row),
  }
}

function judgedRow({ duty, what, figure, why }: (typeof SWITCHED_RULES)[number]): SwitchRow {
  const row = carried.get(duty)
  return {
    duty,
    status: "partly",
    asks: [what],
    when: "whenever it is measured",
    words: sentence(`A concern is raised at ${figure}`),
    statusWords: STATUS_WORDS.partly,
    source: row ? readAs(row) : null,
    note: sentence(why),
  }
}

const readAs = ({ source_ids, how_obtained }: CarriedDuty): string =>
  `Source: ${source_ids.join(", ")}; read as ${how_obtained}.`

const noteOf = (row: CarriedDuty | undefined): string | null => (row?.note ? sentence(row.note) : null)
