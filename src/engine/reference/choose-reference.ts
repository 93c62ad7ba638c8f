import type { Reference } from "../../evidence/types.js"
import type { Ancestry, Sex } from "../course.js"
import { msg, say } from "../say.js"
import { eitherOf } from "../words.js"
import type { Measure } from "./position.js"
import { outsideReference } from "./rows-at-age.js"

/** Ids of the references that fit children of an ancestry, best first. */
export type ReferenceOrder = Readonly<Record<Measure, Partial<Readonly<Record<Ancestry, readonly string[]>>>>>

/**
 * What the shipped references fit. Length tables exist for Europe and white Californians only; the six Guangzhou cells of
 * refraction show one tail at two ages and are nobody's default.
 */
const SHIPPED_ORDER: ReferenceOrder = {
  "axial-length": { european: ["al-europe-sexed-approx", "olsm-al"] },
  "spherical-equivalent": { european: ["truckenbrod2020-se", "olsm-se"] },
}

// Published tables that a person with the article open could load; named in the evidence as not obtained.
const LOADABLE: ReferenceOrder = {
  "axial-length": {
    "east-asian": [
      msg("L, M, S by sex of Wuhan 2022 (doi 10.1038/s41598-022-08907-5)"),
      msg("centiles of Shanghai 2023 (doi 10.1136/bjophthalmol-2021-319431)"),
    ],
    european: [
      msg("centiles of Leipzig 2021 (doi 10.1111/opo.12817)"),
      msg("centiles of the European 2018 paper (PMC6002955)"),
    ],
  },
  "spherical-equivalent": {
    european: [msg("rows 14 to 17 of Leipzig 2020 (doi 10.1371/journal.pone.0230291)")],
  },
}

/**
 * The reference to place a child on when none was named, or why there is none. A reference is chosen only when it fits
 * the child's population, sex and age; a child is never placed on another population's table in silence. `practiceOrder`
 * puts a practice's own tables before the shipped ones.
 */
export function chooseReference({
  references,
  sex,
  ancestry = "unstated",
  ageYears,
  measure,
  practiceOrder,
}: {
  references: readonly Reference[]
  sex: Sex
  ancestry?: Ancestry | undefined
  ageYears: number
  measure: Measure
  practiceOrder?: ReferenceOrder | undefined
}): { readonly reference: Reference } | { readonly refused: string } {
  const ids = [...(practiceOrder?.[measure][ancestry] ?? []), ...(SHIPPED_ORDER[measure][ancestry] ?? [])]
  const fitting = ids.flatMap((id) =>
    references.filter(
      (reference) => reference.id === id && reference.measure === measure && reference.grade !== "D",
    ),
  )
  const reasons = fitting.map((reference) => outsideReference({ reference, sex, ageYears }))
  const chosen = fitting[reasons.indexOf(null)]
  if (chosen !== undefined) return { reference: chosen }
  return { refused: [noneFits({ ancestry, measure, reasons }), whatHelps({ ancestry, measure })].join("; ") }
}

function noneFits({
  ancestry,
  measure,
  reasons,
}: {
  ancestry: Ancestry
  measure: Measure
  reasons: readonly (string | null)[]
}): string {
  if (ancestry === "unstated") {
    return say(
      "no {measure, select, axial-length {length} other {refraction}} reference is chosen while the child's ancestry is unstated",
      { measure },
    )
  }
  const values = { measure, ancestry: say(ancestryInWords[ancestry]) }
  if (reasons.length === 0) {
    return say(
      "no {measure, select, axial-length {length} other {refraction}} reference at hand fits a child of {ancestry}",
      values,
    )
  }
  const none = say(
    "no {measure, select, axial-length {length} other {refraction}} reference at hand fits a child of {ancestry} and this age",
    values,
  )
  return [none, ...reasons].join("; ")
}

function whatHelps({ ancestry, measure }: { ancestry: Ancestry; measure: Measure }): string {
  if (ancestry === "unstated") return say("state it, or name a reference")
  const published = LOADABLE[measure][ancestry] ?? []
  if (published.length === 0)
    return say("a published L-M-S or centile table of that population can be loaded")
  return say("a published L-M-S or centile table of that population can be loaded, for example {tables}", {
    tables: eitherOf(published.map((table) => say(table))),
  })
}

const ancestryInWords: Readonly<Record<Exclude<Ancestry, "unstated">, string>> = {
  "east-asian": msg("East Asian ancestry"),
  european: msg("European ancestry"),
  "south-asian": msg("South Asian ancestry"),
  african: msg("African ancestry"),
  other: msg("other ancestry"),
}
