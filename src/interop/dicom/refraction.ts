import type { EyeExamination, RefractionMethod } from "../../engine/course.js"
import { msg, say } from "../../engine/say.js"
import { limits } from "../course/limits.js"
import { type DataSet, numberOf } from "./data-set.js"
import { lensPowers } from "./lens-powers.js"
import { eyesOf, figure, inside, note, type Place, quantity, type Reading } from "./reading.js"
import type { Attribute } from "./tags.js"

const SEQUENCES = {
  autorefraction: { right: "autorefractionRight", left: "autorefractionLeft" },
  subjective: { right: "subjectiveRight", left: "subjectiveLeft" },
} as const

/** Autorefraction and Subjective Refraction Measurements. */
export function refractionEyes(
  set: DataSet,
  { reading, method }: { readonly reading: Reading; readonly method: keyof typeof SEQUENCES },
) {
  return eyesOf(set, {
    reading,
    sequences: SEQUENCES[method],
    read: (place) => refractionEye(place, method),
  })
}

function refractionEye(place: Place, method: RefractionMethod): EyeExamination {
  const powers = lensPowers(place, "refraction")
  if (!powers) return {}
  noteLeftOut(place)
  const vertexDistanceMm = quantity(place, {
    attribute: "vertexDistance",
    limit: limits.vertexDistanceMm,
    what: say("vertex distance"),
    decimals: 2,
  })
  const { device } = place.reading
  note(place, {
    kind: "cycloplegia-not-stated",
    field: "refraction.cycloplegic",
    why: say("the file does not say whether accommodation was relaxed by drops"),
  })
  return {
    refraction: {
      ...powers,
      method,
      ...(vertexDistanceMm === undefined ? {} : { vertexDistanceMm }),
      ...(device === undefined ? {} : { device }),
    },
  }
}

const ADDITIONS: readonly (readonly [attribute: Attribute, why: string])[] = [
  [
    "addNear",
    msg("an addition for near of {value} D was left out: it is no part of the distance refraction"),
  ],
  [
    "addIntermediate",
    msg(
      "an addition for middle distance of {value} D was left out: it is no part of the distance refraction",
    ),
  ],
  ["addOther", msg("an addition of {value} D was left out: it is no part of the distance refraction")],
]

/** What stands beside a refraction and has no place in the course file, or none that would be honest. */
function noteLeftOut(place: Place): void {
  const pupil = numberOf(place.set, "pupilSize")
  if (pupil !== undefined && Number.isFinite(pupil)) {
    const why = say("a pupil of {value} mm was left out: the file does not say in what light", {
      value: figure(pupil),
    })
    note(place, { kind: "pupil-light-not-stated", field: "pupil", why })
  }
  for (const [attribute, sentence] of ADDITIONS) {
    const inner = inside(place, attribute)
    const value = inner && numberOf(inner.set, "addPower")
    if (value === undefined || !Number.isFinite(value) || value === 0) continue
    note(place, { kind: "left-out", field: "refraction", why: say(sentence, { value: figure(value) }) })
  }
  if (inside(place, "prism")) {
    const why = say("a prism was left out: the course file keeps prism for glasses only")
    note(place, { kind: "left-out", field: "refraction", why })
  }
}
