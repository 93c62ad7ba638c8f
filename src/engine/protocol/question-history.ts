import { msg } from "../say.js"
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
    name: msg("heart condition"),
    words: msg("Has your child a heart condition, or a heart that races?"),
    note: msg("which one"),
    owed: illness,
  }),
  caution({
    id: "respiratory-disease",
    name: msg("disease of the lungs or airways"),
    words: msg("Has your child a disease of the lungs or airways that needs care?"),
    note: msg("which one"),
    owed: illness,
  }),
  caution({
    id: "antimuscarinic-medicines",
    name: msg("other medicines that act like atropine"),
    words: msg("Does your child take a medicine that acts like atropine?"),
    note: msg("every medicine taken"),
    owed: [
      ...illness,
      { duty: "CD-060", status: "verified", stages: at.baseline },
      { duty: "CD-060", status: "verified", stages: at.treated, only: "on-atropine" },
    ],
  }),
  caution({
    id: "allergy-drops",
    name: msg("allergy to drops"),
    words: msg("Did your child ever react badly to eye drops, their preservative or a local anaesthetic?"),
    note: msg("to what, how, when"),
    owed: [{ duty: "CD-011", status: "verified", stages: at.baseline }],
  }),
  caution({
    id: "down-syndrome",
    name: msg("Down syndrome"),
    words: msg("Has your child Down syndrome?"),
    owed: sensitivity,
  }),
  caution({
    id: "spastic-paralysis",
    name: msg("spastic paralysis"),
    words: msg("Has your child a spastic paralysis?"),
    owed: sensitivity,
  }),
  caution({
    id: "brain-injury",
    name: msg("brain injury"),
    words: msg("Has your child had an injury of the brain?"),
    note: msg("which one, when"),
    owed: sensitivity,
  }),
  // No duty of the evidence speaks of it: it stands ready, as common practice without a source.
  caution({ id: "pregnancy", name: msg("pregnancy"), words: msg("Could there be a pregnancy?") }),
  caution({
    id: "other-eye-disease",
    name: msg("other disease of the eye"),
    words: msg("Is there another eye disease, such as one of the retina, or glaucoma?"),
    note: msg("which one"),
    owed: exclusion,
  }),
  caution({
    id: "previous-eye-surgery",
    name: msg("earlier operation on an eye"),
    words: msg("Was an eye ever operated on?"),
    note: msg("what, when"),
    owed: exclusion,
  }),
  caution({
    id: "prematurity",
    name: msg("birth before term"),
    words: msg("Was your child born early?"),
    value: { unit: msg("weeks at birth"), low: 20, high: 45 },
    owed: [{ duty: "CD-009", status: "partly", stages: at.baseline }],
  }),
  caution({
    id: "syndromic-features",
    name: msg("signs of a wider condition"),
    words: msg("Are there joint, bone, hearing, palate or developmental problems?"),
    note: msg("which ones"),
    owed: [...exclusion, { duty: "CD-009", status: "partly", stages: at.baseline }],
  }),
  history({
    id: "contact-lens-wear",
    name: msg("contact lenses"),
    words: msg("Does your child wear contact lenses?"),
    note: msg("soft or rigid, worn when"),
    owed: [
      { duty: "CD-066", status: "verified", stages: at.baseline },
      { duty: "CD-066", status: "verified", stages: at.treated, only: "on-atropine" },
    ],
  }),
  history({
    id: "parents-asked",
    name: msg("myopia of the parents"),
    words: msg("Have both parents been asked about their own myopia?"),
    owed: [
      { duty: "CD-001", status: "verified", stages: at.growth, only: "before-myopia", onceAYear: true },
      { duty: "CD-007", status: "partly", stages: at.growth, onceAYear: true },
    ],
  }),
  history({
    id: "earlier-records",
    name: msg("earlier prescriptions and lengths"),
    words: msg("Were earlier prescriptions, lengths and treatments asked for and entered?"),
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
  flag({
    id: "flashes",
    name: msg("flashes"),
    words: msg("New flashes of light?"),
    note: msg("since when"),
    owed: retinal,
  }),
  flag({
    id: "floaters",
    name: msg("floaters"),
    words: msg("New floating spots?"),
    note: msg("since when"),
    owed: retinal,
  }),
  flag({
    id: "curtain",
    name: msg("curtain"),
    words: msg("A curtain or shadow over part of the sight?"),
    note: msg("since when"),
    owed: retinal,
  }),
  flag({
    id: "eye-pain",
    name: msg("eye pain"),
    words: msg("Pain in an eye, or a painful red eye?"),
    note: msg("since when"),
    owed: [{ duty: "CD-120", status: "partly", stages: at.every }],
  }),
  flag({
    id: "sudden-vision-loss",
    name: msg("sudden loss of vision"),
    words: msg("A sudden loss of vision?"),
    note: msg("since when"),
    owed: [{ duty: "CD-103", status: "partly", stages: at.every }],
  }),
]

const onDrops = (asked: Asked): Question => ({ ...caution(asked), kind: "on-treatment" })

/** How the child fares on the drops. */
export const onTreatment: readonly Question[] = [
  onDrops({
    id: "systemic-effects",
    name: msg("effects on the whole body"),
    words: msg(
      "Flushing, fever, a racing heart, dry mouth, constipation, trouble passing water, changed behaviour or sleep?",
    ),
    note: msg("which, since when"),
    owed: [{ duty: "CD-076", status: "verified", stages: at.treated, only: "on-atropine" }],
  }),
  onDrops({
    id: "fever-or-heat",
    name: msg("fever or great heat"),
    words: msg("Fever, or days of great heat, while on the drops?"),
    note: msg("when, what was done"),
    owed: [{ duty: "CD-059", status: "verified", stages: at.treated, only: "on-atropine" }],
  }),
  onDrops({
    id: "missed-drops",
    name: msg("missed drops"),
    words: msg("How many drops are missed?"),
    value: { unit: msg("nights a week"), low: 0, high: 7 },
    byValue: true,
    owed: [{ duty: "CD-071", status: "verified", stages: at.treated, only: "on-atropine" }],
  }),
  onDrops({
    id: "technique-checked",
    name: msg("technique of the drops"),
    words: msg("Was it shown how the drops are given at home?"),
    owed: [
      { duty: "CD-065", status: "verified", stages: ["safety-check"], only: "on-atropine" },
      { duty: "CD-082", status: "unverified", stages: ["review"], only: "on-atropine" },
    ],
  }),
  onDrops({
    id: "quality-of-life",
    name: msg("quality of life"),
    words: msg("Was the family asked in a standard way how the child lives with the treatment?"),
    note: msg("form used, score"),
    owed: [{ duty: "CD-080", status: "verified", stages: ["review"], onceAYear: true }],
  }),
]

const habit = (asked: Asked): Question => ({ ...caution(asked), kind: "lifestyle" })
const habits: Owed = { duty: "CD-008", status: "partly", stages: at.growth }

/** How the child spends the day. */
export const lifestyle: readonly Question[] = [
  habit({
    id: "outdoor-hours",
    name: msg("hours outdoors"),
    words: msg("How long outdoors by day, on average?"),
    value: { unit: msg("hours a day"), low: 0, high: 24 },
    byValue: true,
    owed: [{ duty: "CD-100", status: "verified", stages: at.every }, habits],
  }),
  habit({
    id: "near-work-hours",
    name: msg("hours of near work"),
    words: msg("How long at page or screen held close, outside school?"),
    value: { unit: msg("hours a day"), low: 0, high: 24 },
    byValue: true,
    owed: [{ duty: "CD-001", status: "verified", stages: at.every, only: "before-myopia" }, habits],
  }),
  habit({
    id: "reading-distance",
    name: msg("reading distance"),
    words: msg("How far away is the page or screen held?"),
    value: { unit: msg("cm"), low: 5, high: 100 },
    byValue: true,
    owed: [habits],
  }),
  habit({
    id: "breaks-taken",
    name: msg("breaks from near work"),
    words: msg("Are there breaks from near work?"),
    value: { unit: msg("minutes between breaks"), low: 1, high: 600 },
    owed: [habits],
  }),
]
