import { parsePrescription } from "../../engine/optics/parse-prescription.js"
import { type Limit, limits } from "../course/limits.js"
import { isAbsent } from "./cell-text.js"
import { ancestryIn, cycloplegicIn, isPlano, isSphereOnly, oldGlassesIn, treatmentIn } from "./cell-words.js"
import { isDateLike } from "./dates.js"
import { readNumber } from "./numbers.js"

/** A radius or a power: which of them is for the unit to say. */
const RADIUS_OR_POWER = [limits.corneaRadiusMm, limits.corneaPowerD] as const

const FIGURES: Readonly<Record<string, readonly Limit[]>> = {
  axialLengthMm: [limits.axialLengthMm],
  axialLengthSdMm: [{ ...limits.sdMm, high: 5000 }],
  signalToNoise: [limits.signalToNoise],
  readings: [limits.readings],
  sphere: [limits.sphereD],
  cylinder: [limits.cylinderD],
  axis: [limits.axisDegrees],
  sphericalEquivalent: [limits.sphereD],
  corneaFlatMm: RADIUS_OR_POWER,
  corneaSteepMm: RADIUS_OR_POWER,
  pupilPhotopicMm: [limits.pupilMm],
  pupilMesopicMm: [limits.pupilMm],
  accommodationD: [limits.accommodationD],
  distanceLogMAR: [limits.acuityLogMAR],
  distanceDecimal: [{ ...limits.acuityLogMAR, low: 0 }],
  nearLogMAR: [limits.acuityLogMAR],
  pressureMmHg: [limits.intraocularPressureMmHg],
  glassesSphere: [limits.sphereD],
  glassesCylinder: [limits.cylinderD],
  glassesAxis: [limits.axisDegrees],
  myopicParents: [{ low: 0, high: 2, ucum: "1", unit: "" }],
}

const isPrescription = (text: string): boolean => "refraction" in parsePrescription(text)
const isStrength = (text: string): boolean =>
  isWithin(text.replace(/\s*%$/, ""), [{ ...limits.concentrationPercent, high: 15 }])

const FITS: Readonly<Record<string, (text: string) => boolean>> = {
  born: isDateLike,
  date: isDateLike,
  glassesDate: isDateLike,
  treatmentFrom: isDateLike,
  treatmentTo: isDateLike,
  name: (text) => /\p{L}/u.test(text),
  prescription: isPrescription,
  glassesPrescription: isPrescription,
  cycloplegic: (text) => cycloplegicIn(text) !== undefined,
  oldGlasses: (text) => oldGlassesIn(text) !== undefined,
  ancestry: (text) => ancestryIn(text) !== undefined,
  treatmentKind: (text) => treatmentIn(text) !== undefined,
  concentrationPercent: isStrength,
}

/** The share of a column's values that must fit a field; the rest may be slips, each refused at its row. */
const MOST = 0.7

/** Whether the values of a column can be those of a field; a column without values fits any. */
export function fitsField(id: string, texts: readonly string[]): boolean {
  const figures = FIGURES[id]
  const fits = FITS[id] ?? (figures ? (text: string) => isWithin(text, figures) : () => true)
  const held = texts.filter((text) => !isAbsent(text))
  return held.filter(fits).length >= held.length * MOST
}

function isWithin(text: string, allowed: readonly Limit[]): boolean {
  if (isPlano(text) || isSphereOnly(text)) return true
  const read = [readNumber(text, "."), readNumber(text, ",")].find((found) => "value" in found)
  if (!read || !("value" in read)) return false
  const { value } = read
  return allowed.some(({ low, high }) => value >= low && value <= high)
}
