import type { Dilation, LensStatus } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import { codeOf, dropOf, lensStatusOf, nameOf, percentPerUnit } from "./codes.js"
import { type DataSet, itemsOf, numberOf } from "./data-set.js"
import { figure, isWithin, note, type Place, quantity, roundedTo, wordOf } from "./reading.js"

export function lensStatusOfEye(place: Place): LensStatus | undefined {
  const code = codeOf(place.set, "lensStatus")
  const status = lensStatusOf(code)
  if (code && status === undefined) {
    const why = say("the file says of the lens: {status}; the course file has no word for it", {
      status: nameOf(code),
    })
    note(place, { kind: "left-out", field: "lensStatus", why })
  }
  return status
}

/** Whether the pupil was widened for the measurement, how wide, and by what. */
export function dilationOf(place: Place): Dilation | undefined {
  const said = wordOf(place.set, "pupilDilated")
  if (said !== "YES" && said !== "NO") return undefined
  if (said === "NO") return { dilated: false }
  const what = say("the widened pupil")
  const pupilMm = quantity(place, { attribute: "degreeOfDilation", limit: limits.dilatedPupilMm, what })
  const drops = itemsOf(place.set, "mydriaticAgents")
    .slice(0, 10)
    .flatMap((item) => dropIn(item, place))
  return {
    dilated: true,
    ...(pupilMm === undefined ? {} : { pupilMm }),
    ...(drops.length === 0 ? {} : { drops }),
  }
}

type Drop = NonNullable<Dilation["drops"]>[number]

function dropIn(item: DataSet, place: Place): readonly Drop[] {
  const code = codeOf(item, "mydriaticAgentCode")
  if (!code) return []
  const drop = dropOf(code)
  const concentrationPercent = strengthOf(item, place)
  if (drop === "other") {
    const why = say("the file names a drop that the course file has no word for: {drop}", {
      drop: nameOf(code),
    })
    note(place, { kind: "other-drop", field: "dilation.drops", why })
  }
  if (drop === "atropine") {
    const why = say(
      "the file does not say whether the atropine was given for the examination or is the child's treatment",
    )
    note(place, { kind: "atropine", field: "dilation.drops", why })
  }
  return [{ drop, ...(concentrationPercent === undefined ? {} : { concentrationPercent }) }]
}

function strengthOf(item: DataSet, place: Place): number | undefined {
  const value = numberOf(item, "mydriaticConcentration")
  if (value === undefined) return undefined
  const unit = codeOf(item, "mydriaticUnits")
  const perUnit = percentPerUnit(unit)
  const percent = perUnit === undefined ? Number.NaN : roundedTo(value * perUnit, 4)
  if (isWithin(percent, limits.dropPercent)) return percent
  const why = say("the strength of a drop was left out: {value} {unit} is not read as a strength in %", {
    value: Number.isFinite(value) ? figure(value) : "?",
    unit: unit ? nameOf(unit) : "",
  })
  note(place, { kind: "left-out", field: "dilation.drops", why })
  return undefined
}
