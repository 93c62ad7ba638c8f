import { ageYears } from "../calendar.js"
import { type CalendarDate, type Course, EYES, type TreatmentChoice } from "../course.js"
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

const TWO_TEXTS = "verified: product texts of 1 % drops, one an excerpt and one secondary"
const SENSITIVE = "raises the sensitivity to atropine; a specialist decides"
const EXCLUDED = "was a reason to leave a child out of the trials; a specialist decides"
const TRIAL_LISTS = "verified: registry record of one trial, secondary list of another"

const RULES: readonly CautionRule[] = [
  ...CONTRAINDICATED,
  {
    id: "down-syndrome",
    name: "Down syndrome",
    weight: "specialist",
    says: SENSITIVE,
    duty: "CD-012",
    grade: "verified: product text of 1 % drops, secondary, and the exclusion list of a trial",
  },
  {
    id: "spastic-paralysis",
    name: "spastic paralysis",
    weight: "specialist",
    says: SENSITIVE,
    duty: "CD-012",
    grade: "verified: product text of 1 % drops, secondary, and the exclusion list of a trial",
  },
  {
    id: "brain-injury",
    name: "brain injury",
    weight: "specialist",
    says: SENSITIVE,
    duty: "CD-012",
    grade: "verified: product text of 1 % drops, secondary, and the exclusion list of a trial",
  },
  {
    id: "other-eye-disease",
    name: "other disease of the eye, glaucoma included",
    weight: "specialist",
    says: EXCLUDED,
    duty: "CD-042",
    grade: TRIAL_LISTS,
  },
  {
    id: "corneal-irregularity",
    name: "keratoconus or another irregular cornea",
    weight: "specialist",
    says: EXCLUDED,
    duty: "CD-042",
    grade: TRIAL_LISTS,
  },
  {
    id: "previous-eye-surgery",
    name: "earlier operation on an eye",
    weight: "specialist",
    says: EXCLUDED,
    duty: "CD-042",
    grade: TRIAL_LISTS,
  },
  {
    id: "syndromic-features",
    name: "signs of a wider condition",
    weight: "specialist",
    says: EXCLUDED,
    duty: "CD-042",
    grade: TRIAL_LISTS,
  },
  {
    id: "heart-condition",
    name: "heart condition",
    weight: "caution",
    says: "care with conditions of a fast heart rate; a reason is recorded",
    duty: "CD-059",
    grade: TWO_TEXTS,
  },
  {
    id: "respiratory-disease",
    name: "disease of the lungs or airways",
    weight: "caution",
    says: "asked before atropine is considered; it was a reason to leave a child out of the trials",
    duty: "CD-010",
    grade: "verified: secondary list of a trial, excerpt of a product text, registry record",
  },
  {
    id: "antimuscarinic-medicines",
    name: "other medicines that act like atropine",
    weight: "caution",
    says: "their effects add up",
    duty: "CD-060",
    grade: UK_TEXT,
  },
  {
    id: "other-mydriatics",
    name: "other drops that widen the pupil",
    weight: "caution",
    says: "severe reactions of children, some of them fatal, were reported, mostly with several such drops at once",
    duty: "CD-061",
    grade: "verified: excerpt of a regulator's page",
  },
]

const PRESSURE: CautionRule = {
  id: "raised-pressure",
  name: "raised pressure in the eye",
  weight: "caution",
  says: `care with raised pressure; ${usualComfortLimits.pressureMmHg} mmHg was the entry limit of a trial (secondary)`,
  duty: "CD-059",
  grade: TWO_TEXTS,
}

const LENSES: CautionRule = {
  id: "contact-lens-wear",
  name: "contact lenses",
  weight: "caution",
  says: "one product text of 1 % drops says no soft lenses during treatment; another, to wait 15 minutes after preserved drops",
  duty: "CD-066",
  grade: TWO_TEXTS,
}

const PREGNANCY: CautionRule = {
  id: "pregnancy",
  name: "pregnancy",
  weight: "caution",
  says: "talked through before drops are started",
  duty: null,
  grade: "common practice, no source",
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
      ? [{ ...INFANT, state: "asked-yes" as const, on: today, note: `born ${born}` }]
      : []),
    ...asked.map((rule) => ({ ...rule, ...answered({ course, today, question: rule.id }) })),
    { ...PRESSURE, ...pressureRead({ course, today }) },
  ]
  const order: readonly CautionWeight[] = ["contraindicated", "specialist", "caution"]
  return found.toSorted((a, b) => order.indexOf(a.weight) - order.indexOf(b.weight))
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
    note: read.map(({ eye, mmHg }) => `${eye} ${mmHg} mmHg`).join(", "),
  }
}
