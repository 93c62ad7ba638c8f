import { at, type Owed, type Question } from "./question.js"

type Asked = Omit<Question, "kind" | "askedOf" | "place" | "owed"> & { readonly owed?: readonly Owed[] }

const caution = (asked: Asked): Question => ({
  kind: "caution",
  askedOf: "family",
  place: "arrival",
  owed: [],
  ...asked,
})

const illness: readonly Owed[] = [
  { duty: "CD-010", status: "verified", stages: at.baseline },
  { duty: "CD-010", status: "verified", stages: at.treated, only: "on-atropine" },
]
const sensitivity: readonly Owed[] = [{ duty: "CD-012", status: "verified", stages: at.baseline }]
const exclusion: readonly Owed[] = [{ duty: "CD-042", status: "verified", stages: at.baseline }]

const history = (asked: Asked): Question => ({ ...caution(asked), kind: "history" })

/** The child's history, and what calls for caution before atropine. */
export const cautions: readonly Question[] = [
  caution({
    id: "heart-condition",
    name: "heart condition",
    words: "Has your child a heart condition, or a heart that races?",
    note: "which one",
    owed: illness,
  }),
  caution({
    id: "respiratory-disease",
    name: "disease of the lungs or airways",
    words: "Has your child a disease of the lungs or airways that needs care?",
    note: "which one",
    owed: illness,
  }),
  caution({
    id: "antimuscarinic-medicines",
    name: "other medicines that act like atropine",
    words: "Does your child take a medicine that acts like atropine?",
    note: "every medicine taken",
    owed: [
      ...illness,
      { duty: "CD-060", status: "verified", stages: at.baseline },
      { duty: "CD-060", status: "verified", stages: at.treated, only: "on-atropine" },
    ],
  }),
  caution({
    id: "allergy-drops",
    name: "allergy to drops",
    words: "Did your child ever react badly to eye drops, their preservative or a local anaesthetic?",
    note: "to what, how, when",
    owed: [{ duty: "CD-011", status: "verified", stages: at.baseline }],
  }),
  caution({
    id: "down-syndrome",
    name: "Down syndrome",
    words: "Has your child Down syndrome?",
    owed: sensitivity,
  }),
  caution({
    id: "spastic-paralysis",
    name: "spastic paralysis",
    words: "Has your child a spastic paralysis?",
    owed: sensitivity,
  }),
  caution({
    id: "brain-injury",
    name: "brain injury",
    words: "Has your child had an injury of the brain?",
    note: "which one, when",
    owed: sensitivity,
  }),
  // No duty of the evidence speaks of it: it stands ready, as common practice without a source.
  caution({ id: "pregnancy", name: "pregnancy", words: "Could there be a pregnancy?" }),
  caution({
    id: "other-eye-disease",
    name: "other disease of the eye",
    words: "Is there another eye disease, such as one of the retina, or glaucoma?",
    note: "which one",
    owed: exclusion,
  }),
  caution({
    id: "previous-eye-surgery",
    name: "earlier operation on an eye",
    words: "Was an eye ever operated on?",
    note: "what, when",
    owed: exclusion,
  }),
  caution({
    id: "prematurity",
    name: "birth before term",
    words: "Was your child born early?",
    value: { unit: "weeks at birth", low: 20, high: 45 },
    owed: [{ duty: "CD-009", status: "partly", stages: at.baseline }],
  }),
  caution({
    id: "syndromic-features",
    name: "signs of a wider condition",
    words: "Are there joint, bone, hearing, palate or developmental problems?",
    note: "which ones",
    owed: [...exclusion, { duty: "CD-009", status: "partly", stages: at.baseline }],
  }),
  history({
    id: "contact-lens-wear",
    name: "contact lenses",
    words: "Does your child wear contact lenses?",
    note: "soft or rigid, worn when",
    owed: [
      { duty: "CD-066", status: "verified", stages: at.baseline },
      { duty: "CD-066", status: "verified", stages: at.treated, only: "on-atropine" },
    ],
  }),
  history({
    id: "parents-asked",
    name: "myopia of the parents",
    words: "Have both parents been asked about their own myopia?",
    owed: [
      { duty: "CD-001", status: "verified", stages: at.growth, only: "before-myopia", onceAYear: true },
      { duty: "CD-007", status: "partly", stages: at.growth, onceAYear: true },
    ],
  }),
  history({
    id: "earlier-records",
    name: "earlier prescriptions and lengths",
    words: "Were earlier prescriptions, lengths and treatments asked for and entered?",
    owed: [{ duty: "CD-006", status: "partly", stages: at.baseline }],
  }),
]

