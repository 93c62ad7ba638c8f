import type { CourseFigureInput } from "../../src/chart/course-figure-input.js"
import type { Assessment, Duty } from "../../src/engine/assessment.js"
import type { Visit } from "../../src/engine/course.js"
import {
  ages,
  at,
  BORN,
  course,
  coverage,
  curves,
  duty,
  eye,
  forecastOf,
  intervals,
  lengthSd,
  oldGlasses,
  TODAY,
} from "./invented-child.js"

const VISITS: readonly Visit[] = [
  oldGlasses("2023-05-02", -0.75, -0.5),
  oldGlasses("2024-04-11", -1.25, -1.25),
  { date: "2024-11-12", right: eye(23.62, -1.5, 3.6), left: eye(23.53, -1.25, 3.5) },
  {
    date: "2025-03-10",
    right: eye(23.74, -1.75, 3.6),
    left: eye(23.67, -1.5, 3.6),
    symptoms: [{ kind: "light-sensitivity", grade: 0 }],
  },
  {
    date: "2025-04-12",
    right: { pupil: { photopic: 4.6 } },
    left: { pupil: { photopic: 4.5 } },
    symptoms: [
      { kind: "light-sensitivity", grade: 2 },
      { kind: "near-blur", grade: 1 },
    ],
  },
  {
    date: "2025-09-12",
    right: eye(23.81, -1.75, 4.5),
    left: eye(23.74, -1.75, 4.4),
    symptoms: [
      { kind: "light-sensitivity", grade: 1 },
      { kind: "near-blur", grade: 0 },
    ],
  },
  {
    date: "2026-03-11",
    right: eye(23.9, -2, 4.4),
    left: eye(23.81, -1.75, 4.4),
    symptoms: [{ kind: "light-sensitivity", grade: 0 }],
  },
  { date: "2026-09-10", right: eye(23.95, -2, 4.4), left: eye(23.88, -2, 4.3) },
]

const DUTIES: readonly Duty[] = [
  duty("baseline", "2025-03-10", "done"),
  duty("1-month check", "2025-04-12", "done"),
  duty("6-month review", "2025-09-10", "done"),
  duty("12-month review", "2026-03-10", "done"),
  duty("18-month review", "2026-09-10", "open"),
  duty("24-month review", "2027-03-10", "upcoming"),
  duty("decision to stop at 24 months", "2027-03-10", "upcoming"),
  duty("check 6 months after the stop", "2027-09-10", "upcoming"),
]

const eyeAssessment = {
  length: null,
  rate: null,
  natural: null,
  emmetropic: null,
  detectableChangeMm: null,
  position: { refused: "not asked" },
} as const

const ASSESSMENT: Assessment = {
  asOf: TODAY,
  ageYears: at(TODAY),
  eyes: { right: eyeAssessment, left: eyeAssessment },
  finding: {
    state: "cannot-tell-yet",
    treatment: "atropine 0.05 %",
    likelihoodRatio: 2.3,
    lean: null,
    upper: 9,
    lower: 1 / 9,
    earliestAnswer: null,
    reasons: [],
  },
  growth: {
    state: "slowed-growth",
    probabilities: null,
    mmPerYear: 0.14,
    low95: 0.05,
    high95: 0.23,
    naturalMmPerYear: 0.27,
    emmetropicMmPerYear: 0.08,
    reasons: [],
  },
  chances: [],
  concerns: [],
  checks: [],
  beliefs: [],
  method: { version: "0", parameters: "invented" },
}

export const full: CourseFigureInput = {
  course: course(VISITS, {
    treatments: [{ from: "2025-03-10", to: null, kind: "atropine", concentrationPercent: 0.05 }],
  }),
  today: TODAY,
  lengthSd: lengthSd(VISITS, 0.025),
  growthIntervals: intervals(VISITS, 0.025),
  ...curves,
  assessment: ASSESSMENT,
  forecast: {
    asOf: TODAY,
    eyes: {
      right: forecastOf(at("2026-09-10"), 23.95, 0.45),
      left: forecastOf(at("2026-09-10"), 23.88, 0.45),
    },
    chance26mmBy18: { untreated: 0.06, asTreated: 0.01 },
    chanceMinus6DBy18: null,
    notes: [],
  },
  duties: DUTIES,
  coverageByMonth: coverage("2025-03-10", [1, 1, 1, 1, 1, 1, 1, 0.9, 0.2, 0, 0.6, 1, 1, 1, 1, 1, 1, 1]),
}

const RIGHT_ONLY = VISITS.map(({ left: _left, ...visit }) => visit)

