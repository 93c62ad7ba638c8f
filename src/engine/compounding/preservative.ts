/**
 * The usual 1 % product holds 0.1 mg/mL (0.01 %) benzalkonium chloride (evidence: treatments/compounding.json,
 * starting_product, a regulator's review). A dilution carries it over in proportion; from 1 in 20 on the evidence counts what is left
 * as unpreserved.
 */
const STARTING_PRODUCT = { strengthPercent: 1, benzalkoniumPercent: 0.01 } as const
const UNPRESERVED_FROM_FOLD = 20

/** Benzalkonium carried over from a preserved 1 % stock, %; null for other stocks, whose composition is not known. */
export function benzalkoniumCarriedOver({
  concentrationPercent,
  stockPercent,
}: {
  concentrationPercent: number
  stockPercent: number
}): { readonly percent: number; readonly countsAsUnpreserved: boolean } | null {
  if (stockPercent !== STARTING_PRODUCT.strengthPercent) return null
  const fold = stockPercent / concentrationPercent
  return {
    percent: STARTING_PRODUCT.benzalkoniumPercent / fold,
    countsAsUnpreserved: fold >= UNPRESERVED_FROM_FOLD - 1e-9,
  }
}
