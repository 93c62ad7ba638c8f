import { consentInForce } from "../engine/consent/consent-in-force.js"
import type { BottleOrder, Course } from "../engine/course.js"
import { say } from "../engine/say.js"
import { treatmentName } from "../engine/treatment-name.js"
import type { Context } from "./context.js"
import type { Problem } from "./contract/problem.js"
import { Refusal } from "./refusal.js"

/**
 * Refuses orders of drops that no consent in force covers, unless they say why they go out all the same. An order taken
 * further (confirmed, received, called off) at its strength is not asked again: what was ordered then stands.
 */
export async function refuseUnconsented(
  orders: readonly BottleOrder[],
  {
    context: { record, rules },
    child,
    course,
    superseded,
  }: {
    readonly context: Pick<Context, "record" | "rules">
    readonly child: string
    readonly course: Pick<Course, "consents">
    /** The entry each order takes the place of, if any, in the same sequence. */
    readonly superseded: readonly (string | undefined)[]
  },
): Promise<void> {
  const [entries, { consentWordings: wordings }] = await Promise.all([record.entriesOf(child), rules.now()])
  const problems = orders.flatMap((order, index): readonly Problem[] => {
    const before = entries.find(({ id }) => id === superseded[index])
    const { date, concentrationPercent, override = "" } = order
    const isTakenFurther =
      before?.kind === "order" && before.body.concentrationPercent === concentrationPercent
    if (override.trim() !== "" || isTakenFurther) return []
    const treatment = { kind: "atropine", concentrationPercent } as const
    const consent = consentInForce({ course, treatment, on: date, wordings })
    return consent.kind === "in-force" ? [] : [lacking({ why: consent.why, name: treatmentName(treatment) })]
  })
  if (problems.length > 0) throw new Refusal(409, problems)
}

const lacking = ({ why, name }: { readonly why: string; readonly name: string }): Problem => ({
  path: "override",
  value: null,
  allowed: say("the reason why it is ordered all the same, unless a consent to {name} is recorded first", {
    name,
  }),
  message: say(
    "{why}; record a consent to {name} first, or say under override why it is ordered all the same",
    { why, name },
  ),
})
