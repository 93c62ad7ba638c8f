import { describe, expect, it } from "vitest"
import { contactDraft, contactOf } from "./contact-draft.js"

const contact = {
  name: "Ines Solberg",
  relation: "mother",
  language: "es",
  email: "ines@family.example",
  reachedBy: "email",
  agreed: { on: "2026-01-02", to: ["visits"] },
} as const

describe("the form of a family's contact", () => {
  it("gives back what it was begun with", () => {
    expect(contactOf(contactDraft(contact, "2026-11-25"))).toEqual(contact)
  })
  it("agrees to nothing by itself", () => {
    expect(contactOf({ ...contactDraft(null, "2026-11-25"), name: "A", relation: "father" })).toEqual({
      name: "A",
      relation: "father",
      language: "en",
      reachedBy: "none",
    })
  })
  it("does not renew an agreement that was withdrawn", () => {
    const withdrawn = { ...contact, agreed: { ...contact.agreed, until: "2026-05-01" } }
    expect(contactOf(contactDraft(withdrawn, "2026-11-25")).agreed).toBeUndefined()
  })
})
