import type { EyeAssessment } from "../../engine/assessment.js"
import { EYES } from "../../engine/course.js"
import { dayInWords, say } from "../../engine/say.js"
import { datesInWords } from "../dates-in-words.js"
import type { Block } from "../document.js"
import { afterStopSaid, expectedSaid, growthReason, growthSaid } from "../letter/growth-said.js"
import { planned, treatmentNow } from "../letter/standing.js"
import { answerSaid, treatmentSaid } from "../letter/treatment-said.js"
import { ageWritten } from "./age.js"
import { certainty, decimals, NOTHING, oddsOf, recorded, text } from "./figures.js"
import type { Reading } from "./reading.js"
import { ANCESTRY_WORDS, inWords, SEX_WORDS } from "./vocabulary.js"

/** Who the record is about, as the course has it. */
export function childBlocks({ input, course, today }: Reading): readonly Block[] {
  const { child, practice } = input.course
  const more = (label: string, value: string | null | undefined) =>
    value == null || text(value) === NOTHING ? [] : [[label, value] as const]
  return [
    {
      kind: "pairs",
      pairs: [
        ...more(say("Name"), input.childName),
        ...more(say("Our number"), input.childNumber),
        ...more(say("Id in the course file"), child.id),
        [say("Born"), dayInWords(child.born)],
        [say("Age on {day}", { day: dayInWords(today) }), ageWritten({ born: child.born, on: today })],
        [say("Sex"), say(SEX_WORDS[child.sex])],
        ...more(say("Ancestry"), inWords(ANCESTRY_WORDS, child.ancestry)),
        ...more(
          say("Parents with myopia"),
          child.myopicParents === undefined ? null : recorded(child.myopicParents),
        ),
        ...more(say("Protocol by name"), child.protocol),
        ...more(
          say("Latitude of the practice"),
          (practice ?? course.practice)?.latitude === undefined
            ? null
            : say("{degrees}°", { degrees: recorded((practice ?? course.practice)?.latitude) }),
        ),
      ],
    },
  ]
}

/** What the figures say on the day the record was made. */
export function summaryBlocks(reading: Reading): readonly Block[] {
  const { assessment, concerns, input, today } = reading
  const said = [
    growthReason(reading),
    expectedSaid(reading),
    afterStopSaid(reading),
    treatmentSaid(reading),
    answerSaid(reading),
    ...treatmentNow(reading),
    ...planned(reading),
  ].flatMap((line) => (line === null ? [] : [line]))
  return [
    {
      kind: "heading",
      level: 1,
      text: say("Where it stands on {day}", { day: dayInWords(today) }),
    },
    { kind: "text", text: growthSaid(reading) },
    { kind: "list", items: said },
    eyesTable(reading),
    ...concernLines(concerns.map(({ what }) => datesInWords(what))),
    {
      kind: "notes",
      lines: [
        say(
          "Method {version}, parameters {parameters}; certainty asked {certainty}, error rates of the test {alpha} and {beta}, limits {upper} for an effect and {lower} against one.",
          {
            version: assessment.method.version,
            parameters: assessment.method.parameters,
            certainty: certainty(input.settings.certainty),
            alpha: recorded(input.settings.alpha),
            beta: recorded(input.settings.beta),
            upper: oddsOf(assessment.finding.upper),
            lower: oddsOf(assessment.finding.lower),
          },
        ),
      ],
    },
  ]
}

function concernLines(lines: readonly string[]): readonly Block[] {
  if (lines.length === 0) {
    return [
      {
        kind: "text",
        text: say("Nothing is open about safety; what was not measured or asked raises nothing."),
      },
    ]
  }
  return [
    { kind: "heading", level: 2, text: say("Open about safety") },
    { kind: "list", items: lines },
  ]
}

function eyesTable({ assessment: { eyes } }: Reading): Block {
  return {
    kind: "table",
    head: [
      say("Eye"),
      say("Length, mm (95 % interval)"),
      say("Growth, mm a year (95 % interval)"),
      say("Untreated, mm a year"),
      say("Without myopia, mm a year"),
      say("Change that can be told, mm"),
    ],
    rows: EYES.map((eye) => [
      say("{eye, select, right {right eye} other {left eye}}", { eye }),
      ...eyeCells(eyes[eye]),
    ]),
    figures: [1, 2, 3, 4, 5],
  }
}

function eyeCells({ length, rate, natural, emmetropic, detectableChangeMm }: EyeAssessment) {
  const interval = (value: number, low: number, high: number) =>
    say("{value} ({low} to {high})", {
      value: decimals(value, 2),
      low: decimals(low, 2),
      high: decimals(high, 2),
    })
  const plain = (value: number | undefined | null) => (value == null ? NOTHING : decimals(value, 2))
  return [
    length === null ? NOTHING : interval(length.mm, length.low95, length.high95),
    rate === null ? NOTHING : interval(rate.mmPerYear, rate.low95, rate.high95),
    plain(natural?.mmPerYear),
    plain(emmetropic?.mmPerYear),
    plain(detectableChangeMm),
  ]
}
