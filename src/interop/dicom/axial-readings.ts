import type { LengthReading } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import { MOST_READINGS } from "./bounds.js"
import { codeOf, isOwnMeasurement, nameOf } from "./codes.js"
import { firstItem, itemsOf, numberOf } from "./data-set.js"
import { isWithin, note, type Place, quantity, wordOf } from "./reading.js"
import { placeOf } from "./tags.js"

/** Every reading of the total length of an eye. Sums of segments and single segments are another measure. */
export function axialReadings(place: Place): readonly LengthReading[] {
  const all = itemsOf(place.set, "axialReadings")
  const others = all.filter((item) => firstItem(item, "totalLength") === undefined)
  if (others.length > 0) {
    const why = say(
      "{count, plural, one {# reading is} other {# readings are}} of parts of the eye or a sum of them and {count, plural, one {was} other {were}} left out",
      { count: others.length },
    )
    note(place, { kind: "left-out", field: "axialLength.each", why })
  }
  const totals = all.flatMap((item, index) =>
    itemsOf(item, "totalLength").map((set) => ({
      ...place,
      set,
      path: `${place.path}.${placeOf("axialReadings")}[${index + 1}].${placeOf("totalLength")}`,
    })),
  )
  if (totals.length > MOST_READINGS) {
    const why = say("the file gives {count} readings; the first {most} were kept", {
      count: totals.length,
      most: MOST_READINGS,
    })
    note(place, { kind: "left-out", field: "axialLength.each", why })
  }
  const kept = totals.slice(0, MOST_READINGS)
  noteForeign(place, kept)
  return kept.flatMap((total) => lengthReading(total))
}

function lengthReading(total: Place): readonly LengthReading[] {
  const mm = quantity(total, {
    attribute: "axialLength",
    limit: limits.axialLengthMm,
    what: say("a reading of the axial length"),
    decimals: 2,
  })
  if (mm === undefined) return []
  const optical = firstItem(total.set, "opticalReading")
  const ratio = optical && numberOf(optical, "signalToNoise")
  const modified = wordOf(total.set, "readingModified")
  return [
    {
      mm,
      ...(ratio !== undefined && isWithin(ratio, limits.signalToNoise) ? { signalToNoise: ratio } : {}),
      ...(modified === "YES" ? { byHand: true } : modified === "NO" ? { byHand: false } : {}),
    },
  ]
}

/** Readings that the instrument did not make itself: typed in, or from elsewhere. */
function noteForeign(place: Place, totals: readonly Place[]): void {
  const sources = totals.flatMap(({ set }) => {
    const detail = firstItem(set, "opticalReading") ?? firstItem(set, "ultrasoundReading")
    const code = detail && codeOf(detail, "dataSource")
    return code && !isOwnMeasurement(code) ? [nameOf(code)] : []
  })
  const [source] = sources
  if (source === undefined) return
  const why = say(
    "{count, plural, one {# reading was} other {# readings were}} not made by this instrument: {source}",
    { count: sources.length, source },
  )
  note(place, { kind: "not-this-instrument", field: "axialLength.each", why })
}
