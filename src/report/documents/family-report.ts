import type { FamilyFigureOptions } from "../../chart/family/large-text.js"
import { dayInWords, say } from "../../engine/say.js"
import type { DocumentContent, DocumentPart } from "../document.js"
import type { DocumentInput, ReadOn } from "../document-input.js"
import { about } from "../family/about.js"
import { childWords, millimetres } from "../family/child-words.js"
import { type FamilyReading, familyReading, lastLength } from "../family/family-reading.js"
import { eyesFigure, growthFigure, lengthFigure } from "../family/figures.js"
import { grownMm } from "../family/growth-answer.js"
import { leadSentence } from "../family/lead.js"
import { pageCode } from "../family/page-code.js"
import { questions } from "../family/questions.js"
import { urgent, watchFor } from "../family/watch-for.js"
import { whatItMeans } from "../family/what-it-means.js"
import { nextDecision, nextVisit, whatNext } from "../family/what-next.js"
import { whatWeSaw } from "../family/what-we-saw.js"

export interface FamilyReportOptions {
  /** Paper leaves out the third figure and the last questions and begins its second side anew; a screen has room for all. */
  readonly on?: ReadOn | undefined
  /** How the figures are drawn, when not as usual there. */
  readonly figures?: FamilyFigureOptions | undefined
}

/** What the second side holds on the shorter paper in the longest language; the family page answers them all. */
const PAPER_QUESTIONS = 4
const FIGURES: Readonly<Record<ReadOn, FamilyFigureOptions>> = {
  // Drawn this wide a figure takes little height on paper, and its words are still nearly 8 points.
  paper: { width: 980 },
  screen: {},
  phone: { width: 360 },
}

/**
 * What a family reads: the answer about growth first, then figures, meaning, next steps, what to watch for, and what
 * families always ask. The paper and the family page are set from the same parts.
 */
export function familyReport(input: DocumentInput, options: FamilyReportOptions = {}): DocumentContent {
  const reading = familyReading(input)
  const on = options.on ?? "paper"
  const isPaper = on === "paper"
  const figures = options.figures ?? FIGURES[on]
  const { name, named } = childWords(input)
  const parts: readonly DocumentPart[] = [
    { name: "lead", blocks: [{ kind: "lead", text: leadSentence(reading) }] },
    { name: "what-we-saw", blocks: whatWeSaw(reading) },
    { name: "figure-eyes", blocks: eyesFigure(reading, figures) },
    { name: "what-it-means", blocks: whatItMeans(reading) },
    { name: "figure-growth", blocks: growthFigure(reading, figures) },
    ...(isPaper
      ? [{ name: "second-side", blocks: [{ kind: "page-break" }] } as const]
      : [{ name: "figure-length", blocks: lengthFigure(reading, figures) }]),
    { name: "what-we-do-next", blocks: whatNext(reading) },
    { name: "watch-for", blocks: watchFor(reading) },
    { name: "urgent", blocks: urgent(reading) },
    { name: "questions", blocks: questions(reading, isPaper ? PAPER_QUESTIONS : undefined) },
    { name: "about", blocks: about(reading) },
    { name: "code", blocks: pageCode(input) },
  ]
  return {
    title: say("{named, select, yes {How {name}'s eyes are doing} other {How your child's eyes are doing}}", {
      name,
      named,
    }),
    parts,
    values: valuesOf(reading),
    foot: say(
      "This page helps you to talk with your eye doctor. It does not replace an examination, and it is not a medical device.",
    ),
  }
}

/** What a practice's template may put into sentences of its own; empty where it is not known. */
function valuesOf(reading: FamilyReading): Readonly<Record<string, string>> {
  const grown = grownMm(reading)
  const [visit, decision] = [nextVisit(reading), nextDecision(reading)]
  const bottle = reading.supply.nextBottles[0]
  const length = (eye: "right" | "left") => {
    const found = lastLength(reading, eye)
    return found ? millimetres(found.mm) : ""
  }
  const day = (date: string | undefined) => (date === undefined ? "" : dayInWords(date))
  return {
    child: reading.input.childName ?? "",
    practice: reading.input.practice.name,
    today: dayInWords(reading.today),
    rightMm: length("right"),
    leftMm: length("left"),
    growthMm: grown ? millimetres(grown.mm) : "",
    growthMonths: grown ? String(grown.months) : "",
    usualMm: grown ? millimetres(grown.emmetropicMm) : "",
    untreatedMm: grown?.naturalMm === undefined ? "" : millimetres(grown.naturalMm),
    nextVisit: day(visit?.due),
    nextVisitFrom: day(visit?.opens),
    nextVisitUntil: day(visit?.closes),
    nextDecision: day(decision?.due),
    bottleUntil: day(bottle?.due),
  }
}
