import type { EyeExamination } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import { type DataSet, firstItem, numberOf, textOf } from "./data-set.js"
import { lensPowers } from "./lens-powers.js"
import { eyesOf, figure, inside, note, type Place, quantity, type Reading, wordOf } from "./reading.js"
import { placeOf } from "./tags.js"

/** Lensometry Measurements: the glasses worn, as they were read off. */
export function lensometryEyes(set: DataSet, reading: Reading) {
  if (firstItem(set, "lensUnknownSide"))
    reading.skipped.push({
      file: reading.file,
      where: placeOf("lensUnknownSide"),
      why: say("The file gives a lens without saying for which eye."),
    })
  const description = textOf(set, "lensDescription")
  if (description !== undefined)
    reading.notes.push({
      kind: "lens-description",
      path: `visits[${reading.date}]`,
      why: say("the file says of the lenses: {description}", { description: description.slice(0, 100) }),
    })
  const sequences = { right: "lensRight", left: "lensLeft" } as const
  return eyesOf(set, { reading, sequences, read: lensometryEye })
}

function lensometryEye(place: Place): EyeExamination {
  const powers = lensPowers(place, "spectaclesWorn")
  if (!powers) return {}
  const near = inside(place, "addNear")
  const addD =
    near &&
    quantity(near, {
      attribute: "addPower",
      limit: limits.addD,
      what: say("addition"),
      decimals: 3,
    })
  const middle = inside(place, "addIntermediate") ?? inside(place, "addOther")
  const middleD = middle && numberOf(middle.set, "addPower")
  if (middleD !== undefined && Number.isFinite(middleD)) {
    const why = say("a further addition of {value} D was left out", { value: figure(middleD) })
    note(place, { kind: "left-out", field: "spectaclesWorn", why })
  }
  const prism = prismOf(place)
  return {
    spectaclesWorn: {
      ...powers,
      ...(addD === undefined ? {} : { addD }),
      ...(prism === undefined ? {} : { prism }),
    },
  }
}

/** Prism as a prescription writes it: "1.5 base in, 0.5 base up". */
function prismOf(place: Place): string | undefined {
  const set = firstItem(place.set, "prism")
  if (!set) return undefined
  const parts = (["horizontal", "vertical"] as const).flatMap((direction) => {
    const power = numberOf(set, `${direction}Prism`)
    const base = wordOf(set, `${direction}Base`)
    const isBase = base !== undefined && ["IN", "OUT", "UP", "DOWN"].includes(base)
    return power !== undefined && Number.isFinite(power) && power !== 0 && isBase
      ? [`${power} base ${base.toLowerCase()}`]
      : []
  })
  return parts.length === 0 ? undefined : parts.join(", ")
}
