import { expect, it } from "vitest"
import { treatmentName } from "../../engine/treatment-name.js"
import { askedTreatments } from "./asked-treatments.js"

const drops = (concentrationPercent: number) => ({ kind: "atropine" as const, concentrationPercent })

it("asks about what is in use first, then what is planned, then what was decided, each once", () => {
  const found = askedTreatments({
    course: {
      treatments: [
        { ...drops(0.01), from: "2024-01-10", to: "2025-01-10" },
        { ...drops(0.025), from: "2025-01-10", to: "2025-08-01" },
        { ...drops(0.05), from: "2025-08-01" },
      ],
      decisions: [
        { date: "2025-06-20", kind: "change-strength", reason: "growth", treatment: drops(0.05) },
        { date: "2025-06-30", kind: "add", reason: "growth", treatment: { kind: "orthokeratology" } },
      ],
    },
    today: "2025-07-01",
  })
  expect(found.map(({ treatment, words }) => `${treatmentName(treatment)}: ${words}`)).toEqual([
    "atropine 0.025 %: in use",
    "atropine 0.05 %: planned from 1 Aug 2025",
    "orthokeratology: decided on 30 Jun 2025",
  ])
})

it("leaves out drops whose strength is not recorded: nobody can consent to those", () => {
  const treatments = [{ kind: "atropine" as const, from: "2025-01-10" }]
  expect(askedTreatments({ course: { treatments }, today: "2025-07-01" })).toEqual([])
})
