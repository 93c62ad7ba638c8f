import fc from "fast-check"
import { IntlMessageFormat } from "intl-messageformat"
import { describe, expect, it } from "vitest"
import { parseMessage, valueNames } from "./message-format.js"
import { dayInWords, inLanguage, learn, listed, msg, say, sayParts, withDecimalSign } from "./say.js"

// The outside check: a full implementation of ICU messages, with tags off, since ours has none.
const formatted = (message: string, language: string, values: Record<string, string | number>) =>
  new IntlMessageFormat(message, language, undefined, { ignoreTag: true }).format(values)

describe("say", () => {
  it("fills in what a message names", () => {
    expect(say("A bottle of {ml} mL for {who}", { ml: 5, who: "Mira" })).toBe("A bottle of 5 mL for Mira")
  })
  it("says one and many", () => {
    const bottles = "{count, plural, =0 {no bottle} one {# bottle} other {# bottles}}"
    expect([0, 1, 2].map((count) => say(bottles, { count }))).toEqual(["no bottle", "1 bottle", "2 bottles"])
  })
  it("refuses a message without its value, and a plural without a number", () => {
    expect(() => say("{count} drops")).toThrow(RangeError)
    expect(() => say("{count, plural, other {#}}", { count: "3" })).toThrow(RangeError)
  })
  it("says a text in the language of the scope, in English where a translation is missing, and after it in English again", () => {
    learn("es", { "Left|eye": "Izquierdo", "{count} drops": "{count} gotas" })
    expect(
      inLanguage("es", () => [say("Left|eye"), say("{count} drops", { count: 1.5 }), say("No")]),
    ).toEqual(["Izquierdo", "1,5 gotas", "No"])
    expect(say("Left|eye")).toBe("Left")
  })
  it("speaks English again after a task that failed", () => {
    expect(() => inLanguage("es", () => say("{a}"))).toThrow()
    expect(say("Left|eye")).toBe("Left")
  })
  it("keeps what is no text in its place", () => {
    const link = { href: "/visit" }
    expect(sayParts("See {link} first", { link })).toEqual(["See ", link, " first"])
  })
  it("marks a text without changing it", () => expect(msg("atropine")).toBe("atropine"))
})

describe("figures, days and lists by language", () => {
  it("writes the decimal sign of the language", () => {
    expect([
      withDecimalSign("24.12", "en"),
      withDecimalSign("24.12", "es"),
      withDecimalSign("24.12", "zh-Hans"),
    ]).toEqual(["24.12", "24,12", "24.12"])
  })
  it("writes a day out", () => {
    expect(dayInWords("2026-03-10", "en")).toBe("10 March 2026")
    expect(dayInWords("2026-03-10", "es")).toBe("10 de marzo de 2026")
    expect(dayInWords("2026-03-10", "zh-Hans")).toBe("2026年3月10日")
  })
  it("joins a list", () => {
    expect(listed(["a", "b", "c"], "en")).toBe("a, b and c")
    expect(listed(["a", "b", "c"], "es")).toBe("a, b y c")
  })
})

describe("messages against the full ICU implementation", () => {
  const MESSAGES = [
    "plain",
    "the judgement's end",
    "'{'literal'}' and ''quoted''",
    "{n, plural, =0 {none} one {# day} other {# days}} for {who}",
    "{sex, select, female {her} male {his} other {their}} eyes",
    "{n, plural, one {{who} has one} other {{sex, select, female {she} other {they}} has #}}",
    "a {n} b{n}c",
  ]
  it.each(MESSAGES)("agrees on %s", (message) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 999 }),
        fc.string(),
        fc.constantFrom("female", "male", "x"),
        (n, who, sex) => {
          const values = { n, who, sex }
          for (const spoken of ["en", "es", "zh-Hans"] as const) {
            expect(inLanguage(spoken, () => say(message, values))).toBe(formatted(message, spoken, values))
          }
        },
      ),
      { numRuns: 60 },
    )
  })
  it("agrees on any text without braces, apostrophes included", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom("a", "'", " ", "#", ".", "é", "眼") }), (text) => {
        expect(say(text)).toBe(formatted(text, "en", {}))
      }),
    )
  })
  it.each([
    "{",
    "}",
    "{a",
    "{a,}",
    "{n, plural}",
    "{n, plural, one {#}}",
    "{n, number}",
    "a } b",
    "{n, select, a {x}",
  ])("refuses %s, as the other does or more strictly", (message) =>
    expect(() => parseMessage(message)).toThrow(SyntaxError),
  )
  it("names the values of a message, inner ones too", () => {
    expect([
      ...valueNames(parseMessage("{n, plural, one {{who}} other {{sex, select, other {{x}}}}}")),
    ]).toEqual(["n", "who", "sex", "x"])
  })
})
