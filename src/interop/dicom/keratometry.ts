import type { CorneaRadius, EyeExamination } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import type { DataSet } from "./data-set.js"
import { eyeName, eyesOf, figure, inside, type Place, quantity, type Reading, skip } from "./reading.js"

/** Keratometry Measurements: radius, power and direction of both meridians. */
export function keratometryEyes(set: DataSet, reading: Reading) {
  const sequences = { right: "keratometryRight", left: "keratometryLeft" } as const
  return eyesOf(set, { reading, sequences, read: keratometryEye })
}

function keratometryEye(place: Place): EyeExamination {
  const [steepPlace, flatPlace] = [inside(place, "steepMeridian"), inside(place, "flatMeridian")]
  const steep = steepPlace && meridianOf(steepPlace)
  const flat = flatPlace && meridianOf(flatPlace)
  if (steep?.radius === undefined || flat?.radius === undefined) {
    skip(place, say("{eye}: a corneal radius needs both meridians, and one is missing.", eyeName(place.eye)))
    return {}
  }
  if (flat.radius < steep.radius) {
    const values = { ...eyeName(place.eye), flat: figure(flat.radius), steep: figure(steep.radius) }
    skip(place, say("{eye}: the flat radius ({flat} mm) is smaller than the steep one ({steep} mm).", values))
    return {}
  }
  return {
    corneaRadius: {
      flat: flat.radius,
      steep: steep.radius,
      ...directions({ flat, steep }),
      ...device(place),
    },
  }
}

interface Meridian {
  readonly radius: number | undefined
  readonly axis: number | undefined
  readonly power: number | undefined
}

function meridianOf(place: Place): Meridian {
  const radius = quantity(place, {
    attribute: "corneaRadius",
    limit: limits.corneaRadiusMm,
    what: say("corneal radius"),
    decimals: 3,
  })
  const power = quantity(place, {
    attribute: "corneaPower",
    limit: limits.corneaPowerD,
    what: say("corneal power"),
    decimals: 3,
  })
  const axis = quantity(place, {
    attribute: "corneaAxis",
    limit: limits.axisDegrees,
    what: say("corneal meridian"),
    decimals: 1,
  })
  return { radius, power, axis: axis === 0 ? 180 : axis }
}

function directions({
  flat,
  steep,
}: {
  readonly flat: Meridian
  readonly steep: Meridian
}): Partial<CorneaRadius> {
  const given = { flatAxis: flat.axis, steepAxis: steep.axis, flatD: flat.power, steepD: steep.power }
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined))
}

const device = ({ reading }: Place) => (reading.device === undefined ? {} : { device: reading.device })
