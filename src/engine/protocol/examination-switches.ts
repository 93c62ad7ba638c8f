import { msg, say } from "../say.js"
import { EXAMINATION_MEASURES } from "./examination-measures.js"
import { STAGES, type Stage } from "./protocol.js"
import type { EvidenceStatus, Owed } from "./question.js"
import { QUESTIONS } from "./questions.js"

/** A duty of the evidence that a practice may switch, with what it makes an examination ask. */
export interface ExaminationSwitch {
  readonly duty: string
  readonly status: EvidenceStatus
  readonly stages: readonly Stage[]
  /** To whom or to which examinations it is confined, where it is for none but these. */
  readonly only: readonly NonNullable<Owed["only"]>[]
  readonly asks: readonly string[]
  /** For a duty that no text was read for: what it is, in our own words, without a figure. */
  readonly words?: string
}

/** The evidence carries no text for these, so none is quoted. */
const UNREAD: Readonly<Record<string, string>> = {
  "CD-031": msg("Examine the fundus again while the programme goes on."),
  "CD-082": msg("Look at how the drops are given before doubting their effect."),
  "CD-097": msg("Look whether pupil, accommodation and near acuity came back after the stop."),
}

/** Every switch, in the order of the stages at which it first asks, then by id. */
export function examinationSwitches(): readonly ExaminationSwitch[] {
  const rows = [...QUESTIONS.filter(({ always }) => !always), ...EXAMINATION_MEASURES].flatMap(
    ({ name, owed }) => owed.map((row) => ({ name, row })),
  )
  const duties = [...new Set(rows.map(({ row }) => row.duty))].toSorted()
  return duties
    .map((duty) => {
      const own = rows.filter(({ row }) => row.duty === duty)
      const words = UNREAD[duty]
      return {
        duty,
        status: own[0]!.row.status,
        stages: STAGES.filter((stage) => own.some(({ row }) => row.stages.includes(stage))),
        only: confinedTo(own.map(({ row }) => row)),
        asks: [...new Set(own.map(({ name }) => say(name)))],
        ...(words === undefined ? {} : { words: say(words) }),
      }
    })
    .toSorted((a, b) => STAGES.indexOf(a.stages[0]!) - STAGES.indexOf(b.stages[0]!))
}

function confinedTo(rows: readonly Owed[]): ExaminationSwitch["only"] {
  if (rows.some(({ only }) => only === undefined)) return []
  return [...new Set(rows.flatMap(({ only }) => only ?? []))]
}
