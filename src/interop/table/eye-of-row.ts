import type { Eye, EyeExamination, Refraction } from "../../engine/course.js"
import { logMARFromDecimal, logMARFromSnellen } from "../../engine/optics/acuity.js"
import { parsePrescription } from "../../engine/optics/parse-prescription.js"
import { sphericalEquivalent } from "../../engine/optics/spherical-equivalent.js"
import { say, withDecimalSign } from "../../engine/say.js"
import { decimalAcuity } from "../../engine/units.js"
import { type Limit, limits } from "../course/limits.js"
import { cycloplegicIn, isPlano, isSphereOnly, lengthMethodIn, refractionMethodIn } from "./cell-words.js"
import { corneaOf } from "./cornea-of-row.js"
import { defined } from "./defined.js"
import type { RowCells } from "./row-cells.js"

/** What a row says of one eye at its visit; each group of figures is whole, or left out with its problem. */
export function eyeOfRow(cells: RowCells, eye: Eye, path: string): EyeExamination | undefined {
  return defined<EyeExamination>({
    axialLength: cells.whole(() => axialLengthOf(cells, eye)),
    refraction: cells.whole(() => refractionOf(cells, eye, path)),
    corneaRadius: cells.whole(() => corneaOf(cells, eye, path)),
    pupil: cells.whole(() => pupilOf(cells, eye)),
    accommodation: cells.whole(() => accommodationOf(cells, eye)),
    acuity: cells.whole(() => acuityOf(cells, eye)),
    intraocularPressure: cells.whole(() => pressureOf(cells, eye)),
  })
}

function axialLengthOf(cells: RowCells, eye: Eye): EyeExamination["axialLength"] {
  const mm = cells.number("axialLengthMm", eye, limits.axialLengthMm)
  if (mm === undefined) return undefined
  return defined({
    mm,
    readings: cells.number("readings", eye, limits.readings),
    method: wordOf(cells, {
      id: "lengthMethod",
      eye,
      wordIn: lengthMethodIn,
      list: "optical-biometry, ultrasound",
    }),
    device: cells.text("lengthDevice", eye),
    signalToNoise: cells.number("signalToNoise", eye, limits.signalToNoise),
    sdMm: cells.number("axialLengthSdMm", eye, limits.sdMm, { um: 0.001 }),
  })
}

function refractionOf(cells: RowCells, eye: Eye, path: string): Refraction | undefined {
  const lens =
    prescriptionOf(cells, { id: "prescription", eye }) ??
    lensOf(cells, { eye, sphere: "sphere", cylinder: "cylinder", axis: "axis" }) ??
    undefined
  const equivalent = cells.number("sphericalEquivalent", eye, limits.sphereD)
  if (lens === undefined && equivalent === undefined) return undefined
  if (lens !== undefined && equivalent !== undefined)
    checkEquivalent(cells, { lens, equivalent, path: `${path}.refraction` })
  if (lens === undefined)
    cells.notes.push({
      kind: "sphere-from-equivalent",
      path: `${path}.refraction`,
      why: say("only the spherical equivalent is given: it was taken as a sphere without a cylinder"),
    })
  return defined({
    ...(lens ?? { sphere: equivalent ?? 0 }),
    cycloplegic: cycloplegicOf(cells, eye),
    method: wordOf(cells, {
      id: "refractionMethod",
      eye,
      wordIn: refractionMethodIn,
      list: "autorefraction, subjective, retinoscopy",
    }),
  })
}

type Lens = Pick<Refraction, "sphere" | "cylinder" | "axis">

/** A quarter dioptre and what rounding may leave: a larger difference means that one of the figures is wrong. */
const EQUIVALENT_TOLERANCE_D = 0.26

function checkEquivalent(
  cells: RowCells,
  { lens, equivalent, path }: { readonly lens: Lens; readonly equivalent: number; readonly path: string },
): void {
  const own = sphericalEquivalent(lens)
  if (Math.abs(own - equivalent) <= EQUIVALENT_TOLERANCE_D) return
  cells.notes.push({
    kind: "equivalent-contradicts",
    path,
    why: say(
      "the table gives a spherical equivalent of {given} D; sphere and cylinder make {own} D and were kept",
      {
        given: withDecimalSign(String(equivalent)),
        own: withDecimalSign(String(own)),
      },
    ),
  })
}

/** A lens in one cell. */
export function prescriptionOf(
  cells: RowCells,
  { id, eye }: { readonly id: string; readonly eye: Eye },
): Lens | undefined {
  const cell = cells.cell(id, eye)
  if (!cell) return undefined
  const read = parsePrescription(cell.text)
  if ("problems" in read) {
    const [first] = read.problems
    return cells.refuse(cell, cell.text, first?.allowed ?? "")
  }
  const { sphere, cylinder, axis } = read.refraction
  return cylinder === 0 ? { sphere } : { sphere, cylinder, axis }
}

