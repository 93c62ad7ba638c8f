import { ageYears } from "../calendar.js"
import { type CalendarDate, type Course, EYES, type TreatmentChoice } from "../course.js"
import { msg, say } from "../say.js"
import { inDigits } from "../words.js"
import {
  answered,
  type CautionRule,
  type CautionWeight,
  CONTRAINDICATED,
  INFANT,
  INFANT_UNTIL_YEARS,
  type Known,
  type StartCaution,
  UK_TEXT,
  UNKNOWN,
} from "./caution.js"
import { usualComfortLimits } from "./comfort-limits.js"
import { inRow } from "./in-row.js"
import { pressureInWords } from "./switched-concerns.js"

const TWO_TEXTS = msg("verified: product texts of 1 % drops, one an excerpt and one secondary")
const SENSITIVE = msg("raises the sensitivity to atropine; a specialist decides")
const EXCLUDED = msg("was a reason to leave a child out of the trials; a specialist decides")
const TRIAL_LISTS = msg("verified: registry record of one trial, secondary list of another")

const RULES: readonly CautionRule[] = [
  ...CONTRAINDICATED,
  {
    id: "down-syndrome",
    name: msg("Down syndrome"),
    weight: "specialist",
    says: SENSITIVE,
    duty: "CD-012",
    grade: msg("verified: product text of 1 % drops, secondary, and the exclusion list of a trial"),
  },
  {
    id: "spastic-paralysis",
    name: msg("spastic paralysis"),
    weight: "specialist",
    says: SENSITIVE,
    duty: "CD-012",
    grade: msg("verified: product text of 1 % drops, secondary, and the exclusion list of a trial"),
  },
  {
    id: "brain-injury",
    name: msg("brain injury"),
    weight: "specialist",
    says: SENSITIVE,
    duty: "CD-012",
    grade: msg("verified: product text of 1 % drops, secondary, and the exclusion list of a trial"),
  },
  {
    id: "other-eye-disease",
    name: msg("other disease of the eye, glaucoma included"),
    weight: "specialist",
    says: EXCLUDED,
    duty: "CD-042",
    grade: TRIAL_LISTS,
  },
  {
    id: "corneal-irregularity",
    name: msg("keratoconus or another irregular cornea"),
    weight: "specialist",
    says: EXCLUDED,
    duty: "CD-042",
    grade: TRIAL_LISTS,
  },
  {
    id: "previous-eye-surgery",
    name: msg("earlier operation on an eye"),
    weight: "specialist",
    says: EXCLUDED,
    duty: "CD-042",
    grade: TRIAL_LISTS,
  },
  {
    id: "syndromic-features",
    name: msg("signs of a wider condition"),
    weight: "specialist",
    says: EXCLUDED,
    duty: "CD-042",
    grade: TRIAL_LISTS,
  },
  {
    id: "heart-condition",
    name: msg("heart condition"),
    weight: "caution",
    says: msg("care with conditions of a fast heart rate; a reason is recorded"),
    duty: "CD-059",
    grade: TWO_TEXTS,
  },
  {
    id: "respiratory-disease",
    name: msg("disease of the lungs or airways"),
    weight: "caution",
    says: msg("asked before atropine is considered; it was a reason to leave a child out of the trials"),
    duty: "CD-010",
    grade: msg("verified: secondary list of a trial, excerpt of a product text, registry record"),
  },
  {
    id: "antimuscarinic-medicines",
    name: msg("other medicines that act like atropine"),
    weight: "caution",
    says: msg("their effects add up"),
    duty: "CD-060",
    grade: UK_TEXT,
  },
  {
    id: "other-mydriatics",
    name: msg("other drops that widen the pupil"),
    weight: "caution",
    says: msg(
      "severe reactions of children, some of them fatal, were reported, mostly with several such drops at once",
    ),
    duty: "CD-061",
    grade: msg("verified: excerpt of a regulator's page"),
  },
]

const PRESSURE: CautionRule = {
  id: "raised-pressure",
  name: msg("raised pressure in the eye"),
  weight: "caution",
  says: msg("care with raised pressure; {limit} mmHg was the entry limit of a trial (secondary)"),
  duty: "CD-059",
  grade: TWO_TEXTS,
}

const LENSES: CautionRule = {
  id: "contact-lens-wear",
  name: msg("contact lenses"),
  weight: "caution",
  says: msg(
    "one product text of 1 % drops says no soft lenses during treatment; another, to wait 15 minutes after preserved drops",
  ),
  duty: "CD-066",
  grade: TWO_TEXTS,
}

const PREGNANCY: CautionRule = {
  id: "pregnancy",
  name: msg("pregnancy"),
  weight: "caution",
  says: msg("talked through before drops are started"),
  duty: null,
  grade: msg("common practice, no source"),
}

/** From this age a girl is asked about a pregnancy. Ours; common practice, no source. */
const PREGNANCY_ASKED_FROM_YEARS = 11

/**
 * What is to be known before atropine is started, and what is known of it: every caution of the evidence whose row was
 * read, answered, or named as not asked yet. Contraindications first. Empty for treatments without a drug: the evidence
 * here holds no cautions for them.
 *
 * The warnings are those of 1 % drops, 20 to 100 times stronger than the usual ones: a conservative list.
 *
 * @example
 * startCautions({ course, today, treatment: { kind: "atropine", concentrationPercent: 0.05 } })
 */
export function startCautions({
  course,
  today,
  treatment,
}: {
  readonly course: Course
  readonly today: CalendarDate
  readonly treatment: TreatmentChoice
}): readonly StartCaution[] {
  if (treatment.kind !== "atropine") return []
  const { born, sex } = course.child
  const age = ageYears({ born, on: today })
  const isAskedOfPregnancy = sex === "female" && age >= PREGNANCY_ASKED_FROM_YEARS
  const asked = [...RULES, LENSES, ...(isAskedOfPregnancy ? [PREGNANCY] : [])]
  const found = [
    ...(age < INFANT_UNTIL_YEARS
      ? [{ ...INFANT, state: "asked-yes" as const, on: today, note: say("born {day}", { day: born }) }]
      : []),
    ...asked.map((rule) => ({ ...rule, ...answered({ course, today, question: rule.id }) })),
    { ...PRESSURE, ...pressureRead({ course, today }) },
  ]
  const order: readonly CautionWeight[] = ["contraindicated", "specialist", "caution"]
  return found
    .toSorted((a, b) => order.indexOf(a.weight) - order.indexOf(b.weight))
    .map((caution) => ({
      ...caution,
      name: say(caution.name),
      says: say(caution.says, { limit: inDigits(usualComfortLimits.pressureMmHg) }),
      grade: say(caution.grade),
    }))
}

function pressureRead({ course, today }: { readonly course: Course; readonly today: CalendarDate }): Known {
  const last = course.visits
    .filter(({ date, right, left }) => {
      const isRead = right?.intraocularPressure !== undefined || left?.intraocularPressure !== undefined
      return isRead && date <= today
    })
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
    .at(-1)
  if (!last) return UNKNOWN
  const read = EYES.flatMap((eye) => {
    const mmHg = last[eye]?.intraocularPressure?.mmHg
    return mmHg === undefined ? [] : [{ eye, mmHg }]
  })
  const isRaised = read.some(({ mmHg }) => mmHg >= usualComfortLimits.pressureMmHg)
  return {
    state: isRaised ? "asked-yes" : "asked-no",
    on: last.date,
    note: inRow(read.map(pressureInWords)),
  }
}
