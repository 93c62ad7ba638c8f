import { MEASURED_AGAIN } from "../measured-again.js"
import { at, type Owed, type Question } from "./question.js"

type Looked = Omit<Question, "kind" | "askedOf"> & { readonly kind?: Question["kind"] }

const finding = (looked: Looked): Question => ({ kind: "eye-finding", askedOf: "examiner", ...looked })
const withCycloplegia = { stages: at.growth, only: "cycloplegia" } as const

/** What the examiner looks at, and is no figure of an eye. */
export const eyeFindings: readonly Question[] = [
  finding({
    id: MEASURED_AGAIN,
    name: "unlikely figures measured again",
    words: "An unlikely figure was measured again, and it stands?",
    place: "length",
    note: "which, by whom",
    owed: [],
  }),
  finding({
    id: "alignment-problem",
    name: "alignment of the eyes",
    words: "Squint, poor stereopsis or poor focus at near?",
    place: "near-acuity",
    note: "cover test far and near, stereopsis, lag",
    owed: [{ duty: "CD-032", status: "partly", stages: at.baseline }],
  }),
  finding({
    id: "lids-or-surface-finding",
    name: "lids and surface of the eyes",
    words: "Allergy, conjunctivitis or keratitis of lids or surface?",
    place: "cornea",
    note: "what, how severe",
    owed: [{ duty: "CD-029", status: "partly", stages: at.every }],
  }),
  finding({
    id: "corneal-irregularity",
    name: "irregular cornea",
    words: "Sign of keratoconus or another irregular cornea?",
    place: "cornea",
    note: "what was seen",
    owed: [
      { duty: "CD-042", status: "verified", stages: at.baseline },
      { duty: "CD-024", status: "partly", stages: at.growth },
    ],
  }),
  finding({
    id: "narrow-angle",
    kind: "caution",
    name: "angle of the anterior chamber",
    words: "Narrow angle or shallow chamber?",
    place: "pressure",
    note: "how it was judged",
    owed: [
      { duty: "CD-027", status: "verified", stages: at.baseline },
      { duty: "CD-058", status: "verified", stages: at.baseline },
    ],
  }),
  finding({
    id: "other-mydriatics",
    name: "other widening drops",
    words: "Other drops that widen the pupil within the last 24 hours?",
    place: "cycloplegia",
    note: "which, when",
    owed: [{ duty: "CD-061", status: "verified", ...withCycloplegia }],
  }),
  finding({
    id: "cycloplegia-timed",
    name: "time of the cycloplegic drops",
    words: "Did the drops have their time before the reading?",
    place: "cycloplegia",
    value: { unit: "minutes from first drop to reading", low: 0, high: 600 },
    note: "agent, strength, drops, times",
    owed: [{ duty: "CD-016", status: "verified", ...withCycloplegia }],
  }),
  finding({
    id: "spectacles-updated",
    name: "spectacles",
    words: "Are the spectacles right for today’s refraction?",
    place: "refraction",
    owed: [{ duty: "CD-078", status: "partly", stages: at.growth }],
  }),
  finding({
    id: "fundus-examined",
    name: "fundus",
    words: "Fundus examined through a wide pupil?",
    place: "fundus",
    note: "category and extra signs of myopic change, each eye",
    owed: [
      { duty: "CD-030", status: "verified", stages: at.baseline },
      { duty: "CD-031", status: "unverified", stages: ["review", "discharge"], onceAYear: true },
    ],
  }),
  finding({
    id: "fundus-finding",
    name: "finding in the fundus",
    words: "Any finding in the fundus, disc or macula?",
    place: "fundus",
    note: "what, which eye",
    owed: [
      { duty: "CD-030", status: "verified", stages: at.baseline },
      { duty: "CD-081", status: "partly", stages: ["review", "discharge"], onceAYear: true },
    ],
  }),
]

type Given = Pick<Question, "id" | "name" | "words" | "owed"> & Partial<Question>
const advice = (given: Given): Question => ({
  kind: "advice",
  askedOf: "examiner",
  place: "advice",
  ...given,
})

/** Told when the drops begin: at the baseline where they are planned, else at the first check on them. */
const atStart = (duty: string, status: Owed["status"]): Owed => ({
  duty,
  status,
  stages: ["baseline", "safety-check"],
  only: "on-atropine",
  onceAYear: true,
})

/** What the family was told before it left. */
export const advices: readonly Question[] = [
  advice({
    id: "advice-outdoors",
    name: "advice on time outdoors",
    words: "Advised on time outdoors?",
    owed: [{ duty: "CD-100", status: "verified", stages: at.every }],
  }),
  advice({
    id: "advice-near-work",
    name: "advice on near work",
    words: "Advised on breaks and distance at near work?",
    owed: [{ duty: "CD-100", status: "verified", stages: at.every }],
  }),
  advice({
    id: "advice-long-term-risk",
    name: "explanation of the long-term risk",
    words: "Explained the long-term risk, with figures?",
    owed: [{ duty: "CD-099", status: "verified", stages: ["baseline", "review"], onceAYear: true }],
  }),
  advice({
    id: "advice-instillation",
    name: "advice on giving the drops",
    words: "Shown how to give the drops at bedtime?",
    owed: [atStart("CD-065", "verified")],
  }),
  advice({
    id: "advice-storage",
    name: "advice on storage and poisoning",
    words: "Told: out of children’s reach, when to discard, whom to call if swallowed?",
    owed: [atStart("CD-069", "verified"), atStart("CD-070", "verified"), atStart("CD-068", "verified")],
  }),
  advice({
    id: "advice-glare",
    name: "advice on glare and near blur",
    words: "Warned of glare and near blur at sport, cycling and school?",
    owed: [atStart("CD-102", "verified")],
  }),
  advice({
    id: "advice-sun",
    name: "advice on sun protection",
    words: "Advised on hat and sunglasses?",
    owed: [atStart("CD-101", "partly")],
  }),
  advice({
    id: "advice-fever",
    name: "advice on fever and heat",
    words: "Told what to do in fever or great heat?",
    owed: [atStart("CD-104", "partly")],
  }),
  advice({
    id: "advice-report-effects",
    name: "advice on reporting unwanted effects",
    words: "Told how to report an unwanted effect, and to whom?",
    owed: [atStart("CD-105", "partly")],
  }),
  advice({
    id: "advice-warning-signs",
    name: "warning signs of the retina",
    words: "Given the warning signs of the retina in writing?",
    owed: [
      { duty: "CD-103", status: "partly", stages: ["baseline", "review", "discharge"], onceAYear: true },
    ],
  }),
  advice({
    id: "advice-later-checks",
    name: "plan for later checks",
    words: "Agreed on checks after the programme ends?",
    owed: [{ duty: "CD-090", status: "verified", stages: ["discharge"] }],
  }),
  advice({
    id: "report-given",
    name: "written report",
    words: "Plain report given to the family?",
    owed: [{ duty: "CD-098", status: "partly", stages: at.every }],
  }),
]
