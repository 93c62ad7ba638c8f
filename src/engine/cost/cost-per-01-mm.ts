import { listed, say } from "../say.js"
import { fixed } from "../words.js"
import type { CostPlan } from "./cost-plan.js"

/** A length with its 95 % interval, mm. */
interface Withheld {
  readonly mm: number
  readonly low95: number
  readonly high95: number
}

/** Cost of each tenth of a millimetre, in the smallest unit of the currency, with what the interval makes of it. */
export interface CostPerTenth {
  readonly cents: number
  readonly low95Cents: number
  readonly high95Cents: number
}

export type CostPer01Mm =
  | {
      readonly kind: "cost"
      readonly currency: string
      /** Counting what is not covered. */
      readonly notCovered: CostPerTenth
      /** Counting what is uncertain as well, as if none of it were paid for. */
      readonly withUncertain: CostPerTenth
    }
  | { readonly kind: "refused"; readonly why: string }

const TENTH_MM = 0.1

/**
 * What the family pays under a plan for each 0.1 mm of growth withheld over the same months. Two sums, since what is
 * uncertain may or may not be paid for; what is covered is in neither. Refused where nothing or hardly anything is
 * withheld, or where the interval reaches down to nothing: such a quotient has no upper end.
 *
 * @example
 * costPer01Mm({ plan, withheldMm: { mm: 0.4, low95: 0.2, high95: 0.6 } }) // of 800.00 EUR: 200.00 EUR (133.33 to 400.00)
 */
export function costPer01Mm({
  plan,
  withheldMm,
}: {
  readonly plan: Pick<CostPlan, "currency" | "totals" | "withoutFee">
  readonly withheldMm: Withheld
}): CostPer01Mm {
  const { mm, low95, high95 } = withheldMm
  if (![mm, low95, high95].every(Number.isFinite) || low95 > mm || mm > high95) {
    throw new RangeError(`not a length with its interval: ${mm} (${low95} to ${high95})`)
  }
  const refused = (why: string) => ({ kind: "refused" as const, why })
  const tenth = fixed(TENTH_MM, 1)
  // What is shown as 0.00 mm is nothing to divide by.
  if (mm < 0.005)
    return refused(
      say("no growth is expected to be withheld, so there is no cost per {tenth} mm.", { tenth }),
    )
  if (low95 < 0.005) {
    return refused(
      say(
        "what is withheld may be nothing ({mm} mm, 95 % between {low} and {high}), so a cost per {tenth} mm would say more than is known.",
        { mm: fixed(mm), low: fixed(low95), high: fixed(high95), tenth },
      ),
    )
  }
  if (plan.withoutFee.length > 0) {
    const what = listed(plan.withoutFee)
    return refused(say("the plan is not complete: there is no fee for {what}.", { what }))
  }
  const { notCoveredCents, uncertainCents } = plan.totals
  const perTenth = (cents: number): CostPerTenth => ({
    cents: Math.round((cents * TENTH_MM) / mm),
    low95Cents: Math.round((cents * TENTH_MM) / high95),
    high95Cents: Math.round((cents * TENTH_MM) / low95),
  })
  return {
    kind: "cost",
    currency: plan.currency,
    notCovered: perTenth(notCoveredCents),
    withUncertain: perTenth(notCoveredCents + uncertainCents),
  }
}
