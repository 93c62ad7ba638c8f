import type { Duty } from "../assessment.js"
import type { CalendarDate } from "../course.js"
import { nextDuty } from "../protocol/duties.js"
import { sourceOf } from "../protocol/duty-source.js"
import type { Anchor, Protocol, ProtocolStep } from "../protocol/protocol.js"
import { counted } from "../words.js"
import { type NamedParameter, type Why, type WhyInput, whyOf } from "./why.js"

/** Why these duties are owed: the rule behind the next one first, then the whole protocol. */
export function dutiesWhy({
  duties,
  protocol,
  asOf,
}: {
  readonly duties: readonly Duty[]
  readonly protocol: Protocol
  readonly asOf: CalendarDate
}): Why {
  const next = nextDuty(duties)
  return whyOf(
    {
      title: "Why these duties?",
      inputs: [
        ["As of", asOf],
        ["Protocol", `${protocol.title} (${protocol.id}), version ${protocol.version}: ${protocol.source}`],
        ...(next === null ? [["Next duty", "nothing is owed"] as const] : nextInputs(next, protocol)),
        ...protocol.steps.map(
          (step) =>
            [
              `Step ${step.id}`,
              `${step.title}: ${offsetInWords(step, ANCHOR_WORDS[step.anchor])}, ${windowInWords(step)}`,
            ] as const,
        ),
      ],
      formula: [
        "Each step is counted in calendar months from its anchor (start, restart, stop or last visit) and may be done within its window.",
        "It is done when visits within its reach measured everything it asks for; open within its window, overdue once the window has closed, missed when measuring now would serve a later step.",
        "Consent and a bottle in date are owed while a treatment needs them.",
        "Next is what has been overdue longest, else what has been open longest, else what comes first.",
      ],
      parameters: SPANS.map(
        ([name, note]): NamedParameter => ({
          name,
          value: protocol[name],
          unit: "d",
          sd: null,
          source: [protocol.source],
          note,
        }),
      ),
    },
    () => undefined,
  )
}

/** The duty with its dates, and the offset and window of the step it comes from. */
function nextInputs(next: Duty, protocol: Protocol): readonly WhyInput[] {
  const steps = protocol.steps.filter(({ kind }) => kind === next.kind)
  const { step: owed, isAfterChange } = sourceOf(next)
  const offsets = steps.flatMap((step) => {
    if (step.title !== owed?.title) return []
    if (!isAfterChange) return [{ step, offset: offsetInWords(step, ANCHOR_WORDS[step.anchor]) }]
    return step.restartsOnChange ? [{ step, offset: offsetInWords(step, "the change of strength") }] : []
  })
  const rule =
    offsets.length === 0
      ? LASTING[next.kind]
      : `${either(offsets.map(({ offset }) => offset))}, ${either(offsets.map(({ step }) => windowInWords(step)))}`
  return [
    ["Next duty", `${next.step}: due ${next.due}, from ${next.opens} to ${next.closes}, ${next.state}`],
    ...(rule === undefined ? [] : [["Counted as", rule] as const]),
  ]
}

/** Duties that belong to no step. */
const LASTING: Readonly<Record<string, string>> = {
  consent:
    "by the first day of the treatment it covers, asked for consentLeadDays before; again at once when it was withdrawn or a material new wording came into force",
  bottle:
    "by the last day of the bottle in use, asked for bottleLeadDays before; without a beyond-use date a bottle lasts bottleDaysAfterOpening",
}

const either = (words: readonly string[]): string => [...new Set(words)].join(" or ")

const ANCHOR_WORDS: Readonly<Record<Anchor, string>> = {
  "before-start": "the start, before the first drop",
  start: "the start",
  restart: "the restart",
  stop: "the stop",
  "last-visit-on-treatment": "the last visit on treatment",
  "last-visit-off-treatment": "the last visit off treatment",
}

function offsetInWords({ offsetMonths, offsetDays = 0 }: ProtocolStep, anchor: string): string {
  const spans = [
    ...(offsetMonths > 0 ? [counted(offsetMonths, "month")] : []),
    ...(offsetDays > 0 ? [counted(offsetDays, "day")] : []),
  ]
  return spans.length === 0 ? `at ${anchor}` : `${spans.join(" and ")} from ${anchor}`
}

const windowInWords = ({ windowDaysBefore, windowDaysAfter }: ProtocolStep): string =>
  `from ${counted(windowDaysBefore, "day")} before to ${counted(windowDaysAfter, "day")} after`

const SPANS = [
  ["longestPauseDays", "A gap in treatment of up to this many days is a pause; a longer one is a stop."],
  ["consentLeadDays", "A consent is asked for this many days before the treatment begins."],
  ["bottleLeadDays", "The next bottle is asked for this many days before the last one ends."],
  ["bottleDaysAfterOpening", "Days of use after opening where the pharmacy gave no beyond-use date."],
] as const
