import { describe, expect, it } from "vitest"
import type { ChildView } from "../../server/contract/child.js"
import { runningTreatments } from "./running-treatments.js"

type View = Pick<ChildView, "course" | "entries">

const entry = (id: string, date: string, supersededBy: string | null = null) => ({
  id,
  kind: "treatment" as const,
  body: {},
  date,
  author: "",
  recordedAt: "2026-01-01T00:00:00Z",
  supersedes: null,
  supersededBy,
  reason: null,
})

describe("treatments that can be stopped", () => {
  it("are those without an end, each with the entry in force", () => {
    const view = {
      course: {
        lengthwise: 1,
        child: { born: "2017-01-01", sex: "female" },
        visits: [],
        treatments: [
          { from: "2025-01-10", to: "2025-07-10", kind: "atropine", concentrationPercent: 0.01 },
          { from: "2025-07-10", kind: "atropine", concentrationPercent: 0.05 },
        ],
      },
      entries: [
        entry("old", "2025-01-10", "ended"),
        entry("ended", "2025-01-10"),
        entry("now", "2025-07-10"),
      ],
    } satisfies View
    expect(runningTreatments(view).map(({ entryId }) => entryId)).toEqual(["now"])
  })
})
