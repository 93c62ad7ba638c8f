import { dayInWords, say } from "../../engine/say.js"
import type { Block } from "../document.js"
import { type FamilyReading, meansOf } from "./family-reading.js"

/** What can wait for a call in the hours of the practice. */
export function watchFor(reading: FamilyReading): readonly Block[] {
  const means = meansOf(reading)
  const signs = say(
    "{means, select, drops {Call us when light bothers your child more than before, reading close up is hard, or the drops make the eyes red, sore or itchy.} lenses {Call us when a lens is lost or torn, or when sight through the lenses gets worse.} glasses {Call us when the glasses break, no longer fit, or do not give clear sight any more.} several {Call us when light bothers your child more than before, reading close up is hard, the eyes get red, sore or itchy, or sight gets worse.} other {Call us when your child sees less well: when the eyes are narrowed to see far, or the board at school is hard to read.}}",
    { means },
  )
  const borne = reading.concerns.some(({ isRedFlag }) => !isRedFlag)
  return [
    { kind: "heading", level: 1, text: say("What to watch for") },
    { kind: "text", text: signs },
    ...(borne
      ? [
          {
            kind: "text",
            text: say(
              "At a visit we noted something that we want to keep an eye on. Tell us at once if it gets worse.",
            ),
          } as const,
        ]
      : []),
  ]
}

/** What cannot wait, and poison, with the practice's own numbers. */
export function urgent(reading: FamilyReading): readonly Block[] {
  const { contacts } = reading.input.rules
  const flag = reading.concerns.find(({ isRedFlag }) => isRedFlag)
  const hasLenses = reading.treatments.some(({ kind }) => kind.endsWith("lens") || kind === "orthokeratology")
  const lines = [
    ...(flag
      ? [
          say(
            "On {date} you told us of a warning sign. If nobody has looked into the eye since then, come in today.",
            { date: dayInWords(flag.since) },
          ),
        ]
      : []),
    contacts.urgent === undefined
      ? say(
          "Same day: flashes, floating spots, a curtain, pain or sudden loss of sight. Call us at once; if you cannot reach us, go to an eye clinic.",
        )
      : say(
          "Same day: flashes, floating spots, a curtain, pain or sudden loss of sight. Call at once: {urgent}.",
          {
            urgent: contacts.urgent,
          },
        ),
    ...(hasLenses
      ? [say("A red or sore eye with a contact lens: take the lens out and have the eye seen the same day.")]
      : []),
    ...(hasDrops(reading) ? [poison(contacts.poisonCentre)] : []),
  ]
  return [{ kind: "caution", lines }]
}

/** Drops may be in the house as long as any were ever handed out. */
const hasDrops = ({ everTreated, course }: FamilyReading): boolean =>
  everTreated.some(({ kind }) => kind === "atropine") || (course.supplies ?? []).length > 0

const poison = (centre: string | undefined): string =>
  centre === undefined
    ? say(
        "The drops are poison when swallowed. Keep the bottle away from all children. If any was swallowed, call the poison centre of your country at once. If a child is confused, hot and flushed or has a fit, call an ambulance.",
      )
    : say(
        "The drops are poison when swallowed. Keep the bottle away from all children. If any was swallowed, call the poison centre at once: {centre}. If a child is confused, hot and flushed or has a fit, call an ambulance.",
        { centre },
      )
