import { deepFreeze } from "./freeze.js"
import { numberIn } from "./parse-table.js"
import { table } from "./tables.js"
import type {
  CentileReference,
  EmmetropicCurve,
  InfancyMean,
  LmsReference,
  NormalReference,
  Reference,
  ReferenceSex,
  SplitNormalReference,
  Table,
} from "./types.js"

type Row = Table["rows"][number]

function sexOf(row: Row): ReferenceSex {
  if (row.sex === "F") return "female"
  if (row.sex === "M") return "male"
  if (row.sex === "all") return "all"
  throw new Error(`sex must be F, M or all, found "${row.sex}"`)
}

const sexAndAge = (row: Row) => ({ sex: sexOf(row), ageYears: numberIn(row, "age_years") })

/** The printed centiles of a row; blank cells, and centiles below `lowest`, are left out. */
function centilesOf(row: Row, lowest = 0): Record<string, number> {
  return Object.fromEntries(
    Object.keys(row)
      .filter((column) => /^p[\d.]+$/.test(column) && row[column] !== "" && Number(column.slice(1)) >= lowest)
      .map((column) => [column.slice(1), numberIn(row, column)]),
  )
}

const europeMeans = table("growth-references/al_mean_sd_europe_tideman2018.csv")
const europeDerived = table("growth-references/al_centiles_europe_derived_normal.csv")
const europeSexed = table("growth-references/al_centiles_europe_sexed_approx.csv")
const orindaLength = table("growth-references/al_centiles_us_olsm.csv")
const orindaLms = table("growth-references/al_lms_us_olsm_age6.csv")
const germanRefraction = table("growth-references/se_centiles_germany_life2020.csv")
const guangzhouRefraction = table("growth-references/se_low_centiles_guangzhou2016.csv")
const orindaRefraction = table("growth-references/se_centiles_us_olsm.csv")

/** Mean and SD as read in the abstract; the adults are left out because their SD and long upper tail are not normal. */
const europeDerivedNormal: NormalReference = {
  id: "tideman2018-derived",
  measure: "axial-length",
  shape: "normal",
  grade: "C",
  population: "European children, sexes mixed",
  n: "6,934 children at 6 and 9 years, 2,495 at 15",
  instrument: "not stated in the text read",
  youngestAgeYears: 6,
  oldestAgeYears: 15,
  note: "Approximate: the published mean and SD under a normal shape, not published centiles. Sexes mixed: a boy reads about 0.25 mm too high, a girl too low. 9 to 15 years joins two cohorts, so 10 to 14 is a sketch.",
  provenance: europeDerived.provenance,
  rows: europeMeans.rows
    .filter((row) => row.age_years !== "adult")
    .map((row) => ({
      ...sexAndAge(row),
      mean: numberIn(row, "al_mean_mm"),
      sd: numberIn(row, "al_sd_mm"),
    })),
}

const europeBySex: NormalReference = {
  id: "al-europe-sexed-approx",
  measure: "axial-length",
  shape: "normal",
  grade: "C",
  population: "European children, split by sex",
  n: "6,934 children at 6 and 9 years, 2,495 at 15",
  instrument: "not stated in the text read",
  youngestAgeYears: 6,
  oldestAgeYears: 15,
  note: "Approximate: the mixed European mean split by a boy-girl difference of 0.50 mm read in two other cohorts, normal shape assumed. Not a published table. 10 to 14 years is a sketch between two cohorts.",
  provenance: europeSexed.provenance,
  rows: europeSexed.rows.map((row) => ({
    ...sexAndAge(row),
    mean: numberIn(row, "mean_mm"),
    sd: numberIn(row, "sd_mm"),
  })),
}

const orindaCentiles: CentileReference = {
  id: "olsm-al",
  measure: "axial-length",
  shape: "centiles",
  grade: "B",
  population: "Californian children, mostly white, not myopic at entry",
  n: "19 to 241 per cell, 456 of them at 6 years",
  instrument: "A-scan ultrasound",
  youngestAgeYears: 6,
  oldestAgeYears: 8,
  agesAreCells: true,
  note: "1989 to 2001, myopes at entry left out, so the long tail is cut. Whole-year cells; only 6 years is well filled, tails of small cells are blank. Optical instruments may read differently.",
  provenance: orindaLength.provenance,
  rows: orindaLength.rows.map((row) => ({ ...sexAndAge(row), values: centilesOf(row) })),
}

