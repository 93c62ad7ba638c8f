import { describe, expect, it } from "vitest"
import { demoFees } from "../../engine/simulate/demo-fees.js"
import { draftOf, newRow, readDraft } from "./fee-draft.js"

describe("a fee schedule while it is typed", () => {
  it("is read back as it was recorded", () => {
    expect(readDraft(draftOf(demoFees), []).schedule).toEqual(demoFees)
  })

  it("gives a new row an id of its own", () => {
    const { rows } = draftOf({ ...demoFees, fees: [{ ...demoFees.fees[0]!, id: "fee-2" }] })
    expect(newRow(rows).id).toBe("fee-3")
  })

  it("names every fault by its place, and is no schedule until all are mended", () => {
    const draft = draftOf(demoFees)
    const [first, ...others] = draft.rows
    const read = readDraft(
      { ...draft, title: " ", rows: [{ ...first!, amount: "1.234", stages: [] }, ...others] },
      [],
    )
    expect(read.schedule).toBeNull()
    expect([...read.faults.keys()].toSorted()).toEqual(["fees[0].cents", "fees[0].charged", "title"])
  })

  it("tells fees and schedules that get in each other's way", () => {
    const draft = draftOf(demoFees)
    const { faults } = readDraft({ ...draft, rows: [...draft.rows, { ...draft.rows[3]!, id: "again" }] }, [
      demoFees,
    ])
    expect([...faults.keys()]).toEqual(["from", "fees[8].charged"])
  })
})
