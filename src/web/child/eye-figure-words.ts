import { dioptreWords, fixed, mmWords } from "../../chart/words.js"
import type {
  AxialLength,
  CorneaRadius,
  Dilation,
  EyeExamination,
  LensStatus,
  Refraction,
  SpectaclesWorn,
} from "../../engine/course.js"
import type { EyeField } from "../../engine/figure-names.js"
import { msg, say, withDecimalSign } from "../../engine/say.js"
import { joined } from "./word-parts.js"

const LENS: Readonly<Record<LensStatus, string>> = {
  phakic: msg("own lens"),
  aphakic: msg("no lens"),
  pseudophakic: msg("artificial lens"),
  "phakic-lens-implant": msg("own lens and an implanted one"),
}
const DROPS: Readonly<Record<string, string>> = {
  atropine: msg("atropine|drops"),
  cyclopentolate: msg("cyclopentolate|drops"),
  tropicamide: msg("tropicamide|drops"),
  phenylephrine: msg("phenylephrine|drops"),
  other: msg("other drops|drops"),
}

/** One figure of an eye in words, with how it was measured: "24.12 mm, 5 readings, quality 210.4, Biometer 3". */
export function eyeFigureWords(field: EyeField, eye: EyeExamination | null | undefined): string {
  if (!eye) return ""
  switch (field) {
    case "axialLength":
      return eye.axialLength ? lengthWords(eye.axialLength) : ""
    case "refraction":
      return eye.refraction ? refractionWords(eye.refraction) : ""
    case "otherRefractions":
      return (eye.otherRefractions ?? []).map(refractionWords).join("; ")
    case "spectaclesWorn":
      return eye.spectaclesWorn ? wornWords(eye.spectaclesWorn) : ""
    case "corneaRadius":
      return eye.corneaRadius ? corneaWords(eye.corneaRadius) : ""
    case "lensStatus":
      return eye.lensStatus ? say(LENS[eye.lensStatus]) : ""
    case "dilation":
      return eye.dilation ? dilationWords(eye.dilation) : ""
    case "pupil":
      return joined(
        eye.pupil?.photopic !== undefined && say("{mm} mm in daylight", { mm: fixed(eye.pupil.photopic, 1) }),
        eye.pupil?.mesopic !== undefined && say("{mm} mm in dim light", { mm: fixed(eye.pupil.mesopic, 1) }),
      )
    case "accommodation":
      return eye.accommodation ? `${fixed(eye.accommodation.dioptres, 1)} D` : ""
    case "acuity":
      return joined(
        eye.acuity?.distanceLogMAR !== undefined &&
          say("distance {logMAR} logMAR", { logMAR: fixed(eye.acuity.distanceLogMAR, 2) }),
        eye.acuity?.nearLogMAR !== undefined &&
          say("near {logMAR} logMAR", { logMAR: fixed(eye.acuity.nearLogMAR, 2) }),
      )
    case "intraocularPressure":
      return eye.intraocularPressure ? `${fixed(eye.intraocularPressure.mmHg, 0)} mmHg` : ""
  }
}

const lengthWords = ({ mm, readings, signalToNoise, sdMm, each, device }: AxialLength): string =>
  joined(
    mmWords(mm),
    readings !== undefined && say("{count, plural, one {# reading} other {# readings}}", { count: readings }),
    signalToNoise !== undefined && say("quality {figure}", { figure: plain(signalToNoise) }),
    sdMm !== undefined && say("spread {mm} mm", { mm: plain(sdMm) }),
    each &&
      each.length > 0 &&
      say("each: {readings}", { readings: each.map(({ mm: one }) => plain(one)).join(" ") }),
    device,
  )

const powerWords = ({ sphere, cylinder, axis }: Pick<Refraction, "sphere" | "cylinder" | "axis">): string =>
  [
    dioptreWords(sphere),
    ...(cylinder ? [`${dioptreWords(cylinder)}${axis === undefined ? "" : ` × ${axis}°`}`] : []),
  ].join(" ")

const METHODS: Readonly<Record<NonNullable<Refraction["method"]>, string>> = {
  autorefraction: msg("autorefraction"),
  subjective: msg("subjective"),
  retinoscopy: msg("retinoscopy"),
}

const refractionWords = (refraction: Refraction): string =>
  joined(
    powerWords(refraction),
    refraction.method && say(METHODS[refraction.method]),
    refraction.cycloplegic && say("in cycloplegia"),
    refraction.vertexDistanceMm !== undefined &&
      say("vertex distance {mm} mm", { mm: plain(refraction.vertexDistanceMm) }),
    refraction.device,
  )

const wornWords = (worn: SpectaclesWorn): string =>
  joined(
    powerWords(worn),
    worn.addD !== undefined && say("addition {dioptres} D", { dioptres: fixed(worn.addD, 2) }),
    worn.prism && say("prism {prism}", { prism: worn.prism }),
  )

const corneaWords = ({ flat, steep, flatAxis, steepAxis, device }: CorneaRadius): string =>
  joined(
    `${fixed(flat, 2)} / ${fixed(steep, 2)} mm`,
    flatAxis !== undefined && say("flat at {degrees}°", { degrees: flatAxis }),
    steepAxis !== undefined && say("steep at {degrees}°", { degrees: steepAxis }),
    device,
  )

const dilationWords = ({ dilated, pupilMm, drops = [] }: Dilation): string =>
  joined(
    dilated ? say("widened|pupil") : say("not widened|pupil"),
    pupilMm !== undefined && say("pupil {mm} mm", { mm: plain(pupilMm) }),
    drops
      .map(({ drop, concentrationPercent }) =>
        concentrationPercent === undefined
          ? say(DROPS[drop] ?? drop)
          : `${say(DROPS[drop] ?? drop)} ${plain(concentrationPercent)} %`,
      )
      .join(", "),
  )

const plain = (figure: number): string => withDecimalSign(String(Number(figure.toFixed(4))))
