import type { ObservationComponent } from "fhir/r4.js"
import { type AxialLength, LENGTH_METHODS, type LengthReading } from "../../../engine/course.js"
import { type Loose, record } from "../../course/loose.js"
import { withoutLoss, withRemainder } from "../remainder.js"
import { AXIAL_LENGTH, own, SIGNAL_TO_NOISE, STANDARD_DEVIATION } from "./codes.js"
import type { Look } from "./look.js"
import {
  components,
  type Draft,
  deviceIn,
  draft,
  figure,
  methodIn,
  ownOneOf,
  partIn,
  partsWith,
  present,
  type WhereInEye,
} from "./observation.js"
import { inUnit, quantity } from "./units.js"

export const OWN_AXIAL_LENGTH = own("axial-length", "Axial length")
const READINGS = own("readings", "How many readings")
const SPREAD = own("spread-of-readings", "Standard deviation of the readings")
const READING = own("single-reading", "One reading")

export function lengthDraft(length: AxialLength, where: WhereInEye): Draft {
  const { mm, readings, method, device, signalToNoise, sdMm, each = [] } = length
  return {
    ...draft(where, {
      code: [AXIAL_LENGTH[where.eye], OWN_AXIAL_LENGTH],
      text: `Axial length, ${where.eye} eye`,
    }),
    ...methodIn(method),
    ...deviceIn(device, where),
    valueQuantity: quantity(mm, "mm"),
    ...components(
      figure(signalToNoise, "one", SIGNAL_TO_NOISE),
      figure(sdMm, "mm", STANDARD_DEVIATION, SPREAD),
      figure(readings, "one", READINGS),
      ...each.map(singleReading),
    ),
  }
}

function singleReading(reading: LengthReading): ObservationComponent {
  const part: ObservationComponent = {
    code: { coding: [READING] },
    valueQuantity: quantity(reading.mm, "mm"),
  }
  return withRemainder(part, { whole: reading, native: nativeReading(part) })
}

const nativeReading = (part: object) => present({ mm: inUnit(record(record(part).valueQuantity), "mm") })

export function lengthRead(observation: Loose, look: Look): Partial<AxialLength> | undefined {
  const mm = inUnit(record(observation.valueQuantity), "mm")
  if (mm === undefined) return undefined
  const each = partsWith(observation, READING).map((part) => withoutLoss(part, nativeReading(part)))
  return present({
    mm,
    readings: partIn(observation, "one", READINGS),
    method: ownOneOf(observation.method, LENGTH_METHODS),
    device: look.deviceName(observation.device),
    signalToNoise: partIn(observation, "one", SIGNAL_TO_NOISE),
    sdMm: partIn(observation, "mm", STANDARD_DEVIATION, SPREAD),
    each: each.length === 0 ? undefined : (each as LengthReading[]),
  })
}
