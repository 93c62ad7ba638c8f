import { dayInWords, say } from "../../engine/say.js"
import { prescriptionName } from "../../engine/treatment-name.js"
import { capitalised } from "../../engine/words.js"
import type { Block } from "../document.js"
import type { AfterEffect, ReportedEvent } from "./adverse-event.js"

/** Whether it went on, ended or was begun again, as far as the record shows it. */
export function challenges({ after, event, concern }: ReportedEvent): readonly Block[] {
  const lines = after.flatMap((one) => challengeSaid(one, event.opened)).map(capitalised)
  const outcome =
    concern.closed === undefined
      ? []
      : [say("The effect was closed on {day}.", { day: dayInWords(concern.closed) })]
  return [
    { kind: "heading", level: 1, text: say("Without the product, and with it again") },
    {
      kind: "list",
      items:
        lines.length === 0 ? [say("The record shows no treatment to leave off.")] : [...lines, ...outcome],
    },
  ]
}

function challengeSaid(
  { treatment, ended, daysToEnd, changedTo, again, cameBack }: AfterEffect,
  opened: string,
): readonly string[] {
  const name = prescriptionName(treatment)
  if (ended === null || daysToEnd === null) {
    return [say("{treatment} went on: the record shows no time without it.", { treatment: name })]
  }
  const values = { treatment: name, day: dayInWords(ended) }
  if (ended < opened)
    return [say("{treatment} had ended on {day}, before the effect.", values)].concat(returned())
  if (changedTo !== null) {
    return [
      say(
        "{treatment} was changed to {other} on {day}, {days, plural, one {# day} other {# days}} after the effect was recorded.",
        {
          ...values,
          other: prescriptionName(changedTo),
          days: daysToEnd,
        },
      ),
    ]
  }
  return [
    say(
      "{treatment} was stopped on {day}, {days, plural, one {# day} other {# days}} after the effect was recorded (dechallenge).",
      {
        ...values,
        days: daysToEnd,
      },
    ),
    ...returned(),
  ]

  function returned(): readonly string[] {
    if (again === null) return [say("It has not been given again (no rechallenge).")]
    const begun = { other: prescriptionName(again), from: dayInWords(again.from) }
    return [
      cameBack === null
        ? say(
            "{other} was begun on {from} (rechallenge); the record shows no effect of the same kind since.",
            begun,
          )
        : say(
            "{other} was begun on {from} (rechallenge); an effect of the same kind was recorded again on {day}.",
            {
              ...begun,
              day: dayInWords(cameBack),
            },
          ),
    ]
  }
}
