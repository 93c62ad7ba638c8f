import type { CalendarDate, Course } from "../course.js"
import { isInUse, realTreatments } from "../protocol/treatment-course.js"
import { say } from "../say.js"
import { inDigits } from "../words.js"
import { rateSentences } from "./adverse-rates.js"
import { lowerStrength, withoutDrops } from "./lower-strength.js"
import { obtainedInWords } from "./obtained.js"
import type { SafetyEvidence } from "./safety-evidence.js"

/** What can be considered for a concern, with the figures and the source behind it. Never a command. */
export interface Offer {
  readonly what: string
  /** Sentences with their figures. */
  readonly words: readonly string[]
  /** Id in `clinical/duties.json`. */
  readonly duty: string
  /** "CD-085, verified: abstract + expert opinion + secondary" */
  readonly grade: string
}

interface OffersInput {
  /** As in `openConcerns`. */
  readonly concern: { readonly kind: string }
  readonly course: Course
  readonly today: CalendarDate
  readonly evidence: SafetyEvidence
}

type Draft = Pick<Offer, "what" | "words" | "duty">

/**
 * What the evidence offers for a concern: light, near vision, another strength or treatment, an assessment, care the same
 * day. A lower strength and another treatment are named only while drops are in use, with what they are expected to
 * withhold of the growth. Empty where the evidence holds nothing.
 *
 * @example
 * offersFor({ concern: { kind: "light-sensitivity" }, course, today, evidence })[0]?.duty // => "CD-085"
 */
export function offersFor(input: OffersInput): readonly Offer[] {
  const { kind } = input.concern
  const offers = OFFERS[kind]?.(input) ?? []
  return offers.map((offer) => ({ ...offer, grade: gradeOf(offer.duty, input.evidence) }))
}

const OFFERS: Readonly<Record<string, (input: OffersInput) => readonly Draft[]>> = {
  "red-flag": () => [
    {
      what: say("Care on the same day"),
      words: [
        say(
          "A detachment, pigment in the front vitreous, bleeding, or a break with symptoms is an emergency.",
        ),
        say("An examination that is not complete is followed by a referral to someone who can complete it."),
      ],
      duty: "CD-112",
    },
  ],
  "light-sensitivity": (input) => [light(input), ...weaker(input, ["photophobia"])],
  pupil: (input) => [light(input), ...weaker(input, ["pupil"])],
  "near-blur": (input) => [near(input), ...weaker(input, ["blurred_near", "blurred_vision"])],
  accommodation: (input) => [near(input), ...weaker(input, ["accommodation"])],
  "near-acuity": (input) => [near(input), ...weaker(input, ["blurred_near", "accommodation"])],
  redness: (input) => [allergy(input)],
  itching: (input) => [allergy(input)],
  stinging: (input) => weaker(input, ["eye_irritation"]),
  headache: (input) => weaker(input, ["headache"]),
  "systemic-effects": () => [
    {
      what: say("To stop the drops and to assess can be considered"),
      words: [say("The rule behind it: any effect outside the eye, stop and assess.")],
      duty: "CD-076",
    },
  ],
  "distance-acuity": () => [stopAndAssess(say("a loss of corrected acuity")), refer("CD-119")],
  "intraocular-pressure": () => [stopAndAssess(say("raised pressure")), refer("CD-118")],
  contraindication: () => [
    {
      what: say("To stop the drops for safety can be considered"),
      words: [
        say(
          "The product text of 1 % drops names it a contraindication; stopping at once is common practice, no source.",
        ),
      ],
      duty: "CD-093",
    },
  ],
}

function light({ evidence }: OffersInput): Draft {
  const study = evidence.adverseEffects.events_percent.find(
    ({ improved_with_photochromic }) => improved_with_photochromic !== undefined,
  )
  return {
    what: say("Tinted or photochromic lenses, a hat and sunglasses can be considered"),
    words: study
      ? [
          say(
            "Of {children} children on {low} or {high} %, {share} % had light sensitivity; with photochromic spectacles symptoms were better in {better} % after 2 months. No control group ({source}, {obtained}).",
            {
              children: inDigits(study.n ?? 0),
              low: inDigits(0.05),
              high: inDigits(0.1),
              share: inDigits(study.photophobia ?? 0),
              better: inDigits(study.improved_with_photochromic ?? 0),
              source: study.source ?? "",
              obtained: obtainedInWords(study.how_obtained ?? ""),
            },
          ),
        ]
      : [],
    duty: "CD-085",
  }
}

const near = (_: OffersInput): Draft => ({
  what: say("An addition for reading can be considered"),
  words: [say("Expert opinion; no figure was read.")],
  duty: "CD-085",
})

function allergy(input: OffersInput): Draft {
  const stop = stopAndAssess(say("allergy of the lid or the eye"))
  return {
    ...stop,
    words: [...stop.words, ...rateSentences({ field: "allergic_conjunctivitis", evidence: input.evidence })],
  }
}

const stopAndAssess = (reaction: string): Draft => ({
  what: say("To stop the drops and to assess can be considered"),
  words: [
    say(
      "The duty names {reaction}. Of its source the list of reactions to 1 % drops was read; to stop is common practice, no source.",
      { reaction },
    ),
  ],
  duty: "CD-086",
})

const refer = (duty: string): Draft => ({
  what: say("A referral can be considered"),
  words: [say("The principle was read; the figure is the entry limit of a trial.")],
  duty,
})

/** A lower strength with what the trials report by strength, and treatments without drops, while drops are in use. */
function weaker({ course, today, evidence }: OffersInput, fields: readonly string[]): readonly Draft[] {
  const drops = realTreatments(course).filter(
    (treatment) => treatment.kind === "atropine" && isInUse(treatment, today),
  )
  if (drops.length === 0) return []
  const percent = drops.at(-1)?.concentrationPercent
  const rates = fields.flatMap((field) => rateSentences({ field, evidence, percent }))
  const lower = lowerStrength({ percent, evidence })
  return [...(lower ? [{ ...lower, words: [...lower.words, ...rates] }] : []), ...withoutDrops(evidence)]
}

/** "CD-085, verified: abstract + expert opinion + secondary" */
export function gradeOf(duty: string, evidence: Pick<SafetyEvidence, "duties">): string {
  const row = evidence.duties.duties.find(({ id }) => id === duty)
  if (!row) return say("{duty}: no source was read", { duty })
  // What was only remembered of a row is common practice to a reader.
  const obtained = row.how_obtained.replace(
    /actions? from memory|from memory/g,
    "common practice for the rest",
  )
  const values = { duty, obtained: obtainedInWords(obtained) }
  return row.evidence_status === "verified"
    ? say("{duty}, verified: {obtained}", values)
    : say("{duty}, read in part: {obtained}", values)
}