const orindaLmsAtSix: LmsReference = {
  id: "olsm-lms",
  measure: "axial-length",
  shape: "lms",
  grade: "B",
  population: "Californian children, mostly white, not myopic at entry",
  n: "215 boys, 241 girls",
  instrument: "A-scan ultrasound",
  youngestAgeYears: 6,
  oldestAgeYears: 6,
  note: "Age 6 only. Fitted to the same children as olsm-al; L is poorly determined at this number.",
  provenance: orindaLms.provenance,
  rows: orindaLms.rows.map((row) => ({
    ...sexAndAge(row),
    l: numberIn(row, "L"),
    m: numberIn(row, "M"),
    s: numberIn(row, "S"),
  })),
}

/** Ages 3 to 12 only: 13 is incomplete for girls, 14 to 17 were not readable, 18 was pieced together. */
const germanSplitNormal: SplitNormalReference = {
  id: "truckenbrod2020-se",
  measure: "spherical-equivalent",
  shape: "split-normal",
  grade: "B",
  population: "German children (Leipzig)",
  n: "60 to 200 per cell, 1,999 children in all",
  instrument: "wavefront autorefraction without cycloplegia",
  youngestAgeYears: 3,
  oldestAgeYears: 12,
  note: "Without cycloplegia: young children read more myopic than with it, so a cycloplegic value must not be placed on it silently. Three printed centiles.",
  provenance: germanRefraction.provenance,
  rows: germanRefraction.rows
    .filter((row) => Number(row.age_years) <= 12)
    .map((row) => ({
      ...sexAndAge(row),
      p3: numberIn(row, "p3"),
      p50: numberIn(row, "p50"),
      p97: numberIn(row, "p97"),
    })),
}

const guangzhouLowCentiles: CentileReference = {
  id: "chen2016-se",
  measure: "spherical-equivalent",
  shape: "centiles",
  grade: "B",
  population: "Guangzhou, China, a city with much high myopia",
  n: "4,218 children",
  instrument: "cycloplegic autorefraction",
  youngestAgeYears: 5,
  oldestAgeYears: 15,
  agesAreCells: true,
  note: "Six published cells only: centiles 3, 5 and 10 at 5 and at 15 years. Nothing between those ages.",
  provenance: guangzhouRefraction.provenance,
  rows: guangzhouRefraction.rows.map((row) => ({ ...sexAndAge(row), values: centilesOf(row) })),
}

const orindaRefractionCentiles: CentileReference = {
  id: "olsm-se",
  measure: "spherical-equivalent",
  shape: "centiles",
  grade: "B",
  population: "Californian children, mostly white, not myopic at entry",
  n: "19 to 241 per cell, 456 of them at 6 years",
  instrument: "cycloplegic autorefraction by study protocol",
  youngestAgeYears: 6,
  oldestAgeYears: 8,
  agesAreCells: true,
  note: "Myopes at entry were left out, so nothing below the 25th centile is used. Whole-year cells; only 6 years is well filled.",
  provenance: orindaRefraction.provenance,
  rows: orindaRefraction.rows.map((row) => ({ ...sexAndAge(row), values: centilesOf(row, 25) })),
}

/** Every reference shipped, best first within a measure. None is a full sexed table of length: there is none to read. */
export const references: readonly Reference[] = deepFreeze([
  europeBySex,
  europeDerivedNormal,
  orindaCentiles,
  orindaLmsAtSix,
  germanSplitNormal,
  orindaRefractionCentiles,
  guangzhouLowCentiles,
])

/** Mean length of emmetropic eyes, 28 studies, refitted by this project and equal to the published results. */
export const emmetropicCurve: EmmetropicCurve = deepFreeze({
  id: "yii2023-curve",
  grade: "A",
  asymptoteMm: 23.598968,
  spanMm: 5.598103,
  ratePerYear: 0.298611,
  youngestAgeYears: 6,
  oldestAgeYears: 24,
  provenance: table("growth-references/al_emmetrope_curve.csv").provenance,
})

/** Mean length and refraction of infants and young children; turns over near 9 years, so never run past 6.5. */
export const infancyMean: InfancyMean = deepFreeze({
  id: "mutti2018-eq",
  grade: "A",
  axialLengthMm: {
    intercept: 20.3,
    girl: -0.346,
    fast: -1.09,
    fastRatePerYear: 4.18,
    linear: 0.567,
    quadratic: -0.0317,
  },
  sphericalEquivalentD: {
    intercept: 0.494,
    girl: 0,
    fast: 1.66,
    fastRatePerYear: 1.75,
    linear: 0.384,
    quadratic: -0.0463,
  },
  youngestAgeYears: 0.25,
  oldestAgeYears: 6.5,
  provenance: table("growth-references/al_se_mean_0_to_6y_mutti2018.csv").provenance,
})
