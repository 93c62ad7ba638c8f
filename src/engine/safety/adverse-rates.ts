import { msg, say } from "../say.js"
import { inDigits } from "../words.js"
import { inRow } from "./in-row.js"
import { obtainedInWords } from "./obtained.js"
import type { EventRow, PhysiologyRow, SafetyEvidence } from "./safety-evidence.js"

const FIELD_WORDS: Readonly<Record<string, string>> = {
  photophobia: msg("light sensitivity"),
  blurred_near: msg("blurred near vision"),
  blurred_vision: msg("blurred vision"),
  allergic_conjunctivitis: msg("allergic conjunctivitis"),
  eye_irritation: msg("irritation of the eye"),
  headache: msg("headache"),
}

/**
 * What the trials report of one unwanted effect by strength, a sentence for each trial: rates of different trials were
 * asked for in different ways and are never put beside each other. A trial of one arm counts only at the strength in use.
 *
 * `field` is a column of adverse-effects.json, or "pupil" or "accommodation" for how far the drops changed them.
 */
export function rateSentences({
  field,
  evidence: { adverseEffects },
  percent,
}: {
  readonly field: string
  readonly evidence: SafetyEvidence
  /** The strength in use, % w/v. */
  readonly percent?: number | undefined
}): readonly string[] {
  if (field === "pupil") return changeSentences(adverseEffects.physiology, PUPIL)
  if (field === "accommodation") return changeSentences(adverseEffects.physiology, AMPLITUDE)
  const known = FIELD_WORDS[field]
  const name = known === undefined ? field : say(known)
  const rows = adverseEffects.events_percent.filter((row) => typeof row[field] === "number" && row.arm)
  const sentences = [...new Set(rows.map(({ trial }) => trial))].flatMap((trial) => {
    const arms = rows.filter((row) => row.trial === trial)
    const isOfUse = arms.length > 1 || arms.some((row) => percentOf(row) === percent)
    if (!isOfUse) return []
    const rates = inRow(
      arms.map((row) =>
        say("{rate} % on {arm}", { rate: inDigits(Number(row[field])), arm: armInWords(row) }),
      ),
    )
    const values = { trial: trialInWords(trial, arms[0]), name, rates }
    const { source, how_obtained } = arms[0] ?? {}
    return [
      source === undefined
        ? say("{trial}: {name} in {rates}.", values)
        : say("{trial}: {name} in {rates} ({source}, {obtained}).", {
            ...values,
            source,
            obtained: obtainedInWords(how_obtained ?? ""),
          }),
    ]
  })
  return sentences.length > 1
    ? [...sentences, say("The trials asked in different ways: rates compare only within one trial.")]
    : sentences
}

interface Change {
  readonly of: (row: PhysiologyRow) => number | undefined
  /** One arm's mean. */
  readonly mean: string
  /** The whole sentence. */
  readonly sentence: string
}

const PUPIL: Change = {
  of: (row) => row.photopic_pupil_increase_mm,
  mean: msg("{mean} mm on {arm}"),
  sentence: msg("{trial}: the photopic pupil widened by {means} on average ({source}, abstract)."),
}
const AMPLITUDE: Change = {
  of: (row) => row.accommodation_loss_D,
  mean: msg("{mean} D on {arm}"),
  sentence: msg("{trial}: accommodation fell by {means} on average ({source}, abstract)."),
}

/** Mean changes by strength within a trial; a trial of which one arm alone was read compares nothing. */
function changeSentences(rows: readonly PhysiologyRow[], { of, mean, sentence }: Change): readonly string[] {
  const read = rows.filter((row) => of(row) !== undefined && row.concentration_percent !== undefined)
  return [...new Set(read.flatMap(({ trial }) => trial ?? []))].map((trial) => {
    const arms = read.filter((row) => row.trial === trial)
    const means = arms.map((row) =>
      say(mean, {
        mean: inDigits(of(row) ?? 0),
        arm: row.concentration_percent === 0 ? say("placebo") : strength(row.concentration_percent ?? 0),
      }),
    )
    return say(sentence, {
      trial: trialInWords(trial, arms[0]),
      means: inRow(means),
      source: arms[0]?.source ?? "",
    })
  })
}

const percentOf = ({ arm = "" }: EventRow): number | undefined => {
  const written = /([\d.]+)%/.exec(arm)?.[1]
  return written === undefined ? undefined : Number(written)
}

const strength = (percent: number): string => say("{percent} %", { percent: inDigits(percent) })

/** An arm as its row names it: "placebo", "atropine 0.01%", "tapering 0.01%". */
function armInWords(row: EventRow): string {
  const { arm = "" } = row
  const percent = percentOf(row)
  if (arm === "placebo") return say("placebo")
  if (arm === "vehicle") return say("vehicle|of a trial")
  if (percent === undefined) return arm
  if (arm === `tapering ${percent}%`) return say("tapering {percent} %", { percent: inDigits(percent) })
  return arm === `atropine ${percent}%` ? strength(percent) : arm.replace("atropine ", "").replace("%", " %")
}

/** A trial with the time its figures are of: "CHAMP, 36 months"; some rows say "48 (dosing)" or "year 3". */
function trialInWords(trial: string, row: { readonly months?: number | string } | undefined): string {
  const months = row?.months
  if (months === undefined) return trial
  if (typeof months === "number")
    return say("{trial}, {months, plural, one {# month} other {# months}}", { trial, months })
  const dosing = /^(\d+) \(dosing\)$/.exec(months)?.[1]
  if (dosing !== undefined) return say("{trial}, {months} months (dosing)", { trial, months: dosing })
  const year = /^year (\d+)$/.exec(months)?.[1]
  return year === undefined ? `${trial}, ${months}` : say("{trial}, year {year}", { trial, year })
}
