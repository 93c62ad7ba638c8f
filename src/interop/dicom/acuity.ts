import type { AcuityCorrection, EyeExamination } from "../../engine/course.js"
import { logMARFromDecimal } from "../../engine/optics/acuity.js"
import { say } from "../../engine/say.js"
import { decimalAcuity } from "../../engine/units.js"
import { limits } from "../course/limits.js"
import { acuityTypeOf, codeOf, nameOf } from "./codes.js"
import { type DataSet, elementOf, firstItem, numberOf } from "./data-set.js"
import {
  eyeName,
  eyesOf,
  figure,
  isWithin,
  note,
  outside,
  type Place,
  type Reading,
  roundedTo,
  skip,
  wordOf,
} from "./reading.js"
import { placeOf } from "./tags.js"

/** logMAR to a hundredth: half a letter of a five-letter line. */
const DECIMALS = 2

/** Visual Acuity Measurements, from decimal acuity to logMAR. */
export function acuityEyes(set: DataSet, reading: Reading) {
  noteBothEyes(set, reading)
  const distance = wordOf(set, "viewingDistanceType")
  const type = codeOf(set, "acuityType")
  const correction = acuityTypeOf(type)
  const refusal =
    distance !== "DISTANCE" && distance !== "NEAR"
      ? {
          attribute: "viewingDistanceType" as const,
          why: say(
            "The file does not say whether the acuity is for distance or near, or gives another distance.",
          ),
        }
      : correction === undefined
        ? {
            attribute: "acuityType" as const,
            why: type
              ? say("The acuity is of a kind that is not taken: {kind}.", { kind: nameOf(type) })
              : say("The file does not say whether the acuity is with or without glasses."),
          }
        : distance === "NEAR" && correction === "uncorrected"
          ? {
              attribute: "acuityType" as const,
              why: say(
                "Near acuity without glasses is not taken: the course file keeps it with the distance correction.",
              ),
            }
          : undefined
  if (refusal) {
    reading.skipped.push({ file: reading.file, where: placeOf(refusal.attribute), why: refusal.why })
    return {}
  }
  const sequences = { right: "acuityRight", left: "acuityLeft" } as const
  return eyesOf(set, {
    reading,
    sequences,
    read: (place) => acuityEye(place, { isNear: distance === "NEAR", correction }),
  })
}

function acuityEye(
  place: Place,
  { isNear, correction }: { readonly isNear: boolean; readonly correction: AcuityCorrection | undefined },
): EyeExamination {
  const value = logMAROf(place)
  if (value === undefined) return {}
  noteModifiers(place)
  if (!isNear)
    return {
      acuity: {
        distanceLogMAR: value,
        ...(correction === undefined ? {} : { distanceCorrection: correction }),
      },
    }
  if (correction === "worn") {
    const why = say("taken with the glasses worn, which may not be the distance correction")
    note(place, { kind: "near-through-worn", field: "acuity.nearLogMAR", why })
  }
  return { acuity: { nearLogMAR: value } }
}

function logMAROf(place: Place): number | undefined {
  const decimal = numberOf(place.set, "decimalAcuity")
  if (decimal === undefined) {
    skip(place, say("{eye}: there is no decimal acuity.", eyeName(place.eye)))
    return undefined
  }
  // Above 0 so that it has a logarithm; the limit of the course file is asked of the logMAR.
  const value = decimal > 0 ? roundedTo(logMARFromDecimal(decimalAcuity(decimal)), DECIMALS) : Number.NaN
  if (isWithin(value, limits.acuityLogMAR)) return value
  const what = say("acuity in logMAR, from decimal {decimal},", {
    decimal: Number.isFinite(decimal) ? figure(decimal) : "?",
  })
  skip(place, outside(place.eye, { what, value, limit: limits.acuityLogMAR }), "decimalAcuity")
  return undefined
}

/** Letters missed or read beyond the line: nothing says how many letters the line has. */
function noteModifiers(place: Place): void {
  const bytes = elementOf(place.set, "acuityModifiers")?.bytes
  if (bytes?.length !== 4) return
  const view = new DataView(bytes.buffer, bytes.byteOffset, 4)
  const letters = [view.getInt16(0, true), view.getInt16(2, true)]
  if (letters.every((count) => count === 0)) return
  const why = say("the file adds letters to the line ({first} and {second}); they were not counted in", {
    first: letters[0] ?? 0,
    second: letters[1] ?? 0,
  })
  note(place, { kind: "left-out", field: "acuity", why })
}

function noteBothEyes(set: DataSet, { date, notes }: Reading): void {
  const both = firstItem(set, "acuityBoth")
  const decimal = both && numberOf(both, "decimalAcuity")
  if (decimal === undefined || !Number.isFinite(decimal)) return
  const why = say(
    "a decimal acuity of {value} with both eyes open was left out: the course file keeps each eye's",
    {
      value: figure(decimal),
    },
  )
  notes.push({ kind: "left-out", path: `visits[${date}]`, why })
}
