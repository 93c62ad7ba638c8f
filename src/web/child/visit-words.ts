import { dioptreWords, fixed, fromWords, mmWords, ofEye, symptomWords } from "../../chart/words.js"
import { EYES, type EyeExamination, type Visit } from "../../engine/course.js"
import { sphericalEquivalent } from "../../engine/optics/spherical-equivalent.js"
import { say } from "../../engine/say.js"
import { eyeFigureWords } from "./eye-figure-words.js"
import { joined } from "./word-parts.js"

/** What was found at a visit, in one line. */
export function visitWords({ right, left, symptoms = [], answers = [], from, sources = [] }: Visit): string {
  const eyes = EYES.flatMap((eye) => {
    const examination = { right, left }[eye]
    const words = examination ? eyeWords(examination) : ""
    return words === "" ? [] : [ofEye(eye, words)]
  })
  const felt = symptoms.map(({ kind, grade }) =>
    say("{symptom} grade {grade}", { symptom: symptomWords(kind), grade }),
  )
  return [
    ...eyes,
    ...(felt.length === 0 ? [] : [say("symptoms: {symptoms}", { symptoms: felt.join(", ") })]),
    ...(answers.length === 0
      ? []
      : [say("{count, plural, one {# answer} other {# answers}}", { count: answers.length })]),
    ...(from ? [say("from {where}", { where: fromWords(from) })] : []),
    ...sources.flatMap(({ device }) => (device ? [say("sent by {device}", { device })] : [])),
  ].join("; ")
}

function eyeWords({
  axialLength,
  refraction,
  pupil,
  accommodation,
  acuity,
  intraocularPressure,
  ...more
}: EyeExamination): string {
  const distance = acuity?.distanceLogMAR
  const near = acuity?.nearLogMAR
  return joined(
    axialLength && mmWords(axialLength.mm),
    refraction && dioptreWords(sphericalEquivalent(refraction)),
    pupil?.photopic !== undefined && say("pupil {mm} mm", { mm: fixed(pupil.photopic, 1) }),
    accommodation && say("accommodation {dioptres} D", { dioptres: fixed(accommodation.dioptres, 1) }),
    distance !== undefined && say("distance {logMAR} logMAR", { logMAR: fixed(distance, 2) }),
    near !== undefined && say("near {logMAR} logMAR", { logMAR: fixed(near, 2) }),
    intraocularPressure && say("pressure {mmHg} mmHg", { mmHg: fixed(intraocularPressure.mmHg, 0) }),
    axialLength?.signalToNoise !== undefined &&
      say("quality {figure}", { figure: fixed(axialLength.signalToNoise, 1) }),
    ...(["otherRefractions", "corneaRadius", "lensStatus", "dilation"] as const).map((field) =>
      eyeFigureWords(field, more),
    ),
    more.spectaclesWorn && say("glasses worn {power}", { power: eyeFigureWords("spectaclesWorn", more) }),
  )
}
