import { describe, expect, it } from "vitest"
import type { Consent } from "../../engine/course.js"
import type { ChildView } from "../../server/contract/child.js"
import { consentRows } from "./consent-rows.js"

const covers = { kind: "atropine", concentrationPercent: 0.05 } as const
const entry = (consent: Consent, more: object = {}): ChildView["entries"][number] => ({
  id: consent.date,
  kind: "consent",
  body: consent,
  date: consent.date,
  author: "Ada",
  recordedAt: `${consent.date}T09:00:00.000Z`,
  supersedes: null,
  supersededBy: null,
  reason: null,
  ...more,
})
const rows = (consents: readonly Consent[], more: object = {}) =>
  consentRows({
    view: { entries: consents.map((consent) => entry(consent, more)), course: { consents } },
    on: "2025-07-01",
    wordings: [],
  }).map(({ consent, state }) => `${consent.date} ${state}`)

describe("the list of consents", () => {
  it("has the latest first", () => {
    expect(
      rows([
        { date: "2024-01-10", covers },
        { date: "2025-01-10", covers },
      ]),
    ).toEqual(["2025-01-10 in-force", "2024-01-10 in-force"])
  })

  it("shows earlier consents to a treatment as withdrawn with the one that was", () => {
    expect(
      rows([
        { date: "2024-01-10", covers },
        { date: "2025-01-10", covers, until: "2025-06-01" },
      ]),
    ).toEqual(["2025-01-10 withdrawn", "2024-01-10 withdrawn"])
  })

  it("keeps an ended consent as withdrawn when a new one was given", () => {
    expect(
      rows([
        { date: "2025-01-10", covers, until: "2025-06-01" },
        { date: "2025-06-02", covers },
      ]),
    ).toEqual(["2025-06-02 in-force", "2025-01-10 withdrawn"])
  })

  it("leaves out what was corrected", () => {
    expect(rows([{ date: "2025-01-10", covers }], { supersededBy: "x" })).toEqual([])
  })
})
