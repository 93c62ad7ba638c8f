import type { AxialLength, EyeExamination, LengthReading } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import { axialReadings } from "./axial-readings.js"
import { codeOf, isPlainVitreous, metricOf, nameOf, selectionOf, ultrasoundMethodOf } from "./codes.js"
import { type DataSet, firstItem, itemsOf, numberOf } from "./data-set.js"
import { dilationOf, lensStatusOfEye } from "./lens-and-dilation.js"
import {
  eyeName,
  eyesOf,
  figure,
  inside,
  isWithin,
  note,
  outside,
  type Place,
  type Reading,
  roundedTo,
  skip,
  wordOf,
} from "./reading.js"

/**
 * Below this signal-to-noise ratio a length is marked as doubtful. The standard gives no threshold and instruments scale
 * the ratio differently: common practice, no source. Nothing is calculated from it.
 */
const LOW_SIGNAL_TO_NOISE = 10

/** A length read to 0.01 mm: a 32-bit float holds no more that means anything. */
export const LENGTH_DECIMALS = 2

type Method = "optical-biometry" | "ultrasound"

/** Ophthalmic Axial Measurements: the chosen length of each eye, with every reading it rests on. */
export function axialEyes(set: DataSet, reading: Reading) {
  const sequences = { right: "axialRight", left: "axialLeft" } as const
  return eyesOf(set, { reading, sequences, read: (place) => axialEye(place, set) })
}

function axialEye(place: Place, object: DataSet): EyeExamination {
  const axialLength = axialLengthOf(place, object)
  // Lens and dilation are said of a measurement: without one they stand for nothing.
  if (!axialLength) return {}
  return {
    axialLength,
    lensStatus: lensStatusOfEye(place),
    dilation: dilationOf(place),
  }
}

function axialLengthOf(place: Place, object: DataSet): AxialLength | undefined {
  const each = axialReadings(place)
  const method = methodOf(place, object)
  if (method === undefined) {
    skip(
      place,
      say(
        "{eye}: the file does not say whether it was measured by light or by ultrasound.",
        eyeName(place.eye),
      ),
    )
    return undefined
  }
  const chosen = chosenLength(place, method)
  if (chosen === "refused") return undefined
  const plain = each.filter(({ byHand }) => !byHand)
  const mm = chosen?.mm ?? meanOf(plain)
  if (mm === undefined) {
    const why =
      each.length === 0
        ? say("{eye}: the file holds no total length of the eye.", eyeName(place.eye))
        : say("{eye}: every reading was changed by hand and none was chosen.", eyeName(place.eye))
    skip(place, why)
    return undefined
  }
  if (!chosen) noteMean(place, plain.length)
  noteByHand(place, each.length - plain.length)
  const metrics = chosen ? metricsOf(chosen.place) : {}
  const { device } = place.reading
  noteDoubts(place, { object, method, signalToNoise: metrics.signalToNoise ?? lowest(chosen ? each : plain) })
  return {
    mm,
    ...readingsBehind({ mm, plain, chosen: chosen?.place }),
    method,
    ...(device === undefined ? {} : { device }),
    ...metrics,
    ...(each.length === 0 ? {} : { each }),
  }
}

/** By what the object says of itself, else by which kind of result it holds; undefined when they contradict or are silent. */
function methodOf({ set }: Place, object: DataSet): Method | undefined {
  const said = wordOf(object, "axialDeviceType")
  if (said !== undefined)
    return said === "OPTICAL" ? "optical-biometry" : said === "ULTRASOUND" ? "ultrasound" : undefined
  const readings = itemsOf(set, "axialReadings").flatMap((item) => itemsOf(item, "totalLength"))
  const isOptical =
    firstItem(set, "opticalSelected") || readings.some((item) => firstItem(item, "opticalReading"))
  const isUltrasound =
    firstItem(set, "ultrasoundSelected") || readings.some((item) => firstItem(item, "ultrasoundReading"))
  if (Boolean(isOptical) === Boolean(isUltrasound)) return undefined
  return isOptical ? "optical-biometry" : "ultrasound"
}

/**
 * The length that was chosen. The standard's editions differ in where the total stands: in an item of its own inside the
 * chosen one or of the eye, or in the chosen one itself. All are looked at; two lengths that differ are a refusal.
 */
