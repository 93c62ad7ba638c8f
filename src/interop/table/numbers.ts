import type { DecimalSign } from "./table-types.js"

/** A figure as it was read, or what keeps it from being one. */
export type ReadNumber = { readonly value: number } | { readonly fault: NumberFault }

export type NumberFault = "not-a-number" | "thousands" | "other-decimal-sign" | "letters"

const PLAIN_POINT = /^[+-]?\d{1,9}(?:\.\d{1,9})?$/
const PLAIN_COMMA = /^[+-]?\d{1,9}(?:,\d{1,9})?$/

/** Longer than any figure that is measured. */
const LONGEST = 40

/**
 * Reads a figure by the decimal sign that was settled. Signs of typography are read as the plain ones; nothing else is
 * put right: a separator of thousands, a unit or the other decimal sign is a fault.
 *
 * @example
 * readNumber("−2,25", ",") // => { value: -2.25 }
 */
export function readNumber(text: string, sign: DecimalSign): ReadNumber {
  // Nearly every figure is written plainly, and a table has millions of them.
  if (sign === "." ? PLAIN_POINT.test(text) : PLAIN_COMMA.test(text))
    return { value: Number(sign === "." ? text : text.replace(",", ".")) + 0 }
  if (text.length > LONGEST) return { fault: "not-a-number" }
  const plain = plainSigns(text)
  const pointed =
    sign === "," ? plain.replace(",", "\u0001").replaceAll(".", ",").replace("\u0001", ".") : plain
  if (/^[+-]?(?:\d+(?:\.\d*)?|\.\d+)$/.test(pointed)) return { value: Number(pointed) + 0 }
  if (/\p{L}|[%°]/u.test(pointed)) return { fault: "letters" }
  if (/^[+-]?\d+,\d+$/.test(pointed)) return { fault: "other-decimal-sign" }
  if (
    /^[+-]?\d{1,3}(?:[,'’\s]\d{3})+(?:\.\d*)?$/.test(pointed) ||
    /^[+-]?\d{1,3}(?:\.\d{3})+,\d*$/.test(pointed)
  )
    return { fault: "thousands" }
  return { fault: "not-a-number" }
}

/** A minus and a plus of any kind as the plain ones, and no blank after them. */
export const plainSigns = (text: string): string =>
  text
    .replace(/[\u2010-\u2014\u2212\uFE63\uFF0D]/g, "-")
    .replace(/[\uFF0B\uFE62]/g, "+")
    .replace(/^([+-])\s+/, "$1")

/** Which decimal sign a text shows, or null: whole numbers, dates and words show none. */
export function decimalSignIn(
  text: string,
): { readonly sign: DecimalSign; readonly couldBeThousands: boolean } | null {
  const match = /^[+-]?(\d*)([.,])(\d+)$/.exec(plainSigns(text))
  if (!match) return null
  const [, whole = "", sign, decimals = ""] = match
  return {
    sign: sign === "," ? "," : ".",
    couldBeThousands: decimals.length === 3 && /^[1-9]\d{0,2}$/.test(whole),
  }
}
