import { MEASURED_AGAIN } from "../measured-again.js"
import { msg } from "../say.js"
import { at, type Owed, type Question } from "./question.js"

type Looked = Omit<Question, "kind" | "askedOf"> & { readonly kind?: Question["kind"] }

const finding = (looked: Looked): Question => ({ kind: "eye-finding", askedOf: "examiner", ...looked })
const withCycloplegia = { stages: at.growth, only: "cycloplegia" } as const

/** What the examiner looks at, and is no figure of an eye. */
export const eyeFindings: readonly Question[] = [
  finding({
    id: MEASURED_AGAIN,
    name: msg("unlikely figures measured again"),
    words: msg("An unlikely figure was measured again, and it stands?"),
    place: "length",
    note: msg("which, by whom"),
    owed: [],
  }),
  finding({
    id: "alignment-problem",
    name: msg("alignment of the eyes"),
    words: msg("Squint, poor stereopsis or poor focus at near?"),
    place: "near-acuity",
    note: msg("cover test far and near, stereopsis, lag"),
    owed: [{ duty: "CD-032", status: "partly", stages: at.baseline }],
  }),
  finding({
    id: "lids-or-surface-finding",
    name: msg("lids and surface of the eyes"),
    words: msg("Allergy, conjunctivitis or keratitis of lids or surface?"),
    place: "cornea",
    note: msg("what, how severe"),
    owed: [{ duty: "CD-029", status: "partly", stages: at.every }],
  }),
  finding({
    id: "corneal-irregularity",
    name: msg("irregular cornea"),
    words: msg("Sign of keratoconus or another irregular cornea?"),
    place: "cornea",
    note: msg("what was seen"),
    owed: [
      { duty: "CD-042", status: "verified", stages: at.baseline },
      { duty: "CD-024", status: "partly", stages: at.growth },
    ],
  }),
  finding({
    id: "narrow-angle",
    kind: "caution",
    name: msg("angle of the anterior chamber"),
    words: msg("Narrow angle or shallow chamber?"),
    place: "pressure",
    note: msg("how it was judged"),
    owed: [
      { duty: "CD-027", status: "verified", stages: at.baseline },
      { duty: "CD-058", status: "verified", stages: at.baseline },
    ],
  }),
  finding({
    id: "other-mydriatics",
    name: msg("other widening drops"),
    words: msg("Other drops that widen the pupil within the last 24 hours?"),
    place: "cycloplegia",
    note: msg("which, when"),
    owed: [{ duty: "CD-061", status: "verified", ...withCycloplegia }],
  }),
  finding({
    id: "cycloplegia-timed",
    name: msg("time of the cycloplegic drops"),
    words: msg("Did the drops have their time before the reading?"),
    place: "cycloplegia",
    value: { unit: msg("minutes from first drop to reading"), low: 0, high: 600 },
    note: msg("agent, strength, drops, times"),
    owed: [{ duty: "CD-016", status: "verified", ...withCycloplegia }],
  }),
  finding({
    id: "spectacles-updated",
    name: msg("spectacles"),
    words: msg("Are the spectacles right for today’s refraction?"),
    place: "refraction",
    owed: [{ duty: "CD-078", status: "partly", stages: at.growth }],
  }),
  finding({
    id: "fundus-examined",
    name: msg("fundus"),
    words: msg("Fundus examined through a wide pupil?"),
    place: "fundus",
    note: msg("category and extra signs of myopic change, each eye"),
    owed: [
      { duty: "CD-030", status: "verified", stages: at.baseline },
      { duty: "CD-031", status: "unverified", stages: ["review", "discharge"], onceAYear: true },
    ],
  }),
  finding({
    id: "fundus-finding",
    name: msg("finding in the fundus"),
    words: msg("Any finding in the fundus, disc or macula?"),
    place: "fundus",
    note: msg("what, which eye"),
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
    name: msg("advice on time outdoors"),
    words: msg("Advised on time outdoors?"),
    owed: [{ duty: "CD-100", status: "verified", stages: at.every }],
  }),
  advice({
    id: "advice-near-work",
    name: msg("advice on near work"),
    words: msg("Advised on breaks and distance at near work?"),
    owed: [{ duty: "CD-100", status: "verified", stages: at.every }],
  }),
  advice({
    id: "advice-long-term-risk",
    name: msg("explanation of the long-term risk"),
    words: msg("Explained the long-term risk, with figures?"),
    owed: [{ duty: "CD-099", status: "verified", stages: ["baseline", "review"], onceAYear: true }],
  }),
  advice({
    id: "advice-instillation",
    name: msg("advice on giving the drops"),
    words: msg("Shown how to give the drops at bedtime?"),
    owed: [atStart("CD-065", "verified")],
  }),
  advice({
    id: "advice-storage",
    name: msg("advice on storage and poisoning"),
    words: msg("Told: out of children’s reach, when to discard, whom to call if swallowed?"),
    owed: [atStart("CD-069", "verified"), atStart("CD-070", "verified"), atStart("CD-068", "verified")],
  }),
  advice({
    id: "advice-glare",
    name: msg("advice on glare and near blur"),
    words: msg("Warned of glare and near blur at sport, cycling and school?"),
    owed: [atStart("CD-102", "verified")],
  }),
  advice({
    id: "advice-sun",
    name: msg("advice on sun protection"),
    words: msg("Advised on hat and sunglasses?"),
    owed: [atStart("CD-101", "partly")],
  }),
  advice({
    id: "advice-fever",
    name: msg("advice on fever and heat"),
    words: msg("Told what to do in fever or great heat?"),
    owed: [atStart("CD-104", "partly")],
  }),
  advice({
    id: "advice-report-effects",
    name: msg("advice on reporting unwanted effects"),
    words: msg("Told how to report an unwanted effect, and to whom?"),
    owed: [atStart("CD-105", "partly")],
  }),
  advice({
    id: "advice-warning-signs",
    name: msg("warning signs of the retina"),
    words: msg("Given the warning signs of the retina in writing?"),
    owed: [
      { duty: "CD-103", status: "partly", stages: ["baseline", "review", "discharge"], onceAYear: true },
    ],
  }),
  advice({
    id: "advice-later-checks",
    name: msg("plan for later checks"),
    words: msg("Agreed on checks after the programme ends?"),
    owed: [{ duty: "CD-090", status: "verified", stages: ["discharge"] }],
  }),
  advice({
    id: "report-given",
    name: msg("written report"),
    words: msg("Plain report given to the family?"),
    owed: [{ duty: "CD-098", status: "partly", stages: at.every }],
  }),
]
