import type { TreatmentChoice } from "../course.js"
import type { SafetyEvidence } from "../safety/safety-evidence.js"
import { msg, say } from "../say.js"
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
  ["photophobia", msg("light sensitivity")],
  ["blurred_near", msg("blurred near vision")],
  ["blurred_vision", msg("blurred vision")],
  ["reading_problems", msg("trouble reading")],
  ["mydriasis", msg("wide pupil")],
  ["allergic_conjunctivitis", msg("allergic conjunctivitis")],
  ["eye_irritation", msg("irritated eyes")],
  ["headache", msg("headache")],
  ["stopped_for_event", msg("stopped for an unwanted effect")],
  ["stopped_by_12mo", msg("stopped within 12 months")],
]

const CONTACT_LENSES: readonly string[] = ["dual-focus-lens", "multifocal-lens", "orthokeratology"]
const NO_SOURCE = msg("common practice, no source")
/** Arms that others are compared with. */
const CONTROLS: Readonly<Record<string, string>> = {
  placebo: msg("placebo"),
  vehicle: msg("vehicle|of a trial"),
}
/** Findings of the document in its own words, so that the languages are asked for them. */
const FINDINGS: readonly string[] = [
  msg(
    "108 events in the 6-month loading period (mostly the 0.1 % arm), 14 in the 6 months after the switch to 0.01 %",
  ),
]

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
      ? [
          {
            from: say(NO_SOURCE),
            figures: [say("the pupil stays wide for about a week")],
            source: null,
          },
        ]
      : []),
    ...(parts.some(({ kind }) => CONTACT_LENSES.includes(kind))
      ? [
          {
            from: say(NO_SOURCE),
            figures: [say("a lens on the eye: pain, redness or worse sight is looked at the same day")],
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
  const span = spanInWords(months)
  return [
    text(trial),
    ...(span ? [span] : []),
    ...(typeof n === "number" ? [say("{n, plural, one {# child} other {# children}}", { n })] : []),
  ].join(", ")
}

/** "36 months", "year 3" */
function spanInWords(months: unknown): string {
  const span = String(months ?? "").replace(/ \(.*\)$/, "")
  if (/^\d+$/.test(span)) return inMonths(Number(span))
  const year = /^year (\d+)$/.exec(span)?.[1]
  return year === undefined ? span : say("year {year}", { year })
}

const inMonths = (months: number): string =>
  say("{months, plural, one {# month} other {# months}}", { months })

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
      const event = say(words)
      return [
        beside === null
          ? say("{event} {rate} %", { event, rate })
          : say("{event} {rate} % ({arm} {beside} %)", {
              event,
              rate,
              arm: say(CONTROLS[text(control?.arm)] ?? text(control?.arm)),
              beside,
            }),
      ]
    })
    return { from: whereOf(row), figures, source: sourceOf(row) }
  }

function findingOf(row: Row): UnwantedEffect {
  const finding = text(row.finding)
    .replace(" mo loading", "-month loading")
    .replaceAll(" mo ", " months ")
    .replace(/(\d)%/g, "$1 %")
  return {
    from: whereOf(row),
    figures: [FINDINGS.includes(finding) ? say(finding) : finding],
    source: sourceOf(row),
  }
}

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
    const [low, high] = Array.isArray(row.accommodation_loss_D_range) ? row.accommodation_loss_D_range : []
    return {
      from: whereOf(row),
      figures: [
        ...(pupil === null ? [] : [say("pupil in bright light {mm} mm wider", { mm: fixed(pupil) })]),
        ...(loss === null ? [] : [accommodationInWords(loss, beside)]),
        ...(number(low) === null || number(high) === null
          ? []
          : [say("accommodation {low} to {high} D less", { low, high })]),
      ],
      source: sourceOf(row),
    }
  }

const accommodationInWords = (loss: number, beside: number | null): string =>
  beside === null
    ? say("accommodation {loss} D less", { loss: fixed(loss) })
    : say("accommodation {loss} D less (placebo {beside} D)", { loss: fixed(loss), beside: fixed(beside) })

function besideLenses(row: Row): UnwantedEffect {
  const pupil = number(row.photopic_pupil_increase_mm)
  const beside = number(row.control_photopic)
  return {
    from: say("{trial}, {span}, with orthokeratology", { trial: "AOK", span: spanInWords(row.months) }),
    figures:
      pupil === null
        ? []
        : [
            beside === null
              ? say("pupil in bright light {mm} mm wider", { mm: fixed(pupil) })
              : say("pupil in bright light {mm} mm wider (orthokeratology alone {beside} mm)", {
                  mm: fixed(pupil),
                  beside: fixed(beside),
                }),
          ],
    source: sourceOf(row),
  }
}
