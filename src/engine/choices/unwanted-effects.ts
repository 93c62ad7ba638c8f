import type { TreatmentChoice } from "../course.js"
import type { SafetyEvidence } from "../safety/safety-evidence.js"
import { fixed } from "../words.js"

/** The document on unwanted effects, as published: names of fields as in the document. */
export type UnwantedEvidence = SafetyEvidence["adverseEffects"]

type Row = Readonly<Record<string, unknown>>

/** One trial's figures of what a treatment did that nobody wanted, beside those of its comparison. */
export interface UnwantedEffect {
  /** "CHAMP, 36 months" */
  readonly from: string
  readonly figures: readonly string[]
  /** Source id in the evidence; null for common practice without a source. */
  readonly source: string | null
}

const EVENTS: readonly (readonly [field: string, words: string])[] = [
  ["photophobia", "light sensitivity"],
  ["blurred_near", "blurred near vision"],
  ["blurred_vision", "blurred vision"],
  ["reading_problems", "trouble reading"],
  ["mydriasis", "wide pupil"],
  ["allergic_conjunctivitis", "allergic conjunctivitis"],
  ["eye_irritation", "irritated eyes"],
  ["headache", "headache"],
  ["stopped_for_event", "stopped for an unwanted effect"],
  ["stopped_by_12mo", "stopped within 12 months"],
]

const CONTACT_LENSES: readonly string[] = ["dual-focus-lens", "multifocal-lens", "orthokeratology"]
const NO_SOURCE = "common practice, no source"

/**
 * What was read of unwanted effects at exactly these strengths. An empty list means that nothing was read, never that
 * there is nothing. Rates of different trials cannot be compared: they asked in different ways.
 */
export function unwantedEffects(
  parts: readonly TreatmentChoice[],
  { physiology, events_percent }: UnwantedEvidence,
): readonly UnwantedEffect[] {
  const drops = parts.find(({ kind }) => kind === "atropine")?.concentrationPercent
  const withLenses = parts.length > 1 && parts.some(({ kind }) => kind === "orthokeratology")
  return [
    ...(drops === undefined
      ? []
      : [
          ...events_percent.filter((row) => row.arm === `atropine ${drops}%`).map(eventsOf(events_percent)),
          ...events_percent.filter((row) => text(row.finding).includes(`the ${drops}% arm`)).map(findingOf),
          ...physiology
            .filter((row) => row.concentration_percent === drops)
            .map(physiologyOf(physiology, drops)),
        ]),
    ...(withLenses ? physiology.filter((row) => text(row.trial).startsWith("AOK")).map(besideLenses) : []),
    ...(drops === 1
      ? [{ from: NO_SOURCE, figures: ["the pupil stays wide for about a week"], source: null }]
      : []),
    ...(parts.some(({ kind }) => CONTACT_LENSES.includes(kind))
      ? [
          {
            from: NO_SOURCE,
            figures: ["a lens on the eye: pain, redness or worse sight is looked at the same day"],
            source: null,
          },
        ]
      : []),
  ].filter(({ figures }) => figures.length > 0)
}

const text = (value: unknown): string => (typeof value === "string" ? value : "")
const number = (value: unknown): number | null => (typeof value === "number" ? value : null)
const sourceOf = ({ source }: Row): string | null =>
  typeof source === "string" ? `treatments/${source}` : null

function whereOf({ trial, months, n }: Row): string {
  const span = typeof months === "number" ? `${months} months` : text(months).replace(/ \(.*\)$/, "")
  const spanned = /^\d+$/.test(span) ? `${span} months` : span
  return [
    text(trial),
    ...(spanned ? [spanned] : []),
    ...(typeof n === "number" ? [`${n} children`] : []),
  ].join(", ")
}

const eventsOf =
  (rows: readonly Row[]) =>
  (row: Row): UnwantedEffect => {
    const control = rows.find(
      ({ trial, months, arm }) =>
        trial === row.trial && months === row.months && (arm === "placebo" || arm === "vehicle"),
    )
    const figures = EVENTS.flatMap(([field, words]) => {
      const rate = number(row[field])
      if (rate === null) return []
      const beside = number(control?.[field])
      return [`${words} ${rate} %${beside === null ? "" : ` (${text(control?.arm)} ${beside} %)`}`]
    })
    return { from: whereOf(row), figures, source: sourceOf(row) }
  }

const findingOf = (row: Row): UnwantedEffect => ({
  from: whereOf(row),
  figures: [
    text(row.finding)
      .replace(" mo loading", "-month loading")
      .replaceAll(" mo ", " months ")
      .replace(/(\d)%/g, "$1 %"),
  ],
  source: sourceOf(row),
})

const physiologyOf =
  (rows: readonly Row[], drops: number) =>
  (row: Row): UnwantedEffect => {
    const control = rows.find(
      ({ trial, months, concentration_percent }) =>
        drops !== 0 && trial === row.trial && months === row.months && concentration_percent === 0,
    )
    const pupil = number(row.photopic_pupil_increase_mm)
    const loss = number(row.accommodation_loss_D)
    const beside = number(control?.accommodation_loss_D)
    const range = Array.isArray(row.accommodation_loss_D_range) ? row.accommodation_loss_D_range : null
    return {
      from: whereOf(row),
      figures: [
        ...(pupil === null ? [] : [`pupil in bright light ${fixed(pupil)} mm wider`]),
        ...(loss === null
          ? []
          : [`accommodation ${fixed(loss)} D less${beside === null ? "" : ` (placebo ${fixed(beside)} D)`}`]),
        ...(range === null ? [] : [`accommodation ${range.join(" to ")} D less`]),
      ],
      source: sourceOf(row),
    }
  }

function besideLenses(row: Row): UnwantedEffect {
  const pupil = number(row.photopic_pupil_increase_mm)
  const beside = number(row.control_photopic)
  return {
    from: `AOK, ${String(row.months)} months, with orthokeratology`,
    figures:
      pupil === null
        ? []
        : [
            `pupil in bright light ${fixed(pupil)} mm wider${beside === null ? "" : ` (orthokeratology alone ${fixed(beside)} mm)`}`,
          ],
    source: sourceOf(row),
  }
}
