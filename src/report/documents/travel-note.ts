import type { Treatment } from "../../engine/course.js"
import { dayInWords, listed, say } from "../../engine/say.js"
import type { Block, DocumentContent, DocumentPart, DocumentRefused } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { type Noticed, noticedOn } from "./travel-effects.js"
import { treatmentsInUse, useInWords } from "./travel-use.js"

/**
 * For a teacher, or for an officer at a border: what the child uses, what may be noticed, what to do. It holds no
 * figure of the eyes and no diagnosis beyond what explains the treatment.
 */
export function travelNote(input: DocumentInput): DocumentContent | DocumentRefused {
  const { course, today } = input
  const date = dayInWords(today)
  const inUse = treatmentsInUse(course, today)
  if (inUse.length === 0) {
    return {
      kind: "refused",
      why: say("no treatment is in use on {date}: there is nothing that such a note could say", { date }),
    }
  }
  return {
    title: say("Note for school and travel"),
    parts: partsOf({ input, inUse }),
    values: {
      child: input.childName ?? "",
      born: dayInWords(course.child.born),
      practice: input.practice.name,
      today: date,
      treatment: listed(inUse.map(useInWords)),
    },
    foot: say("Made on {date} from the record of {practice}. It is not a prescription.", {
      date,
      practice: input.practice.name,
    }),
  }
}

interface Note {
  readonly input: DocumentInput
  readonly inUse: readonly Treatment[]
}

function partsOf(note: Note): readonly DocumentPart[] {
  const { input, inUse } = note
  const drops = inUse.filter(({ kind }) => kind === "atropine")
  const noticed = drops.map(noticedOn)
  const hasDrops = drops.length > 0
  return [
    { name: "child", blocks: [child(input)] },
    { name: "what-it-is", blocks: whatItIs(input) },
    { name: "what-is-used", blocks: whatIsUsed(note) },
    { name: "what-may-be-noticed", blocks: hasDrops ? mayBeNoticed(noticed) : [] },
    { name: "what-helps", blocks: hasDrops ? whatHelps() : [] },
    { name: "carrying", blocks: hasDrops ? carrying() : [] },
    { name: "emergency", blocks: [emergency(note)] },
    { name: "practice", blocks: [practice(input)] },
    { name: "signature", blocks: [signature(input)] },
    { name: "sources", blocks: hasDrops ? [sources(noticed)] : [] },
  ]
}

/** A file without a name leaves room to write it in: a note must say of whom it speaks. */
const child = ({ childName, course }: DocumentInput): Block => ({
  kind: "pairs",
  pairs: [
    [say("Child|of the note"), childName ?? "________________________________"],
    [say("Born|day of birth"), dayInWords(course.child.born)],
  ],
})

const whatItIs = ({ childName, practice, today }: DocumentInput): readonly Block[] => [
  {
    kind: "lead",
    text:
      childName === null
        ? say("This child is treated so that short-sightedness increases more slowly.")
        : say("{name} is treated so that short-sightedness increases more slowly.", { name: childName }),
  },
  {
    kind: "text",
    text: say(
      "The treatment is in the care of {practice}. This note says what was in use on {date}; ask for a new one after a change.",
      { practice: practice.name, date: dayInWords(today) },
    ),
  },
]

const whatIsUsed = ({ inUse }: Note): readonly Block[] => [
  { kind: "heading", level: 1, text: say("What the child uses") },
  { kind: "list", items: inUse.map(useInWords) },
]

function mayBeNoticed(noticed: readonly Noticed[]): readonly Block[] {
  const signs = [...new Set(noticed.flatMap((one) => one.signs))]
  const heading: Block = { kind: "heading", level: 1, text: say("What may be noticed") }
  if (signs.length === 0) {
    return [
      heading,
      {
        kind: "text",
        text: say(
          "We have read no report of what may be noticed at this strength. Please tell the parents of anything unusual.",
        ),
      },
    ]
  }
  return [
    heading,
    {
      kind: "text",
      text: say(
        "Some children on drops of this strength told of this; others noticed nothing. Please tell the parents when it is new or gets worse.",
      ),
    },
    { kind: "list", items: signs },
  ]
}

const whatHelps = (): readonly Block[] => [
  { kind: "heading", level: 1, text: say("What to do") },
  {
    kind: "list",
    items: [
      say("Sunglasses and a hat or cap may be worn, at school too."),
      say("Reading glasses may be used if the child has them."),
      say("No drops are needed during school hours: they are given at bedtime by an adult."),
    ],
  },
]

const carrying = (): readonly Block[] => [
  { kind: "heading", level: 1, text: say("Keeping and carrying the drops") },
  {
    kind: "list",
    items: [
      say("Keep the bottle closed, with its label on, and out of the reach of children."),
      say("On a journey the bottle goes in hand luggage, with its label, together with this note."),
    ],
  },
]

/** What cannot wait, with the practice's own numbers; abroad another poison centre answers. */
function emergency({ input, inUse }: Note): Block {
  const { poisonCentre, urgent } = input.rules.contacts
  const hasDrops = inUse.some(({ kind }) => kind === "atropine")
  const hasLenses = inUse.some(({ kind }) => kind.endsWith("lens") || kind === "orthokeratology")
  return {
    kind: "caution",
    lines: [
      ...(hasDrops ? [swallowed(poisonCentre)] : []),
      ...(hasLenses
        ? [
            say(
              "An eye with a contact lens turns red or hurts: the lens comes out, the parents are called, and the eye is seen by a doctor the same day.",
            ),
          ]
        : []),
      urgent === undefined
        ? say(
            "Flashes, floating spots, a curtain, pain in the eye or sudden loss of sight: call the parents; the eye must be seen by a doctor the same day.",
          )
        : say(
            "Flashes, floating spots, a curtain, pain in the eye or sudden loss of sight: call the parents; the eye must be seen by a doctor the same day. Urgent contact: {urgent}.",
            { urgent },
          ),
    ],
  }
}

const swallowed = (centre: string | undefined): string =>
  centre === undefined
    ? say(
        "The drops are poisonous when swallowed. If any was swallowed, call the poison centre of the country you are in at once. A child who is confused, hot and flushed or has a fit needs an ambulance.",
      )
    : say(
        "The drops are poisonous when swallowed. If any was swallowed, call the poison centre at once: {centre}; abroad, that of the country you are in. A child who is confused, hot and flushed or has a fit needs an ambulance.",
        { centre },
      )

const practice = ({ letterhead, practice: { name } }: DocumentInput): Block => ({
  kind: "pairs",
  pairs: [[say("Questions to"), [name, ...letterhead.lines].join(", ")]],
})

const signature = ({ author = "" }: DocumentInput): Block => ({
  kind: "signatures",
  lines: [{ role: say("For the practice|signature"), name: author }],
})

function sources(noticed: readonly Noticed[]): Block {
  const found = [...new Set(noticed.flatMap((one) => one.sources))]
  const practiceOnly = say(
    "What to do, and how to keep and carry the drops, is common practice without a published source.",
  )
  return {
    kind: "notes",
    lines:
      found.length === 0
        ? [practiceOnly]
        : [
            say("What may be noticed: reported of drops of this strength by {sources}.", {
              sources: listed(found),
            }),
            practiceOnly,
          ],
  }
}