export const oneEye: CourseFigureInput = {
  ...full,
  course: { ...full.course, visits: RIGHT_ONLY },
  lengthSd: lengthSd(RIGHT_ONLY, 0.025),
  growthIntervals: intervals(RIGHT_ONLY, 0.025),
  forecast: { ...full.forecast, eyes: { right: forecastOf(at("2026-09-10"), 23.95, 0.45) } } as NonNullable<
    CourseFigureInput["forecast"]
  >,
}

const UNTREATED_VISITS: readonly Visit[] = [
  { date: "2025-11-12", right: eye(23.92, -1.5), left: eye(23.9, -1.5) },
  { date: "2026-01-08", right: eye(24.02, -1.75), left: eye(23.93, -1.75) },
  { date: "2026-09-02", right: eye(24.21, -2.25), left: eye(24.14, -2) },
]

export const untreated: CourseFigureInput = {
  ...full,
  course: course(UNTREATED_VISITS),
  lengthSd: lengthSd(UNTREATED_VISITS, 0.025),
  growthIntervals: intervals(UNTREATED_VISITS, 0.025),
  assessment: {
    ...ASSESSMENT,
    finding: { ...ASSESSMENT.finding, state: "no-treatment", treatment: null, likelihoodRatio: null },
    growth: { ...ASSESSMENT.growth, state: "as-untreated", mmPerYear: 0.33, low95: 0.24, high95: 0.42 },
  },
  forecast: {
    ...(full.forecast as NonNullable<CourseFigureInput["forecast"]>),
    eyes: { right: forecastOf(at("2026-09-02"), 24.21, 0) },
  },
  duties: [
    duty("baseline", "2026-08-20", "overdue"),
    duty("consent to atropine 0.05 %", "2026-10-20", "upcoming"),
  ],
  coverageByMonth: undefined,
  referenceBand: {
    label: "invented, centiles 2.5 to 97.5, approximate",
    rows: ages(6, 15, 1).map((age) => ({
      age,
      lowMm: 20.95 + 0.1 * (age - 6),
      highMm: 23.85 + 0.14 * (age - 6),
    })),
  },
}

const STOPPED_VISITS: readonly Visit[] = [
  { date: "2022-06-10", right: eye(23.3, -1, 3.8), left: eye(23.24, -1, 3.7) },
  { date: "2022-12-12", right: eye(23.36, -1.25, 4.9), left: eye(23.29, -1, 4.8) },
  { date: "2023-06-14", right: eye(23.43, -1.25, 4.9), left: eye(23.35, -1.25, 4.9) },
  { date: "2023-12-11", right: eye(23.49, -1.5, 4.8), left: eye(23.43, -1.25, 4.9) },
  { date: "2024-06-12", right: eye(23.57, -1.5, 4.9), left: eye(23.49, -1.5, 4.8) },
  { date: "2024-12-10", right: eye(23.82, -2, 3.9), left: eye(23.73, -2, 3.9) },
  { date: "2025-06-11", right: eye(23.98, -2.5, 3.8), left: eye(23.9, -2.25, 3.8) },
  { date: "2026-06-10", right: eye(24.06, -2.5, 4.1), left: eye(23.99, -2.5, 4.1) },
]

export const stopped: CourseFigureInput = {
  ...full,
  course: course(STOPPED_VISITS, {
    treatments: [
      { from: "2022-06-10", to: "2022-08-15", kind: "atropine", concentrationPercent: 0.025 },
      { from: "2022-08-15", to: "2024-06-12", kind: "atropine", concentrationPercent: 0.05 },
      { from: "2025-06-11", kind: "atropine", concentrationPercent: 0.01 },
      { from: "2025-09-01", kind: "lenslet-spectacles" },
    ],
  }),
  lengthSd: lengthSd(STOPPED_VISITS, 0.025),
  growthIntervals: intervals(STOPPED_VISITS, 0.025),
  forecast: {
    ...(full.forecast as NonNullable<CourseFigureInput["forecast"]>),
    eyes: { right: forecastOf(at("2026-06-10"), 24.06, 0.3) },
  },
  coverageByMonth: coverage("2022-06-10", Array<number>(24).fill(1)),
  duties: [
    ...["2022-07-10", "2022-12-10", "2023-06-10", "2023-12-10", "2024-06-10", "2024-12-10", "2025-06-10"].map(
      (due, i) => duty(`review ${i + 1}`, due, i === 5 ? "missed" : "done"),
    ),
    duty("6-month review", "2026-06-10", "done"),
    duty("12-month review", "2026-12-10", "upcoming"),
  ],
}

export const empty: CourseFigureInput = {
  course: { lengthwise: 1, child: { born: BORN, sex: "male" }, visits: [] },
  today: TODAY,
  lengthSd: [],
  growthIntervals: [],
  naturalRate: [],
  emmetropicRate: [],
  emmetropicLength: [],
  duties: [],
}

export const CUTS = { nearNormal: 0.25, slowed: 0.75, asUntreated: 1.5 } as const
