import { realTreatments } from "../../engine/protocol/treatment-course.js"
import { say } from "../../engine/say.js"
import type { Reading } from "../record/reading.js"

/** At the foot of every page of a paper for professionals. */
export const professionalFoot = (): string =>
  say(
    "Not a medical device. The figures support and never replace the judgement of a licensed clinician; local law, product licences and the pharmacist decide.",
  )

/** Cautions of the drops, wherever they are or were in use. */
export function dropCautions({ course, input }: Reading): readonly string[] {
  if (!realTreatments(course).some(({ kind }) => kind === "atropine")) return []
  const { poisonCentre } = input.rules.contacts
  return [
    say("Use outside a product licence needs the consent of the family."),
    poisonCentre === undefined
      ? say("The drops are poisonous when swallowed: they are kept out of children's reach.")
      : say(
          "The drops are poisonous when swallowed: they are kept out of children's reach; poison centre {number}.",
          { number: poisonCentre },
        ),
  ]
}
