import { DECISION_WORDS } from "../../engine/choices/decision-words.js"
import type { Course, Decision, SafetyConcern } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { capitalised } from "../../engine/words.js"
import type { Block } from "../document.js"
import { day, text, yesOrNo } from "./figures.js"
import { byDay } from "./record-table.js"
import { concernName, inWords, RELATEDNESS_WORDS, SERIOUSNESS_WORDS } from "./vocabulary.js"

type Pair = readonly [string, string]

/** Each decision with its reason, what was offered, and the figures shown, in the words of that day. */
export function decisionBlocks({ decisions = [] }: Course): readonly Block[] {
  return decisions.toSorted(byDay(({ date }) => date)).flatMap((decision) => [
    {
      kind: "heading",
      level: 2,
      text: say("{day}: {decision}", {
        day: day(decision.date),
        decision: say(DECISION_WORDS[decision.kind]),
      }),
    } as const,
    { kind: "pairs", pairs: decisionPairs(decision) } as const,
    ...figuresShown(decision),
  ])
}

function decisionPairs({ reason, treatment, offered = [] }: Decision): readonly Pair[] {
  return [
    [say("Reason"), text(reason)],
    ...(treatment === undefined ? [] : [[say("Treatment"), capitalised(treatmentName(treatment))] as const]),
    ...(offered.length === 0 ? [] : [[say("Put side by side"), offered.join("; ")] as const]),
  ]
}

function figuresShown({ figures = [] }: Decision): readonly Block[] {
  if (figures.length === 0) return []
  return [
    {
      kind: "table",
      head: [say("Shown at that moment"), say("Value|figure")],
      rows: figures.map(({ label, value }) => [label, value]),
    },
  ]
}

/** Each concern from the day it was opened to the day it was closed. */
export function concernBlocks({ concerns = [] }: Course): readonly Block[] {
  return concerns.toSorted(byDay(({ opened }) => opened)).flatMap((concern) => [
    {
      kind: "heading",
      level: 2,
      text: say("{day}: {concern}", { day: day(concern.opened), concern: concernName(concern.kind) }),
    } as const,
    { kind: "pairs", pairs: concernPairs(concern) } as const,
  ])
}

function concernPairs(concern: SafetyConcern): readonly Pair[] {
  const { what, owner, seriousness, relatedness, adverseEvent, closed, outcome } = concern
  const pair = (label: string, value: string | null | undefined): readonly Pair[] =>
    value == null ? [] : [[label, value]]
  return [
    [say("What|concern"), text(what)],
    ...pair(say("Looked after by"), owner),
    ...pair(say("Seriousness"), inWords(SERIOUSNESS_WORDS, seriousness)),
    ...pair(say("Relation to the treatment"), inWords(RELATEDNESS_WORDS, relatedness)),
    ...pair(say("Kept as an unwanted effect"), adverseEvent === undefined ? null : yesOrNo(adverseEvent)),
    [say("Closed on|record"), closed === undefined ? say("still open") : day(closed)],
    ...pair(say("Outcome"), outcome),
  ]
}
