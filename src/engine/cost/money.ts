import { type Language, language, say, withDecimalSign } from "../say.js"
import { decimalsOf } from "./currencies.js"

/**
 * An amount as it is read in the language in force, with the code of its currency and as many decimals as ISO 4217 gives
 * it. English has the code last, so that amounts stand under each other.
 *
 * @example
 * moneyInWords(123450, "EUR") // => "1,234.50 EUR"
 */
export function moneyInWords(cents: number, currency: string): string {
  if (language() === "en") return `${amountInWords(cents, currency)} ${currency}`
  return written(cents, { style: "currency", currency, currencyDisplay: "code" })
}

/** The same without the currency, for a column whose head names it. */
export const amountInWords = (cents: number, currency: string): string =>
  written(cents, { style: "decimal", currency })

type Written = { readonly currency: string } & (
  | { readonly style: "decimal" }
  | { readonly style: "currency"; readonly currencyDisplay: "code" }
)

function written(cents: number, { currency, ...style }: Written): string {
  // As text, so that no digit passes through a binary fraction.
  const amount = amountTyped(cents, currency) as `${number}`
  return moneyFormat(language(), { currency, ...style }).format(amount)
}

const formats = new Map<string, Intl.NumberFormat>()

function moneyFormat(spoken: Language, written: Written): Intl.NumberFormat {
  const key = `${spoken} ${written.style} ${written.currency}`
  let format = formats.get(key)
  if (format === undefined) {
    // Not the language's own count: some shorten a currency whose coins went out of use.
    const decimals = knownDecimals(written.currency)
    const options = { ...written, minimumFractionDigits: decimals, maximumFractionDigits: decimals }
    format = new Intl.NumberFormat(spoken, options)
    formats.set(key, format)
  }
  return format
}

/**
 * An amount as it is typed into a field, without grouping or currency.
 *
 * @example
 * amountTyped(123450, "EUR") // => "1234.50"
 */
export function amountTyped(cents: number, currency: string): string {
  const decimals = knownDecimals(currency)
  if (!Number.isSafeInteger(cents)) throw new RangeError(`money must be a whole number of cents: ${cents}`)
  const digits = String(Math.abs(cents)).padStart(decimals + 1, "0")
  const whole = digits.slice(0, digits.length - decimals)
  const sign = cents < 0 ? "-" : ""
  return decimals === 0 ? `${sign}${whole}` : `${sign}${whole}.${digits.slice(-decimals)}`
}

export type ReadAmount =
  | { readonly kind: "amount"; readonly cents: number }
  | { readonly kind: "refused"; readonly allowed: string }

/** Larger amounts are a slip of the pen; the limit of the course file and of fee schedules. */
const MOST_CENTS = 100_000_000

/**
 * What a person typed, in the smallest unit of the currency. A comma and a point are both read as the decimal mark,
 * and as grouping where the other follows. Three digits after a single mark could mean either, so they are refused
 * (unless the currency has three decimals). Nothing is rounded.
 *
 * @example
 * readAmount("1.234,50", "EUR") // => { kind: "amount", cents: 123450 }
 */
export function readAmount(typed: string, currency: string): ReadAmount {
  const decimals = knownDecimals(currency)
  const example = withDecimalSign(amountTyped(45 * 10 ** decimals, currency))
  const refused = (allowed: string): ReadAmount => ({ kind: "refused", allowed })
  const text = typed.replace(/[\s\u00a0\u202f']/g, "")
  const match = /^(\d+|\d{1,3}(?:,\d{3})+(?=\.)|\d{1,3}(?:\.\d{3})+(?=,))(?:[.,](\d+))?$/.exec(text)
  if (!match) return refused(say("an amount such as {example}", { example }))
  const [, whole = "", part = ""] = match
  if (part.length > decimals) {
    return refused(
      decimals === 0
        ? say("an amount without decimals, such as {example}", { example })
        : say("an amount with at most {decimals} decimals, such as {example}", { decimals, example }),
    )
  }
  const cents = Number(whole.replace(/[.,]/g, "") + part.padEnd(decimals, "0"))
  if (cents > MOST_CENTS) return refused(say("at most {most}", { most: moneyInWords(MOST_CENTS, currency) }))
  return { kind: "amount", cents }
}

function knownDecimals(currency: string): number {
  const decimals = decimalsOf(currency)
  if (decimals === null) throw new RangeError(`currency unknown: ${currency}`)
  return decimals
}
