import { type CalendarDate, type Course, EYES, type Treatment } from "../../engine/course.js"
import { eyesOf, isInUse, realTreatments } from "../../engine/protocol/treatment-course.js"
import { say, withDecimalSign } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"

/** What is in use on a day; the same thing given to each eye by an entry of its own is one. */
export function treatmentsInUse(course: Course, today: CalendarDate): readonly Treatment[] {
  const together: Treatment[] = []
  for (const treatment of realTreatments(course).filter((one) => isInUse(one, today))) {
    const same = together.findIndex((one) => isSame(one, treatment))
    const before = together[same]
    if (before === undefined) together.push(treatment)
    else {
      const eyes = [...new Set([...eyesOf(before), ...eyesOf(treatment)])]
      const { eye: _eye, ...both } = before
      together[same] = eyes.length === EYES.length ? both : before
    }
  }
  return together
}

const isSame = (a: Treatment, b: Treatment): boolean =>
  a.kind === b.kind &&
  a.concentrationPercent === b.concentrationPercent &&
  a.nightsPerWeek === b.nightsPerWeek

/** A treatment for a teacher or an officer who has never heard of it: what it is, when, in which eye. */
export function useInWords(treatment: Treatment): string {
  const eye = treatment.eye ?? "both"
  const name = treatmentName(treatment)
  switch (treatment.kind) {
    case "atropine":
      return dropsInWords(treatment, eye)
    case "defocus-spectacles":
    case "lenslet-spectacles":
      return say("Glasses ({name}): worn all day, in class and outdoors.", { name })
    case "dual-focus-lens":
    case "multifocal-lens":
      return say(
        "Soft contact lenses ({name}), {eye, select, right {in the right eye} left {in the left eye} other {in both eyes}}: put in after getting up, taken out before sleep.",
        { name, eye },
      )
    case "orthokeratology":
      return say(
        "Hard contact lenses ({name}), {eye, select, right {in the right eye} left {in the left eye} other {in both eyes}}: worn during sleep, taken out after getting up.",
        { name, eye },
      )
    case "none":
      return say("no treatment")
  }
}

function dropsInWords({ concentrationPercent, nightsPerWeek: nights = 7 }: Treatment, eye: string): string {
  const given = { eye, nights }
  if (concentrationPercent === undefined) {
    return say(
      "Atropine eye drops (the strength is on the label of the bottle): one drop at bedtime {eye, select, right {in the right eye} left {in the left eye} other {in each eye}}, {nights, plural, =7 {every night} one {# night a week} other {# nights a week}}.",
      given,
    )
  }
  return say(
    "Atropine eye drops {percent} %: one drop at bedtime {eye, select, right {in the right eye} left {in the left eye} other {in each eye}}, {nights, plural, =7 {every night} one {# night a week} other {# nights a week}}.",
    { ...given, percent: withDecimalSign(String(concentrationPercent)) },
  )
}
