import type { ExaminationPlan, PlanReason } from "../../engine/protocol/examination-plan.js"
import { msg, say } from "../../engine/say.js"
import { capitalised } from "../format.js"

const STATUS_WORDS = {
  verified: msg("verified"),
  partly: msg("read in part"),
  unverified: msg("no text was read"),
} as const

function reasonWords(reason: PlanReason): string {
  if (reason.from === "protocol") return say("the protocol, {step}", { step: reason.step })
  if (reason.from === "duty") return `${reason.duty} (${say(STATUS_WORDS[reason.status])})`
  return say("asked at every visit (common practice, no source)")
}

/** Every item of the plan with the step or the duties behind it. */
export function WhyOwed({ plan }: { readonly plan: ExaminationPlan }) {
  return (
    <details className="why-owed">
      <summary>{say("Why these are asked")}</summary>
      <table className="figures">
        <thead>
          <tr>
            <th scope="col">{say("Owed")}</th>
            <th scope="col">{say("by")}</th>
          </tr>
        </thead>
        <tbody>
          {plan.items.map(({ kind, name, why }) => (
            <tr key={`${kind} ${name}`}>
              <th scope="row">{capitalised(name)}</th>
              <td>{why.map(reasonWords).join("; ")}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="soft small">
        {say(
          "Numbers such as CD-028 are duties of the evidence; Settings, Examinations says what was read for each and switches it.",
        )}
      </p>
    </details>
  )
}
