import type { Assessment, Duty, Forecast } from "../engine/assessment.js"
import type { CalendarDate, Course, Eye } from "../engine/course.js"

/**
 * What the course figure is drawn from: values that the engine has already worked out. The figure calculates no
 * clinical number of its own. Ages in years, lengths in mm, rates in mm per year. An empty list means: not known,
 * and the track says so.
 */
export interface CourseFigureInput {
  readonly course: Course
  readonly today: CalendarDate
  /** Standard deviation of one session's length, for the 95 % whiskers; a length without one is drawn without. */
  readonly lengthSd: readonly LengthSd[]
  /** Mean of the eyes measured at both ends; in order of age, not overlapping. */
  readonly growthIntervals: readonly GrowthInterval[]
  /** Growth expected of an untreated myope of this child's sex and population. */
  readonly naturalRate: readonly RateAtAge[]
  readonly emmetropicRate: readonly RateAtAge[]
  readonly emmetropicLength: readonly LengthAtAge[]
  readonly referenceBand?: ReferenceBand | undefined
  readonly assessment?: Assessment | undefined
  readonly forecast?: Forecast | undefined
  readonly duties: readonly Duty[]
  /** Nights with an in-date bottle; absent when no supply is recorded. */
  readonly coverageByMonth?: readonly MonthOfCoverage[] | undefined
}

export interface LengthSd {
  readonly date: CalendarDate
  readonly eye: Eye
  readonly mm: number
}

export interface GrowthInterval {
  readonly fromAge: number
  readonly toAge: number
  readonly mmPerYear: number
  readonly low95: number
  readonly high95: number
}

export interface RateAtAge {
  readonly age: number
  readonly mmPerYear: number
}

export interface LengthAtAge {
  readonly age: number
  readonly mm: number
}

/** Two centiles of a published reference, drawn behind the lengths. */
export interface ReferenceBand {
  /** Short, as written beside the band, e.g. "European, centiles 2.5 to 97.5, approximate". */
  readonly label: string
  readonly rows: readonly { readonly age: number; readonly lowMm: number; readonly highMm: number }[]
}

export interface MonthOfCoverage {
  /** Age at the first night of the month. */
  readonly age: number
  /** Share of its nights covered, 0 to 1. */
  readonly share: number
}

export interface CourseFigureOptions {
  /** Width of the figure in px; text keeps its size, so 560 lays out anew instead of shrinking. Default 880. */
  readonly width?: number | undefined
  /** Ages shown, years. Default: one year before the first data to about three after the last, not beyond 18. */
  readonly ageDomain?: readonly [number, number] | undefined
  /**
   * Inks. Default "themed".
   *
   * - `themed`: custom properties of the page, with the plain ink as fallback
   * - `plain`: the plain inks alone, for paper and for PDF writers that know no custom properties
   */
  readonly colours?: "themed" | "plain" | undefined
}

export type TrackName = "length" | "growth" | "refraction" | "treatment" | "safety" | "duties"

/** Where everything stands, in the units of the figure's viewBox: enough to lay a cursor over it. */
export interface CourseLayout {
  readonly width: number
  readonly height: number
  /** Linear scale: age `domain[0]` stands at x = `range[0]`. */
  readonly age: { readonly domain: readonly [number, number]; readonly range: readonly [number, number] }
  /** Plot area of each track, from top to bottom. */
  readonly tracks: readonly {
    readonly name: TrackName
    readonly title: string
    readonly x: number
    readonly y: number
    readonly width: number
    readonly height: number
  }[]
  readonly today: { readonly ageYears: number; readonly x: number } | null
  /** In order of age, one for each date at which there is something to read. */
  readonly stops: readonly CourseStop[]
}

export interface CourseStop {
  readonly ageYears: number
  readonly date: CalendarDate
  readonly x: number
  /** First the age and date, then one fact a line. */
  readonly lines: readonly string[]
}

export interface CourseFigure {
  readonly svg: string
  readonly layout: CourseLayout
}