const flag = (asked: Asked): Question => ({ ...caution(asked), kind: "red-flag", always: true })
const retinal: readonly Owed[] = [
  { duty: "CD-112", status: "verified", stages: at.every },
  { duty: "CD-113", status: "partly", stages: at.every },
]

/** A yes to any of these needs care the same day. Asked at every visit as the program's own net; the rows stand behind. */
export const redFlags: readonly Question[] = [
  flag({ id: "flashes", name: "flashes", words: "New flashes of light?", note: "since when", owed: retinal }),
  flag({ id: "floaters", name: "floaters", words: "New floating spots?", note: "since when", owed: retinal }),
  flag({
    id: "curtain",
    name: "curtain",
    words: "A curtain or shadow over part of the sight?",
    note: "since when",
    owed: retinal,
  }),
  flag({
    id: "eye-pain",
    name: "eye pain",
    words: "Pain in an eye, or a painful red eye?",
    note: "since when",
    owed: [{ duty: "CD-120", status: "partly", stages: at.every }],
  }),
  flag({
    id: "sudden-vision-loss",
    name: "sudden loss of vision",
    words: "A sudden loss of vision?",
    note: "since when",
    owed: [{ duty: "CD-103", status: "partly", stages: at.every }],
  }),
]

const onDrops = (asked: Asked): Question => ({ ...caution(asked), kind: "on-treatment" })

/** How the child fares on the drops. */
export const onTreatment: readonly Question[] = [
  onDrops({
    id: "systemic-effects",
    name: "effects on the whole body",
    words:
      "Flushing, fever, a racing heart, dry mouth, constipation, trouble passing water, changed behaviour or sleep?",
    note: "which, since when",
    owed: [{ duty: "CD-076", status: "verified", stages: at.treated, only: "on-atropine" }],
  }),
  onDrops({
    id: "fever-or-heat",
    name: "fever or great heat",
    words: "Fever, or days of great heat, while on the drops?",
    note: "when, what was done",
    owed: [{ duty: "CD-059", status: "verified", stages: at.treated, only: "on-atropine" }],
  }),
  onDrops({
    id: "missed-drops",
    name: "missed drops",
    words: "How many drops are missed?",
    value: { unit: "nights a week", low: 0, high: 7 },
    byValue: true,
    owed: [{ duty: "CD-071", status: "verified", stages: at.treated, only: "on-atropine" }],
  }),
  onDrops({
    id: "technique-checked",
    name: "technique of the drops",
    words: "Was it shown how the drops are given at home?",
    owed: [
      { duty: "CD-065", status: "verified", stages: ["safety-check"], only: "on-atropine" },
      { duty: "CD-082", status: "unverified", stages: ["review"], only: "on-atropine" },
    ],
  }),
  onDrops({
    id: "quality-of-life",
    name: "quality of life",
    words: "Was the family asked in a standard way how the child lives with the treatment?",
    note: "form used, score",
    owed: [{ duty: "CD-080", status: "verified", stages: ["review"], onceAYear: true }],
  }),
]

const habit = (asked: Asked): Question => ({ ...caution(asked), kind: "lifestyle" })
const habits: Owed = { duty: "CD-008", status: "partly", stages: at.growth }

/** How the child spends the day. */
export const lifestyle: readonly Question[] = [
  habit({
    id: "outdoor-hours",
    name: "hours outdoors",
    words: "How long outdoors by day, on average?",
    value: { unit: "hours a day", low: 0, high: 24 },
    byValue: true,
    owed: [{ duty: "CD-100", status: "verified", stages: at.every }, habits],
  }),
  habit({
    id: "near-work-hours",
    name: "hours of near work",
    words: "How long at page or screen held close, outside school?",
    value: { unit: "hours a day", low: 0, high: 24 },
    byValue: true,
    owed: [{ duty: "CD-001", status: "verified", stages: at.every, only: "before-myopia" }, habits],
  }),
  habit({
    id: "reading-distance",
    name: "reading distance",
    words: "How far away is the page or screen held?",
    value: { unit: "cm", low: 5, high: 100 },
    byValue: true,
    owed: [habits],
  }),
  habit({
    id: "breaks-taken",
    name: "breaks from near work",
    words: "Are there breaks from near work?",
    value: { unit: "minutes between breaks", low: 1, high: 600 },
    owed: [habits],
  }),
]
