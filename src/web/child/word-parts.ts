/** One piece of a line, or nothing where there is nothing to say. */
export type Part = string | 0 | false | null | undefined

export const joined = (...parts: readonly Part[]): string => parts.filter((part) => part).join(", ")
