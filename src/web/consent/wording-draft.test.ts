import { describe, expect, it } from "vitest"
import { defaultWordings } from "../../engine/consent/default-wording.js"
import { draftOf, moved, wordingOf } from "./wording-draft.js"

const [shipped] = defaultWordings
if (!shipped) throw new Error("no wording ships")

describe("a copy of a wording", () => {
  it("is that wording under a version of its own, asking families again unless told otherwise", () => {
    const copy = wordingOf(draftOf(shipped, { from: "2025-07-01", used: ["2025-07-01"] }))
    expect(copy).toEqual({ ...shipped, version: "2025-07-01 (2)", from: "2025-07-01", isMaterial: true })
  })

  it("leaves out sections that say nothing", () => {
    const draft = draftOf(shipped, { from: "2025-07-01", used: [] })
    const more = { ...draft, sections: [...draft.sections, { key: 99, heading: " ", text: "" }] }
    expect(wordingOf(more).sections).toEqual(shipped.sections)
  })
})

describe("moving a section", () => {
  const sections = ["a", "b", "c"].map((heading, key) => ({ key, heading, text: "" }))
  const inOrder = (at: number, by: -1 | 1) => moved(sections, { at, by }).map(({ heading }) => heading)

  it("changes places with its neighbour", () => {
    expect(inOrder(1, -1)).toEqual(["b", "a", "c"])
    expect(inOrder(1, 1)).toEqual(["a", "c", "b"])
  })

  it("does nothing at the ends", () => {
    expect(inOrder(0, -1)).toEqual(["a", "b", "c"])
    expect(inOrder(2, 1)).toEqual(["a", "b", "c"])
  })
})
