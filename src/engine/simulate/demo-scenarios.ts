import type { Ancestry, TreatmentKind } from "../course.js"

/** What a visitor is to see in an invented child; `demo-stories.ts` says how it is told from an assessment. */
export type Story =
  | "slowed"
  | "lean-slowed"
  | "not-slowed"
  | "lean-not-slowed"
  | "too-early"
  | "weak-drop"
  | "stopped-near-normal"
  | "stopped-rebound"
  | "stopped-loss-of-effect"
  | "changed-instrument"
  | "ultrasound-first"
  | "missed-visits"
  | "pre-myopic"
  | "optical"
  | "combined"
  | "stronger-drop"
  | "watched"
  | "poor-coverage"
  | "exchanged-eyes"
  | "lost-sign"
  | "light-sensitivity"
  | "fast-grower"
  | "growth-ending"
  | "one-eye"
  | "too-young"

/** One treatment of a scenario. Months count from the first full examination here. */
export interface PlannedTreatment {
  readonly kind: TreatmentKind
  readonly concentrationPercent?: number
  /** True share of natural growth it withholds from this child. */
  readonly withholds: number
  readonly fromMonth: number
  readonly toMonth?: number
}

export interface Scenario {
  readonly story: Story
  readonly sex: "girl" | "boy"
  readonly ancestry: Ancestry
  /** At the first full examination here. */
  readonly ageYears: number
  /** Spherical equivalent at the first figure, D. */
  readonly firstD: number
  /** Since the first full examination. */
  readonly months: number
  /** True multiple of natural growth. */
  readonly pace: number
  readonly treatments: readonly PlannedTreatment[]
  /** Months before the first examination of which a prescription is known. */
  readonly glassesBefore: readonly number[]
  /** Planned visits that the family did not come to, by month. */
  readonly missed: readonly number[]
  /** Days without a bottle between one and the next; 0 where bottles follow each other. */
  readonly gapDays: number
  /** No bottle is recorded from this month on. */
  readonly bottlesUntilMonth: number
  /** From this month on lengths are taken with the other instrument. */
  readonly otherInstrumentFromMonth: number
  readonly firstInstrument: "Biometer A" | "Biometer B" | "ultrasound"
  /** Growth above natural after the stop, mm, gained evenly over a year. */
  readonly extraAfterStopMm: number
  /** How much longer the left eye is than the right, mm. */
  readonly leftLongerMm: number
  readonly noLeftLength: boolean
  readonly noConsent: boolean
}

const usual = {
  pace: 1,
  treatments: [],
  glassesBefore: [],
  missed: [],
  gapDays: 0,
  bottlesUntilMonth: Number.POSITIVE_INFINITY,
  otherInstrumentFromMonth: Number.POSITIVE_INFINITY,
  firstInstrument: "Biometer A",
  extraAfterStopMm: 0,
  leftLongerMm: 0,
  noLeftLength: false,
  noConsent: false,
} as const satisfies Partial<Scenario>

type Child = readonly [
  sex: Scenario["sex"],
  ancestry: Ancestry,
  ageYears: number,
  firstD: number,
  months: number,
  own?: Partial<Scenario>,
]

const told = (story: Story, shared: Partial<Scenario>, children: readonly Child[]): readonly Scenario[] =>
  children.map(([sex, ancestry, ageYears, firstD, months, own]) => ({
    ...usual,
    ...shared,
    ...own,
    ...{ story, sex, ancestry, ageYears, firstD, months },
  }))

type Span = { readonly from?: number; readonly to?: number }
const span = ({ from = 0, to }: Span) => ({
  fromMonth: from,
  ...(to === undefined ? {} : { toMonth: to }),
})
const drops = (concentrationPercent: number, withholds: number, during: Span = {}): PlannedTreatment => ({
  kind: "atropine",
  concentrationPercent,
  withholds,
  ...span(during),
})
const optics = (kind: TreatmentKind, withholds: number, during: Span = {}): PlannedTreatment => ({
  kind,
  withholds,
  ...span(during),
})

