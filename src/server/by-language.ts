import { type Language, language } from "../engine/say.js"

/** One of a thing for each language that is asked for: what is kept of answers is kept in the words they were given in. */
export function byLanguage<T>(make: () => T): () => T {
  const made = new Map<Language, T>()
  return () => {
    const spoken = language()
    const known = made.get(spoken)
    if (known !== undefined) return known
    const fresh = make()
    made.set(spoken, fresh)
    return fresh
  }
}
