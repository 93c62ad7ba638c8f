import { EYES } from "../../engine/course.js"
import { dayInWords, say, shortDayInWords } from "../../engine/say.js"
import type { Block, DocumentContent, DocumentPart } from "../document.js"
import type { DocumentInput } from "../document-input.js"
import { dropCautions, professionalFoot } from "../letter/cautions.js"
import { afterStopSaid, expectedSaid, growthReason, growthSaid } from "../letter/growth-said.js"
import { lastVisits } from "../letter/last-visits.js"
import { asked, openRedFlags, planned, tolerance, treatmentNow } from "../letter/standing.js"
import { answerSaid, treatmentSaid } from "../letter/treatment-said.js"
import { decimals } from "../record/figures.js"
import { type Reading, readingOf } from "../record/reading.js"
import { setApart } from "../right-to-left.js"

/**
 * One page to the referring or family doctor: the answer about the growth, apart from it the treatment, the last figures,
 * what is in use, how it is borne, what comes next and what is asked of the reader.
 */
export function doctorLetter(input: DocumentInput): DocumentContent {
  const reading = readingOf(input)
  const growth = growthSaid(reading)
  const treatment = treatmentSaid(reading)
  const parts: readonly DocumentPart[] = [
    part("address", addressOf(input)),
    part("about", [{ kind: "text", text: aboutSaid(input) }]),
    part("warning-signs", cautionOf(openRedFlags(reading))),
    part("growth", [
      { kind: "lead", text: growth },
      ...texts([sentences([growthReason(reading), expectedSaid(reading), afterStopSaid(reading)])]),
    ]),
    part("treatment-answer", texts([sentences([treatment, answerSaid(reading)])])),
    part("last-visits", lastVisits(reading)),
    part("standing", [
      {
        kind: "pairs",
        pairs: [
          [say("Treatment now"), sentences(treatmentNow(reading))],
          [say("How it is borne"), sentences(tolerance(reading))],
          [say("What is planned"), sentences(planned(reading))],
          [say("What we ask of you"), sentences(asked(reading))],
        ],
      },
    ]),
    part("small-print", [
      {
        kind: "notes",
        lines: [methodOf(reading), dropCautions(reading)].filter(({ length }) => length > 0).map(sentences),
      },
    ]),
    part("signature", [
      { kind: "signatures", lines: [{ role: say("For the practice|letter"), name: input.author ?? "" }] },
    ]),
  ]
  return {
    title:
      input.childName === null
        ? say("Letter on the growth of this child's eyes")
        : say("Letter on the growth of the eyes of {child}", { child: setApart(input.childName) }),
    parts: parts.filter(({ blocks }) => blocks.length > 0),
    values: {
      child: setApart(input.childName ?? ""),
      born: dayInWords(input.course.child.born),
      number: input.childNumber ?? "",
      practice: input.practice.name,
      date: dayInWords(input.today),
      author: input.author ?? "",
      growth,
      treatment,
    },
    foot: professionalFoot(),
  }
}

const part = (name: string, blocks: readonly Block[]): DocumentPart => ({ name, blocks })

const texts = (lines: readonly (string | null)[]): readonly Block[] =>
  lines.flatMap((text) => (text === null || text === "" ? [] : [{ kind: "text", text } as const]))

/** Whole sentences one after the other; each is a message of its own. */
const sentences = (lines: readonly (string | null)[]): string =>
  lines.filter((line) => line !== null && line !== "").join(" ")

const cautionOf = (lines: readonly string[]): readonly Block[] =>
  lines.length === 0 ? [] : [{ kind: "caution", lines }]

const addressOf = ({ addressee = [] }: DocumentInput): readonly Block[] => {
  const lines = addressee.filter((line) => line.trim() !== "")
  return lines.length === 0 ? [] : [{ kind: "address", lines }]
}

/** Whom and which day the letter is about. */
function aboutSaid({ childName, childNumber, course, today }: DocumentInput): string {
  const values = {
    child: setApart(childName ?? ""),
    born: shortDayInWords(course.child.born),
    day: dayInWords(today),
    number: childNumber ?? "",
    named: childName === null ? "no" : "yes",
  }
  return childNumber == null || childNumber === ""
    ? say("{day}. Re: {named, select, yes {{child}, born {born}} other {child born {born}}}.", values)
    : say(
        "{day}. Re: {named, select, yes {{child}, born {born}} other {child born {born}}}, our number {number}.",
        values,
      )
}

/** How the figures were got, and what can be told from measuring error. */
function methodOf({ assessment, course, today }: Reading): readonly string[] {
  const { method, eyes } = assessment
  const last = course.visits
    .filter(({ date }) => date <= today)
    .toSorted((a, b) => (a.date < b.date ? -1 : 1))
    .findLast((visit) => EYES.some((eye) => visit[eye]?.axialLength !== undefined))
  const length = last?.right?.axialLength ?? last?.left?.axialLength
  const detectable = Math.max(...EYES.map((eye) => eyes[eye].detectableChangeMm ?? 0))
  return [
    ...(length === undefined
      ? []
      : [
          length.device === undefined
            ? say(
                "Axial length: {method, select, optical-biometry {optical biometry} ultrasound {by ultrasound} other {method not stated}}.",
                { method: length.method ?? "none" },
              )
            : say(
                "Axial length: {method, select, optical-biometry {optical biometry} ultrasound {by ultrasound} other {method not stated}}, instrument {device}.",
                { method: length.method ?? "none", device: setApart(length.device) },
              ),
        ]),
    ...(detectable > 0
      ? [
          say("A change of {mm} mm or more can be told from measuring error.", {
            mm: decimals(detectable, 2),
          }),
        ]
      : []),
    say(
      "SER is the spherical equivalent. Growth and intervals are worked out from all of the child's lengths together: method {version}, parameters {parameters}.",
      { version: method.version, parameters: method.parameters },
    ),
  ]
}
