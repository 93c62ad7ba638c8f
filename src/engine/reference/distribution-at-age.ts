import type { Reference } from "../../evidence/types.js"
import type { Sex } from "../course.js"
import { say } from "../say.js"
import { centileDistribution } from "./centile-distribution.js"
import type { FoundDistribution } from "./distribution.js"
import { lmsDistribution, normalDistribution, splitNormalDistribution } from "./fitted-distribution.js"
import { outsideReference, rowsForSex } from "./rows-at-age.js"

/** What a reference says of children of one age and sex, or why it says nothing. Grade D is never a distribution. */
export function distributionAtAge({
  reference,
  sex,
  ageYears,
}: {
  reference: Reference
  sex: Sex
  ageYears: number
}): FoundDistribution {
  if (reference.grade === "D") {
    return {
      refused: say("the reference {id} has grade D: for plausibility only, never for a centile", {
        id: reference.id,
      }),
    }
  }
  const refused = outsideReference({ reference, sex, ageYears })
  if (refused !== null) return { refused }
  switch (reference.shape) {
    case "lms":
      return { distribution: lmsDistribution(rowsForSex(reference.rows, sex), ageYears) }
    case "normal":
      return { distribution: normalDistribution(rowsForSex(reference.rows, sex), ageYears) }
    case "split-normal":
      return { distribution: splitNormalDistribution(rowsForSex(reference.rows, sex), ageYears) }
    case "centiles": {
      const rows = rowsForSex(reference.rows, sex)
      return centileDistribution({ rows, ageYears, agesAreCells: reference.agesAreCells })
    }
  }
}
