import { describe, expect, it } from "vitest"
import type { Fragment, Identity } from "./fragment.js"
import { joined } from "./joined.js"

const of = (identity: Identity, date = "2025-01-10"): Fragment => ({
  identity,
  course: { visits: [{ date }] },
  documents: [],
  source: { kind: "table", id: date },
  notes: [],
})
const identities = (...fragments: readonly Fragment[]) => joined(fragments).map(({ identity }) => identity)

describe("fragments by child", () => {
  it("are of one child by number or name, as far as both say the same", () => {
    expect(
      identities(of({ number: "1" }), of({ name: "Mira" }), of({ number: "1", born: "2017-03-14" })),
    ).toEqual([{ number: "1", born: "2017-03-14" }, { name: "Mira" }])
    expect(identities(of({ number: "1", name: "Mira" }), of({ number: "1", name: "Ana" }))).toHaveLength(2)
    expect(identities(of({ born: "2017-03-14" }), of({ born: "2017-03-14" }))).toHaveLength(2)
  })

  it("follow what a child was told to be called meanwhile, and go to the first that fits", () => {
    const found = identities(
      of({ number: "1" }),
      of({ number: "1", name: "Mira" }),
      of({ name: "Mira", sex: "female" }),
    )
    expect(found).toEqual([{ number: "1", name: "Mira", sex: "female" }])
    expect(identities(of({ name: "Mira" }), of({ number: "2" }), of({ number: "2", name: "Mira" }))).toEqual([
      { name: "Mira", number: "2" },
      { number: "2" },
    ])
  })

  it("of a whole practice take no longer than its children", () => {
    const many = Array.from({ length: 20_000 }, (_, index) => of({ number: `${index}` }))
    expect(joined(many)).toHaveLength(20_000)
  }, 30_000)
})
