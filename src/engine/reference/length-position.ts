import type { Evidence } from "../../evidence/types.js"
import type { Position } from "../assessment.js"
import type { Child, LengthMethod } from "../course.js"
import { chooseReference } from "./choose-reference.js"
import { position } from "./position.js"

/** Where a measured length (mm) stands on the reference that fits the child, or why none is used. */
export function lengthPosition({
  child,
  mm,
  method,
  ageYears,
  evidence,
}: {
  child: Child
  mm: number
  method?: LengthMethod | undefined
  ageYears: number
  evidence: Evidence
}): Position {
  const { sex, ancestry } = child
  const measure = "axial-length"
  const chosen = chooseReference({ references: evidence.references, sex, ancestry, ageYears, measure })
  if ("refused" in chosen) return chosen
  return position({ measure, value: mm, ageYears, sex, reference: chosen.reference, method })
}