function chosenLength(
  place: Place,
  method: Method,
): { readonly mm: number; readonly place: Place } | "refused" | undefined {
  const selected = inside(place, method === "ultrasound" ? "ultrasoundSelected" : "opticalSelected")
  const places = [
    ...(selected ? [inside(selected, "selectedTotal"), selected] : []),
    inside(place, "selectedTotal"),
  ].filter((found) => found !== undefined)
  const given = places.flatMap((found) => {
    const value = numberOf(found.set, "axialLength")
    return value === undefined ? [] : [{ mm: roundedTo(value, LENGTH_DECIMALS), place: found }]
  })
  const [first] = given
  if (!first) return undefined
  const other = given.find(({ mm }) => mm !== first.mm && !(Number.isNaN(mm) && Number.isNaN(first.mm)))
  if (other) {
    const values = { ...eyeName(place.eye), first: figure(first.mm), second: figure(other.mm) }
    skip(first.place, say("{eye}: the file gives two chosen lengths, {first} mm and {second} mm.", values))
    return "refused"
  }
  if (isWithin(first.mm, limits.axialLengthMm)) return first
  const what = say("axial length")
  skip(first.place, outside(place.eye, { what, value: first.mm, limit: limits.axialLengthMm }), "axialLength")
  return "refused"
}

/** The mean of readings that nobody changed by hand. */
function meanOf(readings: readonly LengthReading[]): number | undefined {
  if (readings.length === 0) return undefined
  return roundedTo(readings.reduce((sum, { mm }) => sum + mm, 0) / readings.length, LENGTH_DECIMALS)
}

/**
 * How many readings stand behind the length: said only when it is their mean, by the file's word or by the figures. One
 * that a person picked out is one reading.
 */
function readingsBehind({
  mm,
  plain,
  chosen,
}: {
  readonly mm: number
  readonly plain: readonly LengthReading[]
  readonly chosen: Place | undefined
}): { readonly readings?: number } {
  const selection = chosen && selectionOf(codeOf(chosen.set, "selectionMethod"))
  if (selection === "chosen") return { readings: 1 }
  const isMean = selection === "mean" || meanOf(plain) === mm
  return isMean && plain.length > 0 && plain.length <= limits.readings.high ? { readings: plain.length } : {}
}

function metricsOf(chosen: Place): { readonly signalToNoise?: number; readonly sdMm?: number } {
  return Object.fromEntries(
    itemsOf(chosen.set, "qualityMetric").flatMap((item) => {
      const metric = metricOf(codeOf(item, "conceptName"))
      const value = numberOf(item, "numericValue")
      if (metric === undefined || value === undefined) return []
      // A spread in another unit than mm is not converted: nothing says how.
      if (metric === "sdMm" && codeOf(item, "measurementUnits")?.value !== "mm") return []
      return isWithin(value, limits[metric]) ? [[metric, value] as const] : []
    }),
  )
}

const lowest = (readings: readonly LengthReading[]): number | undefined => {
  const known = readings.flatMap(({ signalToNoise }) => signalToNoise ?? [])
  return known.length === 0 ? undefined : Math.min(...known)
}

function noteMean(place: Place, count: number): void {
  const why = say(
    "no length was chosen in the file; the mean of {count, plural, one {# reading} other {# readings}} was taken",
    { count },
  )
  note(place, { kind: "mean-of-readings", field: "axialLength.mm", why })
}

function noteByHand(place: Place, count: number): void {
  if (count === 0) return
  const why = say("{count, plural, one {# reading was} other {# readings were}} changed by hand", { count })
  note(place, { kind: "by-hand", field: "axialLength.each", why })
}

function noteDoubts(
  place: Place,
  {
    object,
    method,
    signalToNoise,
  }: { readonly object: DataSet; readonly method: Method; readonly signalToNoise: number | undefined },
): void {
  if (signalToNoise !== undefined && signalToNoise < LOW_SIGNAL_TO_NOISE) {
    const why = say(
      "its signal-to-noise ratio is {ratio}, below {cut} (common practice, no source): look at the readings before it is used",
      { ratio: figure(signalToNoise), cut: LOW_SIGNAL_TO_NOISE },
    )
    note(place, { kind: "low-quality", field: "axialLength", why })
  }
  if (method === "ultrasound") {
    const way = ultrasoundMethodOf(codeOf(object, "ultrasoundMethod")) ?? "unstated"
    const why = say(
      "measured by ultrasound{way, select, contact { in contact with the eye} immersion { in immersion} other {}}: not to be compared with lengths measured by light",
      { way },
    )
    note(place, { kind: "ultrasound", field: "axialLength.method", why })
  }
  const vitreous = codeOf(place.set, "vitreousStatus")
  if (vitreous && !isPlainVitreous(vitreous)) {
    const why = say("the file says of the vitreous: {status}; a length then means something else", {
      status: nameOf(vitreous),
    })
    note(place, { kind: "vitreous", field: "axialLength", why })
  }
}
