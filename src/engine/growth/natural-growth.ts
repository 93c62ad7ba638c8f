import type { EmmetropicCurve, GrowthParameters } from "../../evidence/types.js"
import { dayNumber } from "../calendar.js"
import type { Child } from "../course.js"

/** How long an eye of this child is expected to grow, as a primitive over age: growth = cumulative(b) - cumulative(a). */
export interface ExpectedGrowth {
  /** Mm grown since an arbitrary origin, at an age in years. Only differences mean something. */
  readonly cumulativeMm: (ageYears: number) => number
  readonly rateMmPerYear: (ageYears: number) => number
}

export interface NaturalGrowthInput {
  readonly child: Child
  /** Degrees, north positive; without it no season is applied. */
  readonly latitudeDegrees?: number | undefined
  readonly parameters: GrowthParameters
  readonly settingFactor: number
}

const DAYS_PER_YEAR = 365.25
const TURN = 2 * Math.PI

/**
 * Natural growth of an untreated myope: r10 E^ea S exp(-k1 (a - 10)) to the knee at 13 years, then
 * falling with k2, times 1 + A cos(2 pi (t - t_peak)).
 *
 * The primitive is closed: the integral of exp(-k x)(1 + A cos(w (x - p))) is
 * exp(-k x) (-1/k + A (-k cos + w sin) / (k^2 + w^2)), so no interval is ever summed day by day.
 * Source: the fit named in the parameter file (evidence/progression).
 *
 * @example
 * // East Asian girl, no season, 8.0 to 9.0 years: 0.4268 x 1.03 mm
 */
export function naturalGrowth({
  child,
  latitudeDegrees,
  parameters,
  settingFactor,
}: NaturalGrowthInput): ExpectedGrowth {
  const value = (name: keyof GrowthParameters["values"]) => parameters.values[name].value
  const k1 = value("declineBefore13PerYear")
  const k2 = value("declineAfter13PerYear")
  const knee = value("kneeAgeYears") - 10
  const scale =
    settingFactor *
    value("rateAt10MmPerYear") *
    (child.ancestry === "east-asian" ? value("eastAsianFactor") : 1) *
    (child.sex === "female" ? value("girlFactor") : value("boyFactor"))
  const { amplitude, peakDay } = season(latitudeDegrees, parameters)
  const peak = (dayNumber("2000-01-01") + peakDay - dayNumber(child.born)) / DAYS_PER_YEAR - 10

  const primitive = (k: number, x: number): number => {
    const angle = TURN * (x - peak)
    const wave =
      amplitude === 0
        ? 0
        : (amplitude * (-k * Math.cos(angle) + TURN * Math.sin(angle))) / (k * k + TURN * TURN)
    return Math.exp(-k * x) * (wave - 1 / k)
  }
  // Both branches are made to meet at the knee; past it exp(-k2 (x - knee)) starts from exp(-k1 knee).
  const lift = Math.exp((k2 - k1) * knee)
  const join = primitive(k1, knee) - lift * primitive(k2, knee)

  return {
    cumulativeMm: (ageYears) => {
      const x = ageYears - 10
      return scale * (x <= knee ? primitive(k1, x) : join + lift * primitive(k2, x))
    },
    rateMmPerYear: (ageYears) => {
      const x = ageYears - 10
      const decline = x <= knee ? Math.exp(-k1 * x) : lift * Math.exp(-k2 * x)
      return scale * decline * (1 + amplitude * Math.cos(TURN * (x - peak)))
    },
  }
}

/** The emmetropic curve as a primitive: what an eye without myopia grows. No season is applied to it. */
export function emmetropicGrowthOf(curve: EmmetropicCurve): ExpectedGrowth {
  return {
    cumulativeMm: (ageYears) => -curve.spanMm * Math.exp(-curve.ratePerYear * ageYears),
    rateMmPerYear: (ageYears) => curve.spanMm * curve.ratePerYear * Math.exp(-curve.ratePerYear * ageYears),
  }
}

function season(
  latitudeDegrees: number | undefined,
  parameters: GrowthParameters,
): { amplitude: number; peakDay: number } {
  const { seasonAmplitude, seasonPeakDayOfYearNorth, seasonPeakDayOfYearSouth, tropicLatitudeDegrees } =
    parameters.values
  if (latitudeDegrees === undefined || Math.abs(latitudeDegrees) < tropicLatitudeDegrees.value) {
    return { amplitude: 0, peakDay: seasonPeakDayOfYearNorth.value }
  }
  return {
    amplitude: seasonAmplitude.value,
    peakDay: (latitudeDegrees > 0 ? seasonPeakDayOfYearNorth : seasonPeakDayOfYearSouth).value,
  }
}
