import { addDays } from "../calendar.js"
import { say } from "../say.js"
import { inDigits } from "../words.js"
import { bottleInWords, bottlesNeeded, rangeInWords } from "./bottles-needed.js"
import { FOR_A_PHARMACIST } from "./compounding-order.js"
import { BLANK, labelText } from "./label-text.js"
import type { Sheet, SheetBlock, SheetInput } from "./sheet.js"
import { content, keeping, lines, together } from "./sheet-content.js"
import { dilutionBlocks } from "./sheet-dilution.js"
import { pharmacyInWords, usualPharmacy } from "./usual-pharmacy.js"

/** The order as a pharmacist receives it: to be checked line by line and signed by two people. */
export function compoundingSheet(input: SheetInput): Sheet {
  const { order, child } = input
  const percent = inDigits(order.concentrationPercent)
  return {
    title:
      child.name === null
        ? say("Order: atropine sulfate eye drops {percent} % for this child", { percent })
        : say("Order: atropine sulfate eye drops {percent} % for {child}", { percent, child: child.name }),
    statement: say(FOR_A_PHARMACIST),
    sections: [
      {
        name: "ordered",
        heading: say("What is ordered"),
        blocks: [ordered(input), ...lines("caution", input.remarks ?? []), ...lines("notes", assumed(input))],
      },
      { name: "dilution", heading: say("Dilution"), blocks: dilutionBlocks(order) },
      { name: "content", heading: say("Content and caution"), blocks: content(input) },
      { name: "keeping", heading: say("Preservative, storage, stability"), blocks: keeping(input) },
      { name: "label", heading: say("On each label"), blocks: [label(input)] },
      {
        name: "checked",
        heading: say("Two people check"),
        blocks: [
          {
            kind: "signatures",
            lines: [
              { role: say("Prescribed"), name: input.prescriber },
              { role: say("Made and measured"), name: "" },
              { role: say("Checked by a second person"), name: "" },
            ],
          },
        ],
      },
    ],
  }
}

function ordered(input: SheetInput): SheetBlock {
  const { order, on, child, pharmacy, isOrdered = true } = input
  const { name, born, number } = child
  const who = { name: name ?? BLANK, born }
  return {
    kind: "pairs",
    pairs: [
      [
        say("For|whom"),
        number
          ? say("{name}, born {born}, number {number}", { ...who, number })
          : say("{name}, born {born}", who),
      ],
      [
        say("Bottles"),
        say(
          "{bottles, plural, one {# bottle} other {# bottles}} of {volume} mL, atropine sulfate {percent} % w/v ({milligrams} mg in 1 mL)",
          {
            bottles: order.bottles,
            volume: inDigits(order.volumeMl),
            percent: inDigits(order.concentrationPercent),
            milligrams: inDigits(order.concentrationPercent * 10),
          },
        ),
      ],
      [say("Use|of drops"), usage(input)],
      ...lasting(input),
      [say("Ordered by"), orderedBy(input)],
      [say("Pharmacy"), [pharmacyInWords(pharmacy.name), pharmacy.contact].filter((part) => part).join(", ")],
      [
        say("Expected by"),
        isOrdered
          ? addDays(on, pharmacy.leadDays)
          : say("{days, plural, one {# day} other {# days}} after it is ordered", {
              days: pharmacy.leadDays,
            }),
      ],
      [say("Consent"), input.consent],
    ],
  }
}

function usage({ eye: one, nightsPerWeek: nights }: SheetInput): string {
  const eye = one ?? "each"
  if (nights === undefined)
    return say(
      "one drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime",
      { eye },
    )
  return say(
    "one drop in {eye, select, right {the right eye} left {the left eye} other {each eye}} at bedtime, {nights, plural, one {# night} other {# nights}} a week",
    { eye, nights },
  )
}

function orderedBy({ prescriber, practice, on, isOrdered = true }: SheetInput): string {
  if (!isOrdered) return say("not ordered yet")
  return prescriber === ""
    ? say("{practice}, on {date}", { practice, date: on })
    : say("{prescriber}, {practice}, on {date}", { prescriber, practice, date: on })
}

/** How many nights what is ordered serves, from the drop sizes that were measured and the days of use after opening. */
function lasting(input: SheetInput): readonly (readonly [string, string])[] {
  const { order, pharmacy, eye, nightsPerWeek } = input
  const { daysAfterOpening } = pharmacy
  const answer = bottlesNeeded({
    volumeMl: order.volumeMl,
    eyes: eye === undefined ? 2 : 1,
    nights: 1,
    daysAfterOpening,
    nightsPerWeek,
  })
  if (answer.kind === "refused") return []
  const low = answer.nightsPerBottle.low * order.bottles
  const high = answer.nightsPerBottle.high * order.bottles
  const nights = say("{most, plural, one {# night.} other {{range} nights.}}", {
    most: high,
    range: rangeInWords({ low, high }),
  })
  return [[say("Lasting"), together([nights, bottleInWords({ daysAfterOpening }, answer)])]]
}

/** Said where the practice has not set the pharmacy, so that nobody takes what is usual for what is so. */
const assumed = ({ pharmacy }: SheetInput): readonly string[] =>
  pharmacy.id === usualPharmacy.id
    ? [
        say(
          "The practice has not set this pharmacy: its stock, what it measures with, its days to deliver and its days of use after opening are taken as usual (common practice, no source).",
        ),
      ]
    : []

function label(input: SheetInput): SheetBlock {
  const { order, child, pharmacy, contacts, isPreserved, eye, nightsPerWeek } = input
  const { concentrationPercent, volumeMl } = order
  return {
    kind: "label",
    lines: labelText({
      concentrationPercent,
      volumeMl,
      isPreserved,
      daysAfterOpening: pharmacy.daysAfterOpening,
      eye,
      nightsPerWeek,
      child,
      pharmacy: pharmacy.name === usualPharmacy.name ? null : pharmacy.name,
      contacts,
    }),
  }
}
