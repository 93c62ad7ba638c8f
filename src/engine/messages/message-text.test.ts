import { beforeAll, describe, expect, it } from "vitest"
import { learnEveryLanguage } from "../../words/index.js"
import { LANGUAGES } from "../say.js"
import type { FamilyContact } from "./family-contact.js"
import { messageText } from "./message-text.js"
import { MESSAGE_KINDS, type MessageKind } from "./planned-messages.js"

beforeAll(learnEveryLanguage)

const contact: FamilyContact = {
  name: "Ines Solberg",
  relation: "mother",
  language: "en",
  reachedBy: "email",
  childCalled: "Mira",
  agreed: { on: "2026-01-02", to: ["visits", "bottles"] },
}
const input = (kind: MessageKind, changes: Partial<Parameters<typeof messageText>[0]["message"]> = {}) => ({
  message: {
    key: "k",
    child: "c",
    kind,
    on: "2026-04-20",
    opens: "2026-05-04",
    due: "2026-06-01",
    closes: "2026-06-29",
    channel: "email" as const,
    to: "ines@family.example",
    name: "Ines Solberg",
    language: "en" as const,
    ...changes,
  },
  contact,
  today: "2026-04-20",
  rules: { sender: "Quiet Harbour", telephone: "+353 1 555 0100" },
  contacts: {},
})

describe("a message to a family", () => {
  it("says what, when, whom to call, and how it stops", () => {
    expect(messageText(input("visit-ahead"))).toEqual({
      subject: "Time to book a visit",
      text: [
        "Hello Ines Solberg,",
        "It is time to book the next visit of Mira: please call us for a day from 4 May 2026 to 29 June 2026. If a day is agreed already, there is nothing else to do.",
        "You reach us by telephone at +353 1 555 0100.",
        "Please do not write to us about anything urgent: call us.",
        "Quiet Harbour",
        "You agreed to such messages on 2 January 2026. To stop them, answer this message with the word stop, or call us.",
      ].join("\n\n"),
    })
  })
  it("names the practice's number for urgent care where there is one", () => {
    const { text } = messageText({ ...input("bottle"), contacts: { urgent: "112" } })
    expect(text).toContain("anything urgent. Urgent contact: 112.")
  })
  it("does not make a first name out of a name", () => {
    const { childCalled: _, ...unnamed } = contact
    expect(messageText({ ...input("visit-due"), contact: unnamed }).text).toContain("Your child’s next visit")
  })
  it("says of a bottle past its day that it was good", () => {
    expect(messageText({ ...input("bottle"), today: "2026-06-02" }).text).toContain(
      "was good until 1 June 2026",
    )
  })
  it("is one paragraph on a telephone, and short", () => {
    const { text } = messageText(input("visit-overdue", { channel: "sms" }))
    expect(text).not.toContain("\n")
    expect(text.length).toBeLessThan(320)
  })

  const HEALTH =
    /eye|drop|bottle|atropin|myop|glasses|lens|doctor|clinic|treat|exam|ojo|gota|frasco|miop|lente|médic|tratam|眼|药|瓶|近视|镜|医|治/i
  it.each(LANGUAGES.flatMap((language) => MESSAGE_KINDS.map((kind) => [language, kind] as const)))(
    "has no word of health and no name in its subject, and no treatment in its text: %s, %s",
    (language, kind) => {
      const { subject, text } = messageText(input(kind, { language }))
      expect(subject).not.toMatch(HEALTH)
      expect(subject).not.toMatch(/Mira|Solberg/)
      expect(text).not.toMatch(/atropin|myop|miop|近视|阿托品|diagnos|诊断|%/i)
      expect(text).toContain("+353 1 555 0100")
      expect(text).not.toMatch(/\{|\}/)
    },
  )
  it.each(LANGUAGES)("says something else in each language: %s", (language) => {
    const english = messageText(input("visit-due"))
    const said = messageText(input("visit-due", { language }))
    expect(said.subject === english.subject).toBe(language === "en")
  })
})