/**
 * The invented children of the invented practice, one a line: sex, ancestry, age at the first full examination, spherical
 * equivalent at the first figure, months since that examination, and what is special. All values are made up.
 */
export const scenarios: readonly Scenario[] = [
  // Watched here for a year first, or with old glasses in hand; the drop works better than on average.
  ...told("slowed", { pace: 1.35, treatments: [drops(0.05, 0.85, { from: 12 })] }, [
    ["girl", "east-asian", 7.2, -1.5, 37],
    ["boy", "european", 7.6, -1.75, 31],
    ["girl", "south-asian", 8.1, -2, 34],
  ]),
  ...told("slowed", { pace: 1.35, treatments: [drops(0.05, 0.85)], glassesBefore: [25, 13] }, [
    ["boy", "east-asian", 8.3, -1.25, 25],
    ["girl", "european", 8.2, -1.25, 26],
  ]),
  ...told("lean-slowed", { pace: 1.1, treatments: [drops(0.05, 0.7)], glassesBefore: [23, 12] }, [
    ["girl", "east-asian", 8.8, -1.25, 19],
    ["boy", "other", 8.2, -1, 20],
  ]),
  ...told("not-slowed", { pace: 1.2, treatments: [drops(0.05, 0)], glassesBefore: [20, 10] }, [
    ["girl", "east-asian", 7.8, -1.25, 25],
    ["boy", "east-asian", 8, -1.5, 19, { treatments: [optics("defocus-spectacles", 0)] }],
  ]),
  ...told("lean-not-slowed", { pace: 1.1, treatments: [drops(0.05, 0)], glassesBefore: [20, 10] }, [
    ["girl", "african", 7.9, -1, 25],
    ["boy", "european", 7.5, -1.5, 31, { treatments: [drops(0.05, 0, { from: 12 })], glassesBefore: [] }],
  ]),
  ...told("too-early", { treatments: [drops(0.05, 0.45)] }, [
    ["girl", "east-asian", 6.9, -1.5, 0.7],
    ["boy", "european", 9.4, -2.25, 1.4, { glassesBefore: [14] }],
    ["girl", "unstated", 8.2, -1.75, 2.6],
    ["boy", "south-asian", 10.1, -2.5, 3.5, { treatments: [drops(0.025, 0.3)] }],
    ["girl", "european", 8.9, -3, 1.2, { treatments: [optics("lenslet-spectacles", 0.5)] }],
    ["boy", "east-asian", 7.7, -2, 5.6, { treatments: [drops(0.01, 0.15)] }],
  ]),
  ...told("weak-drop", { treatments: [drops(0.01, 0.15)] }, [
    ["girl", "european", 8.6, -1.5, 13],
    ["boy", "east-asian", 7.3, -2, 19],
    ["girl", "south-asian", 9.2, -2.75, 24.2, { pace: 0.9 }],
    ["boy", "african", 10.3, -1.5, 12.1],
    ["girl", "other", 8.4, -1.25, 18.2],
  ]),
  ...told("stopped-near-normal", { pace: 0.4, treatments: [drops(0.05, 0.5, { to: 24 })] }, [
    ["girl", "european", 9.3, -2.25, 37],
    ["boy", "east-asian", 9.1, -3, 38],
  ]),
  ...told("stopped-rebound", { treatments: [drops(0.05, 0.6, { to: 24 })], extraAfterStopMm: 0.24 }, [
    ["girl", "east-asian", 7.1, -1.75, 37],
    ["boy", "european", 7.4, -2, 37],
  ]),
  ...told("stopped-loss-of-effect", { pace: 1.05, treatments: [drops(0.05, 0.6, { to: 24 })] }, [
    ["girl", "south-asian", 7, -1.5, 37],
  ]),
  ...told("changed-instrument", { treatments: [drops(0.05, 0.5)], otherInstrumentFromMonth: 12 }, [
    ["boy", "european", 8.7, -2, 19],
    ["girl", "east-asian", 9, -2.5, 25, { firstInstrument: "Biometer B" }],
  ]),
  ...told(
    "ultrasound-first",
    { treatments: [drops(0.05, 0.5)], firstInstrument: "ultrasound", otherInstrumentFromMonth: 12 },
    [["boy", "african", 8.5, -2.25, 13.5]],
  ),
  ...told("missed-visits", { treatments: [drops(0.05, 0.4)] }, [
    ["girl", "unstated", 8.9, -2, 14, { missed: [6, 12], bottlesUntilMonth: 8 }],
    ["boy", "east-asian", 9.6, -2.5, 9.5, { missed: [1, 6] }],
    ["girl", "european", 10.4, -1.75, 20, { missed: [12, 18], noConsent: true }],
  ]),
  ...told("pre-myopic", { pace: 0.35 }, [
    ["girl", "east-asian", 6.6, 0.75, 13],
    ["boy", "european", 7.3, 0.5, 6.5],
    ["girl", "african", 7.9, 0.75, 19],
  ]),
  ...told("optical", {}, [
    ["boy", "east-asian", 9.4, -2.5, 19, { treatments: [optics("lenslet-spectacles", 0.55)] }],
    ["girl", "european", 8.7, -1.75, 13, { treatments: [optics("defocus-spectacles", 0.5)] }],
    ["boy", "other", 10.2, -3, 12.2, { treatments: [optics("dual-focus-lens", 0.4)] }],
    ["girl", "south-asian", 11, -2.75, 25, { treatments: [optics("dual-focus-lens", 0.45)] }],
    ["girl", "east-asian", 9.8, -3.25, 13, { treatments: [optics("orthokeratology", 0.45)] }],
    ["boy", "european", 11.3, -2.5, 19, { treatments: [optics("orthokeratology", 0.4)] }],
  ]),
  ...told("combined", { treatments: [optics("orthokeratology", 0.4), drops(0.01, 0.15, { from: 6 })] }, [
    ["girl", "east-asian", 9.1, -3.5, 18.5],
  ]),
  ...told(
    "stronger-drop",
    { pace: 1.2, treatments: [drops(0.01, 0.1, { to: 12 }), drops(0.05, 0.5, { from: 12 })] },
    [
      ["girl", "east-asian", 8, -2.25, 19],
      ["boy", "south-asian", 8.8, -1.75, 13.3],
    ],
  ),
  ...told("watched", {}, [
    ["boy", "european", 10.8, -1, 13],
    ["girl", "unstated", 9.7, -0.75, 6.6],
    ["boy", "african", 11.6, -1.5, 19],
  ]),
  ...told("poor-coverage", { treatments: [drops(0.05, 0.5)], gapDays: 24 }, [
    ["girl", "european", 8.5, -2.25, 19],
    ["boy", "east-asian", 9.3, -2, 13],
  ]),
  ...told("exchanged-eyes", { treatments: [drops(0.05, 0.5)], leftLongerMm: 0.55 }, [
    ["girl", "european", 9.2, -2.5, 19],
  ]),
  ...told("lost-sign", { treatments: [drops(0.025, 0.3)] }, [["boy", "east-asian", 9.9, -2.75, 13]]),
  ...told("light-sensitivity", { treatments: [drops(0.05, 0.5)] }, [["boy", "european", 10.1, -2.75, 1.6]]),
  ...told("fast-grower", { pace: 2.3 }, [["girl", "east-asian", 7.8, -2.25, 12.8]]),
  ...told("growth-ending", { pace: 0.9, treatments: [drops(0.01, 0.15)] }, [
    ["boy", "european", 15.8, -4.25, 13],
  ]),
  ...told("one-eye", { treatments: [drops(0.05, 0.5)], noLeftLength: true }, [
    ["girl", "other", 8.3, -2.5, 13],
  ]),
  ...told("too-young", {}, [["boy", "east-asian", 4.8, -1.25, 6.7]]),
]
