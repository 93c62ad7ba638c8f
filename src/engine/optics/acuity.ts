import type { Problem } from "../problem.js"
import { say, withDecimalSign } from "../say.js"
import { type DecimalAcuity, decimalAcuity, type LogMAR, logMAR } from "../units.js"

/** logMAR = -log10(decimal): 0 is 6/6, and each chart line is 0.1. Throws unless the decimal is above 0. */
export function logMARFromDecimal(decimal: DecimalAcuity): LogMAR {
  if (!(decimal > 0)) throw new RangeError(`a decimal acuity must be above 0: ${decimal}`)
  return logMAR(-Math.log10(decimal) + 0)
}

/** Decimal acuity, 10^-logMAR. */
export function decimalFromLogMAR(value: LogMAR): DecimalAcuity {
  return decimalAcuity(10 ** -value)
}

/**
 * Mean of several acuities: the arithmetic mean of logMAR, that is the geometric mean of the decimals.
 * The arithmetic mean of decimals or of Snellen fractions is wrong. Throws on an empty list.
 */
export function meanLogMAR(values: readonly LogMAR[]): LogMAR {
  if (values.length === 0) throw new RangeError("a mean needs at least one acuity")
  return logMAR(values.reduce<number>((sum, value) => sum + value, 0) / values.length)
}

/**
 * The logMAR of a Snellen fraction at any testing distance.
 *
 * @example
 * logMARFromSnellen("20/200") // => { logMAR: 1 }
 */
export function logMARFromSnellen(
  text: string,
): { readonly logMAR: LogMAR } | { readonly problems: readonly Problem[] } {
  const match = /^(\d+(?:[.,]\d+)?)\s*\/\s*(\d+(?:[.,]\d+)?)$/.exec(text.trim())
  const [distance, letter] = [match?.[1], match?.[2]].map((part) => Number(part?.replace(",", ".")))
  if (distance! > 0 && letter! > 0) return { logMAR: logMARFromDecimal(decimalAcuity(distance! / letter!)) }
  const path = "acuity"
  const allowed = say("two numbers above 0 with a slash between, such as 6/12 or 20/40")
  const message = say('{path} must be {allowed}, not "{value}"', { path, allowed, value: text })
  return { problems: [{ path, value: text, allowed, message }] }
}

// Letter sizes of charts follow the ten preferred numbers of each decade, so 20/31.7 is printed as 20/32.
const PREFERRED_NUMBERS = [1, 1.25, 1.6, 2, 2.5, 3.2, 4, 5, 6.3, 8] as const

/**
 * An acuity as a Snellen fraction for a chart in metres (6/...) or feet (20/...): the chart's own letter size on a line
 * of the logMAR chart, else the computed one to 0.1, or to the foot from 20 up.
 *
 * @example
 * snellenFromLogMAR({ logMAR: logMAR(0.3), numerator: 6 }) // => "6/12"
 */
export function snellenFromLogMAR({
  logMAR: value,
  numerator,
}: {
  logMAR: LogMAR
  numerator: 6 | 20
}): string {
  const line = Math.round(value * 10)
  const onChart = Math.abs(value * 10 - line) < 0.05
  const feet = onChart ? letterSizeFeet(line) : 20 * 10 ** value
  const size = (feet * numerator) / 20
  const digits = numerator === 20 && !onChart && size >= 20 ? 0 : 1
  return `${numerator}/${withDecimalSign(String(Number(size.toFixed(digits))))}`
}

function letterSizeFeet(line: number): number {
  // Line 0 is 20 feet, the fourth preferred number of its decade.
  const index = line + 3
  const decade = Math.floor(index / 10)
  return PREFERRED_NUMBERS[index - decade * 10]! * 10 ** (decade + 1)
}