/** A lens in columns of its own. */
export function lensOf(
  cells: RowCells,
  names: { readonly eye: Eye; readonly sphere: string; readonly cylinder: string; readonly axis: string },
): Lens | undefined {
  const { eye } = names
  const sphere = powerOf(cells, { id: names.sphere, eye, limit: limits.sphereD })
  const cylinder = powerOf(cells, { id: names.cylinder, eye, limit: limits.cylinderD })
  const axis = cells.number(names.axis, eye, limits.axisDegrees)
  if (sphere === undefined) {
    if (cylinder !== undefined)
      missing(cells, { id: names.sphere, beside: names.cylinder, eye, of: limits.sphereD })
    return undefined
  }
  if (cylinder === undefined) {
    // Many programs write an axis of 0 or 180 beside a sphere; any other axis has lost its cylinder.
    if (axis !== undefined && axis % 180 !== 0)
      missing(cells, { id: names.cylinder, beside: names.axis, eye, of: limits.cylinderD })
    return { sphere }
  }
  if (cylinder === 0) return { sphere, cylinder }
  if (axis === undefined)
    missing(cells, { id: names.axis, beside: names.cylinder, eye, of: limits.axisDegrees })
  return { sphere, cylinder, axis: axis === 0 ? 180 : axis }
}

function powerOf(
  cells: RowCells,
  { id, eye, limit }: { readonly id: string; readonly eye: Eye; readonly limit: Limit },
): number | undefined {
  const cell = cells.cell(id, eye)
  if (!cell || isSphereOnly(cell.text)) return undefined
  return isPlano(cell.text) ? 0 : cells.numberIn(cell, limit)
}

/** A figure that the one beside it needs; said at the column that lacks it, or at the other when there is none. */
function missing(
  cells: RowCells,
  {
    id,
    beside,
    eye,
    of,
  }: { readonly id: string; readonly beside: string; readonly eye: Eye; readonly of: Limit },
): void {
  const heading = headingOf(cells, id, eye) ?? headingOf(cells, beside, eye) ?? id
  const { low, high } = of
  cells.refuse({ heading }, null, say("a number from {low} to {high}", { low, high }))
}

function headingOf(cells: RowCells, id: string, eye: Eye): string | undefined {
  return cells.plan.columns.find((column) => column.field.id === id && (column.eye ?? eye) === eye)?.heading
}

function cycloplegicOf(cells: RowCells, eye: Eye): boolean | undefined {
  const cell = cells.cell("cycloplegic", eye)
  if (!cell) return undefined
  return cycloplegicIn(cell.text) ?? cells.refuse(cell, cell.text, say("yes or no"))
}

/** A cell that must hold one of a few words. */
function wordOf<T extends string>(
  cells: RowCells,
  {
    id,
    eye,
    wordIn,
    list,
  }: {
    readonly id: string
    readonly eye: Eye
    readonly wordIn: (text: string) => T | undefined
    readonly list: string
  },
): T | undefined {
  const cell = cells.cell(id, eye)
  return cell && (wordIn(cell.text) ?? cells.refuse(cell, cell.text, say("one of {list}", { list })))
}

function pupilOf(cells: RowCells, eye: Eye): EyeExamination["pupil"] {
  return defined({
    photopic: cells.number("pupilPhotopicMm", eye, limits.pupilMm),
    mesopic: cells.number("pupilMesopicMm", eye, limits.pupilMm),
  })
}

function accommodationOf(cells: RowCells, eye: Eye): EyeExamination["accommodation"] {
  const dioptres = cells.number("accommodationD", eye, limits.accommodationD)
  return dioptres === undefined ? undefined : { dioptres }
}

function acuityOf(cells: RowCells, eye: Eye): EyeExamination["acuity"] {
  return defined({
    distanceLogMAR:
      cells.number("distanceLogMAR", eye, limits.acuityLogMAR) ??
      decimalOf(cells, eye) ??
      snellenOf(cells, eye),
    nearLogMAR: cells.number("nearLogMAR", eye, limits.acuityLogMAR),
  })
}

/** The decimals that the limits of logMAR allow: 10^-3 to 10^0.5. */
const DECIMAL_ACUITY: Limit = { low: 0.001, high: 3.16, ucum: "1", unit: "" }

function decimalOf(cells: RowCells, eye: Eye): number | undefined {
  const decimal = cells.number("distanceDecimal", eye, DECIMAL_ACUITY)
  return decimal === undefined ? undefined : fourDecimals(logMARFromDecimal(decimalAcuity(decimal)))
}

function snellenOf(cells: RowCells, eye: Eye): number | undefined {
  const cell = cells.cell("distanceSnellen", eye)
  if (!cell) return undefined
  const read = logMARFromSnellen(cell.text)
  if ("problems" in read) return cells.refuse(cell, cell.text, read.problems[0]?.allowed ?? "")
  const { low, high } = limits.acuityLogMAR
  return read.logMAR >= low && read.logMAR <= high
    ? fourDecimals(read.logMAR)
    : cells.refuse(cell, cell.text, say("two numbers above 0 with a slash between, such as 6/12 or 20/40"))
}

const fourDecimals = (value: number): number => Math.round(value * 10_000) / 10_000 + 0

function pressureOf(cells: RowCells, eye: Eye): EyeExamination["intraocularPressure"] {
  const mmHg = cells.number("pressureMmHg", eye, limits.intraocularPressureMmHg)
  return mmHg === undefined ? undefined : { mmHg }
}
