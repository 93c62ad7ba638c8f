import { language, say } from "../say.js"
import { inDigits } from "../words.js"
import { type CompoundingOrder, FOR_A_PHARMACIST } from "./compounding-order.js"
import { benzalkoniumCarriedOver } from "./preservative.js"
import type { SheetBlock, SheetInput } from "./sheet.js"
import { OPENED_STUDIED_DAYS, stabilityLines } from "./stability.js"

/** What a bottle holds, and what that means for a child who swallows it. */
export function content({ order, contacts }: SheetInput): readonly SheetBlock[] {
  const { mgPerBottle, bottles } = order
  const each = say(
    "Each bottle holds {milligrams} mg of atropine sulfate; strengths are % w/v of the sulfate.",
    { milligrams: inDigits(mgPerBottle) },
  )
  const all = say("All {bottles, plural, one {# bottle} other {# bottles}}: {milligrams} mg.", {
    bottles,
    milligrams: inDigits(mgPerBottle * bottles),
  })
  const line = bottles === 1 ? each : together([each, all])
  const poisonCentre = contacts.poisonCentre
    ? say("Poison centre: {number}.", { number: contacts.poisonCentre })
    : say("The practice has not set the number of its poison centre.")
  const cautions = order.cautions.filter((caution) => caution !== say(FOR_A_PHARMACIST))
  return order.poisonCaution
    ? [{ kind: "lines", lines: [line] }, ...lines("caution", [...cautions, poisonCentre])]
    : [{ kind: "lines", lines: [line, ...cautions, poisonCentre] }]
}

/** Preservative, storage and what studies found of how long diluted drops keep. */
export function keeping({ order, pharmacy, isPreserved, stability = [] }: SheetInput): readonly SheetBlock[] {
  const days = pharmacy.daysAfterOpening
  const kept = [
    say("Storage and beyond-use date as the pharmacist states them on the label."),
    say("Thrown away {days, plural, one {# day} other {# days}} after opening.", { days }),
    ...(days > OPENED_STUDIED_DAYS
      ? [
          say(
            "Opened bottles were followed for {days, plural, one {# day} other {# days}} in the studies read.",
            { days: OPENED_STUDIED_DAYS },
          ),
        ]
      : []),
  ]
  return [
    {
      kind: "lines",
      lines: [isPreserved ? say("With a preservative.") : unpreserved(order), together(kept)],
    },
    ...lines("notes", stabilityLines(stability, order.concentrationPercent)),
  ]
}

function unpreserved(order: CompoundingOrder): string {
  const carried = benzalkoniumCarriedOver(order)
  if (carried === null) return say("Without preservative.")
  const percent = inDigits(carried.percent)
  return carried.countsAsUnpreserved
    ? say(
        "Without preservative. From a 1 % stock preserved with 0.01 % benzalkonium chloride {percent} % would be carried over, which counts as unpreserved.",
        { percent },
      )
    : say(
        "Without preservative. From a 1 % stock preserved with 0.01 % benzalkonium chloride {percent} % would be carried over.",
        { percent },
      )
}

/** Sentences that follow each other: Chinese sets no space between them. */
export const together = (sentences: readonly string[]) => sentences.join(language() === "zh-Hans" ? "" : " ")

export const lines = (kind: "caution" | "notes", said: readonly string[]): readonly SheetBlock[] =>
  said.length > 0 ? [{ kind, lines: said }] : []
