import { say } from "../../engine/say.js"
import { fixed } from "../../engine/words.js"
import type { Block } from "../document.js"
import { type Answer, answered, graded } from "./answer-grade.js"
import { millimetres, thousandsApart } from "./child-words.js"
import type { FamilyReading } from "./family-reading.js"
import { alreadyMyopic, dioptresPerMm, nearWork, outdoorTrials, weakGlasses } from "./question-evidence.js"
import { treatmentQuestions } from "./treatment-questions.js"

/**
 * What families always ask, as far as it concerns this child, what concerns its treatment first, each answer with what it
 * rests on. Advice that has no trial behind it (duty CD-100 of the evidence) says that it is a rule of thumb.
 */
export const questions = (reading: FamilyReading, atMost = Number.POSITIVE_INFINITY): readonly Block[] => [
  { kind: "heading", level: 1, text: say("What families ask") },
  ...[
    ...treatmentQuestions(reading),
    daylight(),
    exercises(),
    screens(),
    ...(reading.myopia === "not-myopic" ? [] : [glasses()]),
  ].slice(0, atMost),
]

function daylight(): Answer {
  const { lessMm, children, source } = outdoorTrials()
  const line = say(
    "In trials with {children} children, most of them not short-sighted, eyes grew {less} mm less with more time outdoors. One study of short-sighted children saw no such link. As a rule of thumb: about 2 hours a day.",
    { children: thousandsApart(children), less: millimetres(lessMm) },
  )
  return answered(say("Does daylight help?"), line, graded("pooled", [source, alreadyMyopic.source]))
}

function screens(): Answer {
  const line = say(
    "We have read no trial that shows it. Children who do more close work are more often short-sighted: their odds are about {odds} times as high. As a rule of thumb: a break every 20 to 30 minutes, and more than 30 cm to the page.",
    { odds: fixed(nearWork.oddsRatio, 1) },
  )
  return answered(say("Do screens and close work do harm?"), line, graded("link", [nearWork.source]))
}

const exercises = (): Answer =>
  answered(
    say("Do eye exercises, vision training or a diet help?"),
    say(
      "We have read no trial that shows that eye exercises, vision training or any diet slows the growth of the eye. So we do not advise them for this.",
    ),
    graded("none"),
  )

function glasses(): Answer {
  const perMm = dioptresPerMm()
  const weak = weakGlasses()
  const line = say(
    "As long as the eyes grow, most likely: 1 mm of growth makes about {dioptres} D. Weaker glasses did not slow the growth in trials with {children} children.",
    { dioptres: fixed(perMm.value, 1), children: weak.children },
  )
  const sources = [...perMm.source.slice(0, 2), weak.source]
  return answered(say("Will the glasses get stronger?"), line, graded("figures", sources))
}
