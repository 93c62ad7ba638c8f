import type { Evidence } from "../../evidence/types.js"
import type { Child } from "../course.js"
import { say } from "../say.js"
import { chooseReference } from "./choose-reference.js"
import { valueAtCentile } from "./value-at-centile.js"

/** Two centiles of the reference that fits a child, to be drawn behind the lengths (mm). */
export interface Band {
  readonly label: string
  readonly rows: readonly { readonly age: number; readonly lowMm: number; readonly highMm: number }[]
}

const LOW_CENTILE = 5
const HIGH_CENTILE = 95

/** The band over the ages the reference covers; null when no reference fits or only single ages are published. */
export function referenceBand({
  child,
  ages,
  evidence,
}: {
  child: Child
  ages: readonly number[]
  evidence: Evidence
}): Band | null {
  const { sex, ancestry } = child
  const rows = ages.flatMap((age) => {
    const chosen = chooseReference({
      references: evidence.references.filter((r) => r.shape !== "centiles"),
      sex,
      ancestry,
      ageYears: age,
      measure: "axial-length",
    })
    if ("refused" in chosen) return []
    const at = (centile: number) =>
      valueAtCentile({ centile, ageYears: age, sex, reference: chosen.reference })
    const [low, high] = [at(LOW_CENTILE), at(HIGH_CENTILE)]
    return "refused" in low || "refused" in high
      ? []
      : [{ age, lowMm: low.value, highMm: high.value, reference: chosen.reference }]
  })
  const reference = rows[0]?.reference
  if (!reference || rows.length < 2) return null
  return {
    label: say("European children, centiles {low} to {high}{grade, select, C {, approximate} other {}}", {
      low: LOW_CENTILE,
      high: HIGH_CENTILE,
      grade: reference.grade,
    }),
    rows: rows.map(({ age, lowMm, highMm }) => ({ age, lowMm, highMm })),
  }
}
