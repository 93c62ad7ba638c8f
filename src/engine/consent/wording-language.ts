import { isLanguage, LANGUAGE_NAMES, type Language } from "../say.js"

const TRADITIONAL = ["hant", "tw", "hk", "mo"]

/**
 * The language that figures are told in beside a wording in this one; null for a language we do not speak.
 *
 * @example
 * spokenFor("es-MX") // => "es"
 */
export function spokenFor(tag: string): Language | null {
  const [primary = "", ...rest] = tag.toLowerCase().split(/[-_]/)
  if (primary === "zh") return rest.some((part) => TRADITIONAL.includes(part)) ? null : "zh-Hans"
  return isLanguage(primary) ? primary : null
}

/** A language as it calls itself; its code where we do not speak it. */
export const languageName = (tag: string): string => (isLanguage(tag) ? LANGUAGE_NAMES[tag] : tag)
