import type { Course } from "../../src/engine/course.js"
import { noRules } from "../../src/engine/practice-rules.js"
import { defaultSettings } from "../../src/engine/settings.js"
import type { DocumentInput } from "../../src/report/document-input.js"
import { steadyCourse } from "../steady-child.js"

/** An invented girl with an entry of every kind in her course; free texts are marked, so that they are told from ours. */
const steady = steadyCourse({ months: [-12, -6, 0, 6, 12, 18], shareAfter: 0.45 })

export const TODAY = "2026-01-20"
/** What people of the practice wrote: it stands in a document as written, whatever its language. */
export const FREE_TEXTS = {
  child: "Mira 王 محمد",
  author: "Dr Ana Óseí",
  practice: "Ojos & 眼 Practice",
  owner: "Téa",
  what: "Ødem «1»",
  outcome: "Læget «2»",
  note: "«3»",
  reason: "«4»",
  offered: ["«5»", "«6»"],
  label: "«7»",
  value: "«8»",
  pharmacy: "Æster",
  lot: "LØT-7",
  devices: ["«Ø1»", "«Ø2»", "«Ø3»", "«Ø4»", "«Ø5»"],
  prism: "«Ø6»",
  source: "1.2.826.0.1.777",
} as const

export const course: Course = {
  ...steady,
  child: { ...steady.child, id: "K-1", myopicParents: 2 },
  visits: [
    ...steady.visits.map((visit) =>
      visit.date === "2025-12-15"
        ? {
            ...visit,
            right: {
              ...visit.right,
              axialLength: {
                mm: visit.right?.axialLength?.mm ?? 24,
                readings: 2,
                signalToNoise: 211.5,
                sdMm: 0.013,
                each: [
                  { mm: 24.31, signalToNoise: 207.4, byHand: false },
                  { mm: 24.29, signalToNoise: 215.6, byHand: true },
                ],
                device: FREE_TEXTS.devices[0],
              },
              refraction: {
                sphere: -2.75,
                cylinder: -0.5,
                axis: 175,
                cycloplegic: true,
                method: "autorefraction",
                vertexDistanceMm: 12.5,
                device: FREE_TEXTS.devices[1],
              },
              otherRefractions: [{ sphere: -2.5, method: "subjective", device: FREE_TEXTS.devices[2] }],
              spectaclesWorn: {
                sphere: -2.25,
                cylinder: -0.25,
                axis: 170,
                addD: 1.5,
                prism: FREE_TEXTS.prism,
              },
              corneaRadius: {
                ...{ flat: 7.85, steep: 7.7, flatAxis: 178, steepAxis: 88, flatD: 42.99, steepD: 43.83 },
                device: FREE_TEXTS.devices[3],
              },
              lensStatus: "phakic",
              dilation: {
                dilated: true,
                pupilMm: 7.5,
                drops: [{ drop: "cyclopentolate", concentrationPercent: 1 }, { drop: "tropicamide" }],
              },
              pupil: { photopic: 4.6, mesopic: 6.1 },
              accommodation: { dioptres: 9.5, method: "push-up" },
              acuity: { distanceLogMAR: 0.02, distanceCorrection: "worn", nearLogMAR: 0.1 },
              intraocularPressure: { mmHg: 15 },
            } as const,
            sources: [{ kind: "dicom", id: FREE_TEXTS.source, device: FREE_TEXTS.devices[4] } as const],
            symptoms: [
              { kind: "light-sensitivity", grade: 2 } as const,
              { kind: "redness", grade: 0 } as const,
            ],
            answers: [
              { question: "outdoor-hours", answer: "yes", value: 1.5 } as const,
              { question: "antimuscarinic-medicines", answer: "yes", note: FREE_TEXTS.note } as const,
              { question: "flashes", answer: "no" } as const,
            ],
          }
        : visit,
    ),
  ],
  treatments: [
    { from: "2024-06-15", to: "2025-06-20", kind: "atropine", concentrationPercent: 0.05 },
    { from: "2025-06-20", kind: "atropine", concentrationPercent: 0.025 },
    { from: "2025-06-20", kind: "lenslet-spectacles", eye: "right" },
  ],
  supplies: [
    {
      dispensed: "2025-05-12",
      opened: "2025-05-14",
      beyondUse: "2025-06-10",
      concentrationPercent: 0.05,
      volumeMl: 5,
      lot: FREE_TEXTS.lot,
      pharmacy: FREE_TEXTS.pharmacy,
      preserved: false,
    },
  ],
  consents: [
    {
      date: "2024-06-15",
      covers: { kind: "atropine", concentrationPercent: 0.05 },
      by: { name: "Nør" },
      form: "paper",
      assent: "given",
      wording: { id: "w", version: "3", sha256: "ab".repeat(32) },
    },
  ],
  missedNights: [{ from: "2025-03-01", to: "2025-03-31", nights: 4 }],
  decisions: [
    {
      date: "2025-06-20",
      kind: "change-strength",
      reason: FREE_TEXTS.reason,
      treatment: { kind: "atropine", concentrationPercent: 0.025 },
      offered: FREE_TEXTS.offered,
      figures: [{ label: FREE_TEXTS.label, value: FREE_TEXTS.value }],
    },
  ],
  concerns: [
    {
      opened: "2025-06-15",
      kind: "redness",
      what: FREE_TEXTS.what,
      owner: FREE_TEXTS.owner,
      seriousness: "moderate",
      relatedness: "probable",
      adverseEvent: true,
      closed: "2025-07-11",
      outcome: FREE_TEXTS.outcome,
    },
    { opened: "2025-08-01", kind: "pupil", what: FREE_TEXTS.what },
  ],
  orders: [
    {
      date: "2025-05-02",
      concentrationPercent: 0.05,
      bottles: 2,
      volumeMl: 5,
      stockPercent: 1,
      pharmacy: FREE_TEXTS.pharmacy,
      preserved: false,
      confirmed: "2025-05-04",
      received: "2025-05-11",
    },
  ],
  explanations: [{ date: "2025-12-16", to: "Nør" }],
  payments: [{ date: "2025-12-17", cents: 12345, currency: "EUR", what: "«9»" }],
}

export const input = (over: Partial<DocumentInput> = {}): DocumentInput => ({
  course,
  childName: FREE_TEXTS.child,
  childNumber: "N-204",
  practice: { name: FREE_TEXTS.practice, latitude: 40 },
  settings: defaultSettings,
  rules: { ...noRules, contacts: { poisonCentre: "555 0100", urgent: "555 0199" } },
  today: TODAY,
  language: "en",
  letterhead: { practice: FREE_TEXTS.practice, lines: ["1 Calle Ñu", "555 0111"] },
  author: FREE_TEXTS.author,
  addressee: ["Dr Émile Øst", "2 Rue Ægir"],
  ...over,
})
