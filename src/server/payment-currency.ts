import { say } from "../engine/say.js"
import type { Context } from "./context.js"
import type { Problem } from "./contract/problem.js"

/** Payments sent in another currency than the practice's fees; what is no currency at all is told by its field. */
export async function paymentCurrencyProblems(
  { rules }: { readonly rules: Pick<Context["rules"], "now"> },
  items: readonly { readonly fields: unknown; readonly place: string }[],
): Promise<readonly Problem[]> {
  const currency = (await rules.now()).feeSchedules[0]?.currency
  if (currency === undefined) return []
  return items.flatMap(({ fields, place }) => {
    const value = (fields as { readonly currency?: unknown } | null)?.currency
    if (typeof value !== "string" || !/^[A-Z]{3}$/.test(value) || value === currency) return []
    const path = place === "" ? "currency" : `${place}.currency`
    const allowed = say("{currency}, the currency of the fee schedule", { currency })
    return [
      {
        path,
        value,
        allowed,
        message: say("{path} must be {allowed}; the payment is in {value}", { path, allowed, value }),
      },
    ]
  })
}
