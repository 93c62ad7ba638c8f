import { dayInWords, say } from "../../engine/say.js"
import { prescriptionName } from "../../engine/treatment-name.js"
import { capitalised } from "../../engine/words.js"
import type { Block } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { setApart } from "../right-to-left.js"
import type { ReportedEvent } from "./adverse-event.js"
import { NOTHING, recorded, text, yesOrNo } from "./figures.js"
import { initials } from "./initials.js"
import {
  concernName,
  inWords,
  RELATEDNESS_WORDS,
  SERIOUSNESS_WORDS,
  SEX_WORDS,
  SYMPTOM_WORDS,
} from "./vocabulary.js"

const notRecorded = (): string => say("not recorded")
const dayOf = (date: string | null | undefined): string => (date == null ? notRecorded() : dayInWords(date))
const orNot = (words: string | null | undefined): string =>
  words == null || text(words) === NOTHING ? notRecorded() : words

/** By number and initials: the name stays with the practice. */
export function patient({ event, ageMonths }: ReportedEvent, input: DocumentInput): readonly Block[] {
  const { childName, course } = input
  return [
    { kind: "heading", level: 1, text: say("Patient") },
    {
      kind: "pairs",
      pairs: [
        [say("Our number"), orNot(event.child)],
        ...(event.child === null && childName !== null
          ? [[say("Initials"), initials(childName)] as const]
          : []),
        [
          say("Age when it happened"),
          say(
            "{years, plural, one {# year} other {# years}}, {months, plural, one {# month} other {# months}}",
            {
              years: Math.floor(ageMonths / 12),
              months: ageMonths % 12,
            },
          ),
        ],
        [say("Sex"), say(SEX_WORDS[course.child.sex])],
      ],
    },
  ]
}

/** What is suspected, with the bottle it came from and what else was taken. */
export function product(reported: ReportedEvent, input: DocumentInput): readonly Block[] {
  const { suspected, wasInUse, bottle, event } = reported
  if (suspected.length === 0) {
    return [
      { kind: "heading", level: 1, text: say("Suspected product") },
      { kind: "text", text: say("No treatment had been given by that day.") },
    ]
  }
  const drops = suspected.some(({ kind }) => kind === "atropine")
  const dates = suspected.map(({ to, ...treatment }) => {
    const values = { treatment: prescriptionName(treatment), from: dayInWords(treatment.from) }
    return capitalised(
      to == null
        ? say("{treatment}, used since {from}", values)
        : say("{treatment}, used from {from}, last on the day before {to}", {
            ...values,
            to: dayInWords(to),
          }),
    )
  })
  return [
    { kind: "heading", level: 1, text: say("Suspected product") },
    ...(wasInUse
      ? []
      : [
          {
            kind: "text",
            text: say("Nothing was in use on the day of the effect; this is what had been given last."),
          } as const,
        ]),
    { kind: "list", items: dates },
    ...(drops ? bottleBlocks(reported, input.course) : []),
    ...(bottle?.beyondUse !== undefined && bottle.beyondUse < event.opened
      ? [
          {
            kind: "caution",
            lines: [
              say("The bottle was past its last day of use ({day}) when the effect was seen.", {
                day: dayInWords(bottle.beyondUse),
              }),
            ],
          } as const,
        ]
      : []),
    { kind: "text", text: otherMedicines(input) },
  ]
}

function bottleBlocks(
  { bottle, event }: ReportedEvent,
  { orders = [] }: DocumentInput["course"],
): readonly Block[] {
  const isMadeToOrder = orders.length > 0 || event.pharmacy !== null
  return [
    {
      kind: "pairs",
      pairs: [
        [
          say("Product|suspected"),
          isMadeToOrder
            ? say("atropine eye drops, made to order by a pharmacy")
            : say("atropine eye drops; whether made to order or manufactured is not recorded"),
        ],
        [
          say("Strength"),
          event.concentrationPercent === null
            ? notRecorded()
            : say("{percent} % w/v", { percent: recorded(event.concentrationPercent) }),
        ],
        [say("Made by the pharmacy"), orNot(event.pharmacy)],
        [say("Lot"), orNot(event.lot)],
        [say("Bottle dispensed"), dayOf(bottle?.dispensed)],
        [say("Bottle opened"), dayOf(event.bottleOpened)],
        [say("Last day of use"), dayOf(event.bottleBeyondUse)],
        [
          say("Volume"),
          bottle?.volumeMl === undefined
            ? notRecorded()
            : say("{volume} ml", { volume: recorded(bottle.volumeMl) }),
        ],
        [say("Preserved"), bottle?.preserved === undefined ? notRecorded() : yesOrNo(bottle.preserved)],
      ],
    },
  ]
}

const MEDICINES = ["antimuscarinic-medicines", "other-mydriatics"]

/** What the family told of other medicines, by the day of the effect or later: the last yes or no. */
function otherMedicines({ course, today }: DocumentInput): string {
  const told = course.visits
    .filter(({ date }) => date <= today)
    .flatMap(({ date, answers = [] }) =>
      answers
        .filter(({ question, answer }) => MEDICINES.includes(question) && answer !== "not-done")
        .map(({ answer, note }) => ({ date, answer, note })),
    )
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
    .at(-1)
  if (!told) return say("Other medicines were not asked about.")
  const values = { day: dayInWords(told.date), note: setApart(told.note ?? "") }
  if (told.answer === "no") return say("Other medicines that act alike: none, asked on {day}.", values)
  return told.note === undefined
    ? say("Other medicines that act alike: yes, told on {day}; which is not recorded.", values)
    : say("Other medicines that act alike: yes, told on {day}: {note}.", values)
}

export function reaction({ event, concern }: ReportedEvent, { course }: DocumentInput): readonly Block[] {
  const graded = course.visits
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
    .flatMap(({ date, symptoms = [] }) =>
      symptoms
        .filter(({ kind }) => kind === concern.kind)
        .map(({ kind, grade }) =>
          say("{day}: {symptom} grade {grade} of 3", {
            day: dayInWords(date),
            symptom: say(SYMPTOM_WORDS[kind]),
            grade,
          }),
        ),
    )
  return [
    { kind: "heading", level: 1, text: say("Reaction") },
    {
      kind: "pairs",
      pairs: [
        [say("What happened"), orNot(event.what)],
        [say("Kind|reaction"), capitalised(concernName(event.kind))],
        [say("Seen or told on"), dayOf(event.opened)],
        [say("Seriousness"), inWords(SERIOUSNESS_WORDS, concern.seriousness) ?? notRecorded()],
        [say("Relation to the product"), inWords(RELATEDNESS_WORDS, concern.relatedness) ?? notRecorded()],
        [say("Outcome"), event.closed === null ? say("still open") : orNot(event.outcome)],
        [say("Closed on|record"), event.closed === null ? say("still open") : dayInWords(event.closed)],
        [say("Looked after by"), orNot(event.owner)],
      ],
    },
    ...(graded.length === 0 ? [] : [{ kind: "list", items: graded } as const]),
  ]
}

/** Who reports, for whom. */
export const reporter = ({ author, practice, letterhead, today }: DocumentInput): readonly Block[] => [
  { kind: "heading", level: 1, text: say("Reporter") },
  {
    kind: "pairs",
    pairs: [
      [say("Reported by"), orNot(author)],
      [say("Practice"), practice.name],
      ...(letterhead.lines.length === 0 ? [] : [[say("Address"), letterhead.lines.join(", ")] as const]),
      [say("Date of this report"), dayInWords(today)],
    ],
  },
  { kind: "signatures", lines: [{ role: say("Reporter"), name: author ?? "" }] },
]
