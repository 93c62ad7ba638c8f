import type { Duty } from "../assessment.js"
import type { CalendarDate } from "../course.js"
import { nextDuty } from "../protocol/duties.js"
import { sourceOf } from "../protocol/duty-source.js"
import type { Anchor, Protocol, ProtocolStep } from "../protocol/protocol.js"
import { protocolSource, protocolTitle, stepTitle } from "../protocol/titles.js"
import { msg, say } from "../say.js"
import { eitherOf } from "../words.js"
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
      title: say("Why these duties?"),
      inputs: [
        [say("As of"), asOf],
        [
          say("Protocol"),
          say("{title} ({id}), version {version}: {source}", {
            title: protocolTitle(protocol),
            id: protocol.id,
            version: protocol.version,
            source: protocolSource(protocol),
          }),
        ],
        ...(next === null
          ? [[say("Next duty"), say("nothing is owed")] as const]
          : nextInputs(next, protocol)),
        ...protocol.steps.map(
          (step) =>
            [
              say("Step {id}", { id: step.id }),
              `${stepTitle(step)}: ${offsetInWords(step, step.anchor)}, ${windowInWords(step)}`,
            ] as const,
        ),
      ],
      formula: [
        say(
          "Each step is counted in calendar months from its anchor (start, restart, stop or last visit) and may be done within its window.",
        ),
        say(
          "It is done when visits within its reach measured everything it asks for; open within its window, overdue once the window has closed, missed when measuring now would serve a later step.",
        ),
        say("Consent and a bottle in date are owed while a treatment needs them."),
        say("Next is what has been overdue longest, else what has been open longest, else what comes first."),
      ],
      parameters: SPANS.map(
        ([name, note]): NamedParameter => ({
          name,
          value: protocol[name],
          unit: "d",
          sd: null,
          source: [protocolSource(protocol)],
          note: say(note),
        }),
      ),
    },
    () => undefined,
  )
}

/** The duty with its dates, and the offset and window of the steps it comes from. */
function nextInputs(next: Duty, protocol: Protocol): readonly WhyInput[] {
  const { step: from, isAfterChange } = sourceOf(next)
  // Steps of one title are one duty to whoever reads it.
  const steps = protocol.steps.filter(({ kind, title }) => kind === next.kind && title === from?.title)
  const offsets = steps.map((step) => offsetInWords(step, isAfterChange ? "change" : step.anchor))
  const lasting = LASTING[next.kind]
  const rule =
    steps.length === 0 ? lasting && say(lasting) : `${either(offsets)}, ${either(steps.map(windowInWords))}`
  return [
    [
      say("Next duty"),
      say(
        "{step}: due {due}, from {opens} to {closes}, {state, select, done {done} open {open} overdue {overdue} upcoming {upcoming} other {missed}}",
        { step: next.step, due: next.due, opens: next.opens, closes: next.closes, state: next.state },
      ),
    ],
    ...(rule === undefined ? [] : [[say("Counted as"), rule] as const]),
  ]
}

/** Duties that belong to no step. */
const LASTING: Readonly<Record<string, string>> = {
  consent: msg(
    "by the first day of the treatment it covers, asked for consentLeadDays before; again at once when it was withdrawn or a material new wording came into force",
  ),
  bottle: msg(
    "by the last day of the bottle in use, asked for bottleLeadDays before; without a beyond-use date a bottle lasts bottleDaysAfterOpening",
  ),
}

const either = (words: readonly string[]): string => eitherOf([...new Set(words)])

const ANCHORS: Readonly<Record<Anchor | "change", string>> = {
  "before-start": msg("the start, before the first drop"),
  start: msg("the start"),
  restart: msg("the restart"),
  stop: msg("the stop"),
  "last-visit-on-treatment": msg("the last visit on treatment"),
  "last-visit-off-treatment": msg("the last visit off treatment"),
  change: msg("the change of strength"),
}

function offsetInWords(
  { offsetMonths: months, offsetDays: days = 0 }: ProtocolStep,
  from: keyof typeof ANCHORS,
): string {
  const anchor = say(ANCHORS[from])
  if (months > 0 && days > 0) {
    return say(
      "{months, plural, one {# month} other {# months}} and {days, plural, one {# day} other {# days}} from {anchor}",
      { months, days, anchor },
    )
  }
  if (months > 0) {
    return say("{months, plural, one {# month} other {# months}} from {anchor}", { months, anchor })
  }
  return days > 0
    ? say("{days, plural, one {# day} other {# days}} from {anchor}", { days, anchor })
    : say("at {anchor}", { anchor })
}

const windowInWords = ({ windowDaysBefore: before, windowDaysAfter: after }: ProtocolStep): string =>
  say(
    "from {before, plural, one {# day} other {# days}} before to {after, plural, one {# day} other {# days}} after",
    { before, after },
  )

const SPANS = [
  ["longestPauseDays", msg("A gap in treatment of up to this many days is a pause; a longer one is a stop.")],
  ["consentLeadDays", msg("A consent is asked for this many days before the treatment begins.")],
  ["bottleLeadDays", msg("The next bottle is asked for this many days before the last one ends.")],
  ["bottleDaysAfterOpening", msg("Days of use after opening where the pharmacy gave no beyond-use date.")],
] as const
