import type { EventRow, PhysiologyRow, SafetyEvidence } from "./safety-evidence.js"

const FIELD_WORDS: Readonly<Record<string, string>> = {
  photophobia: "light sensitivity",
  blurred_near: "blurred near vision",
  blurred_vision: "blurred vision",
  allergic_conjunctivitis: "allergic conjunctivitis",
  eye_irritation: "irritation of the eye",
  headache: "headache",
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
  const name = FIELD_WORDS[field] ?? field
  const rows = adverseEffects.events_percent.filter((row) => typeof row[field] === "number" && row.arm)
  const sentences = [...new Set(rows.map(({ trial }) => trial))].flatMap((trial) => {
    const arms = rows.filter((row) => row.trial === trial)
    const isOfUse = arms.length > 1 || arms.some((row) => percentOf(row) === percent)
    if (!isOfUse) return []
    const rates = arms.map((row) => `${row[field]} % on ${armInWords(row)}`).join(", ")
    return [`${trial}${monthsOf(arms[0])}: ${name} in ${rates}${sourceOf(arms[0])}.`]
  })
  return sentences.length > 1 ? [...sentences, WITHIN_ONE] : sentences
}

const WITHIN_ONE = "The trials asked in different ways: rates compare only within one trial."

interface Change {
  readonly name: string
  readonly of: (row: PhysiologyRow) => number | undefined
  readonly unit: string
}

const PUPIL: Change = {
  name: "the photopic pupil widened by",
  of: (row) => row.photopic_pupil_increase_mm,
  unit: "mm",
}
const AMPLITUDE: Change = {
  name: "accommodation fell by",
  of: (row) => row.accommodation_loss_D,
  unit: "D",
}

/** Mean changes by strength within a trial; a trial of which one arm alone was read compares nothing. */
function changeSentences(rows: readonly PhysiologyRow[], { name, of, unit }: Change): readonly string[] {
  const read = rows.filter((row) => of(row) !== undefined && row.concentration_percent !== undefined)
  return [...new Set(read.flatMap(({ trial }) => trial ?? []))].map((trial) => {
    const arms = read.filter((row) => row.trial === trial)
    const means = arms
      .map(
        (row) =>
          `${of(row)} ${unit} on ${row.concentration_percent === 0 ? "placebo" : `${row.concentration_percent} %`}`,
      )
      .join(", ")
    return `${trial}${monthsOf(arms[0])}: ${name} ${means} on average (${arms[0]?.source}, abstract).`
  })
}

const percentOf = ({ arm = "" }: EventRow): number | undefined => {
  const written = /([\d.]+)%/.exec(arm)?.[1]
  return written === undefined ? undefined : Number(written)
}

const armInWords = ({ arm = "" }: EventRow): string => arm.replace("atropine ", "").replace("%", " %")

function monthsOf(row: { readonly months?: number | string } | undefined): string {
  if (row?.months === undefined) return ""
  return typeof row.months === "number"
    ? `, ${row.months} months`
    : `, ${row.months.replace(/^(\d+) \(/, "$1 months (")}`
}

const sourceOf = (row: EventRow | undefined): string =>
  row?.source === undefined ? "" : ` (${row.source}, ${row.how_obtained})`
