import { useQuery } from "@tanstack/react-query"
import { type Language, learn } from "../../engine/say.js"

const LEARNING: Readonly<Record<Language, () => Promise<void>>> = {
  en: () => Promise.resolve(),
  es: async () => learn("es", (await import("../../words/es/index.js")).spanish),
  "zh-Hans": async () => learn("zh-Hans", (await import("../../words/zh-Hans/index.js")).simplifiedChinese),
}

/**
 * Whether the words of a language are at hand. A text is made only then: figures told in English between Spanish
 * sentences would be stored as what the family read.
 */
export function useTextLanguage(spoken: Language): { readonly isKnown: boolean; readonly failure: unknown } {
  const { data, error } = useQuery({
    queryKey: ["words", spoken],
    staleTime: Number.POSITIVE_INFINITY,
    queryFn: async () => {
      await LEARNING[spoken]()
      return spoken
    },
  })
  return { isKnown: spoken === "en" || data === spoken, failure: error }
}
