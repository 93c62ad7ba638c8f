import { describe, expect, it } from "vitest"
import { CURRENCIES, decimalsOf } from "./currencies.js"
import { amountTyped, moneyInWords, readAmount } from "./money.js"

describe("money in words", () => {
  it("groups thousands and ends with the code", () => {
    expect(moneyInWords(123_456_789, "EUR")).toBe("1,234,567.89 EUR")
    expect(moneyInWords(100, "USD")).toBe("1.00 USD")
    expect(moneyInWords(5, "GBP")).toBe("0.05 GBP")
  })

  it("has as many decimals as the currency", () => {
    expect(moneyInWords(1234, "JPY")).toBe("1,234 JPY")
    expect(moneyInWords(1234, "KWD")).toBe("1.234 KWD")
  })

  it("is never said in a currency that is not known, or for a part of a cent", () => {
    expect(() => moneyInWords(1, "XYZ")).toThrow("currency unknown: XYZ")
    expect(() => moneyInWords(0.5, "EUR")).toThrow("whole number of cents")
  })
})

describe("an amount that was typed", () => {
  it.each([
    ["45", 4500],
    ["45.5", 4550],
    ["45,50", 4550],
    ["1.234,50", 123_450],
    ["1,234.50", 123_450],
    ["1 234,50", 123_450],
    ["1'234.50", 123_450],
    ["0", 0],
  ])("%s is read", (typed, cents) => {
    expect(readAmount(typed, "EUR")).toEqual({ kind: "amount", cents })
  })

  it.each(["", "abc", "-3", "1.234", "1,234", "0.005", "1.234.567", "1,23,456.00", "12 EUR", "1e3"])(
    "%s is refused, not guessed at",
    (typed) => {
      expect(readAmount(typed, "EUR").kind).toBe("refused")
    },
  )

  it("says what is allowed in the currency", () => {
    expect(readAmount("12.5", "JPY")).toEqual({
      kind: "refused",
      allowed: "an amount without decimals, such as 45",
    })
    expect(readAmount("1.234", "KWD")).toEqual({ kind: "amount", cents: 1234 })
    expect(readAmount("1000000.01", "EUR")).toEqual({ kind: "refused", allowed: "at most 1,000,000.00 EUR" })
  })

  it("reads back what it writes", () => {
    for (const currency of ["EUR", "JPY", "TND"])
      for (const cents of [0, 1, 99, 1000, 123_456])
        expect(readAmount(amountTyped(cents, currency), currency)).toEqual({ kind: "amount", cents })
  })
})

describe("decimals of a currency", () => {
  // CLDR shortens these where coins are no longer used; ISO 4217 still gives them decimals.
  const SHORTENED = "AFN ALL COP HUF IDR IQD IRR KPW LAK LBP MGA MMK PKR SOS SYP YER".split(" ")

  it("agree with the CLDR of this Node, an independent table, wherever that does not shorten", () => {
    const others = CURRENCIES.filter((code) => !SHORTENED.includes(code)).map((code) => [
      code,
      new Intl.NumberFormat("en", { style: "currency", currency: code }).resolvedOptions()
        .maximumFractionDigits,
    ])
    expect(others).toEqual(others.map(([code]) => [code, decimalsOf(String(code))]))
    expect(others.length).toBeGreaterThan(130)
  })

  it("are not assumed for a code nobody knows", () => {
    expect(decimalsOf("XYZ")).toBeNull()
    expect(decimalsOf("eur")).toBeNull()
  })
})
