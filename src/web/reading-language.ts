import { type Language, languageFrom, learn } from "../engine/say.js"

/** The languages the pages of the practice are written in. */
export const STAFF_LANGUAGES = ["en", "es"] as const satisfies readonly Language[]
export type StaffLanguage = (typeof STAFF_LANGUAGES)[number]

const KEPT_AS = "lengthwise-language"

/** What the reader chose on this machine; else the first language of the browser that the pages speak. */
export function readingLanguage(): StaffLanguage {
  const wanted = [kept(), ...navigator.languages.map((tag) => tag.split("-")[0])]
  return wanted.find((tag): tag is StaffLanguage => STAFF_LANGUAGES.includes(tag as StaffLanguage)) ?? "en"
}

/** To be awaited before anything is drawn: a page speaks one language from the start. */
export async function learnReadingLanguage(): Promise<void> {
  const spoken = readingLanguage()
  if (spoken === "es") learn("es", (await import("../words/es/index.js")).spanish)
  languageFrom(() => spoken)
  document.documentElement.lang = spoken
}

/** Keeps the choice and begins anew: what was worked out so far is in the other language. */
export function readIn(spoken: StaffLanguage): void {
  try {
    localStorage.setItem(KEPT_AS, spoken)
  } catch {
    // A browser that keeps nothing reads in its own language.
  }
  location.reload()
}

function kept(): string | null {
  try {
    return localStorage.getItem(KEPT_AS)
  } catch {
    return null
  }
}
