import { randomInt } from "node:crypto"
import { hash, verify } from "@node-rs/argon2"
import { say } from "../engine/say.js"
import { LONGEST_PASSWORD, SHORTEST_PASSWORD } from "./contract/session.js"

/** Argon2id with 19 MiB and two passes, as the OWASP password storage advice has it (read in a secondary summary). */
const COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const

export const passwordHash = (password: string): Promise<string> => hash(password, COST)

/**
 * True when the password is the one of the stored hash. With no hash at all the same work is done for nothing, so
 * that the time of an answer does not tell which names exist.
 */
export async function passwordFits(password: string, stored: string | null): Promise<boolean> {
  const fits = await verify(stored ?? (await nobodysHash()), password)
  return stored !== null && fits
}

let nobody: Promise<string> | undefined
function nobodysHash(): Promise<string> {
  nobody ??= passwordHash(firstPassword())
  return nobody
}

/** What speaks against a new password, in words that can stand after "must be"; null when nothing does. */
export function passwordFault(
  password: string,
  { contextWords }: { readonly contextWords: readonly string[] },
): string | null {
  const characters = [...password]
  if (characters.length < SHORTEST_PASSWORD || characters.length > LONGEST_PASSWORD)
    return say("{least} to {most} characters long", { least: SHORTEST_PASSWORD, most: LONGEST_PASSWORD })
  if (new Set(characters).size < 6) return say("made of at least 6 different characters")
  const plain = (text: string) => text.normalize("NFKC").toLowerCase().replace(/[\s-]/g, "")
  const found = contextWords.find((word) => plain(word).length > 2 && plain(password).includes(plain(word)))
  return found === undefined ? null : say('without "{found}" in it', { found })
}

const CONSONANTS = "bdfgklmnprstvz"
const VOWELS = "aeiou"

/**
 * A random password that can be read out and typed: four groups of three syllables.
 * 70 syllables, twelve of them: about 73 bits.
 */
export function firstPassword(): string {
  const pick = (letters: string) => letters.charAt(randomInt(letters.length))
  const syllable = () => pick(CONSONANTS) + pick(VOWELS)
  const group = () => syllable() + syllable() + syllable()
  return [group(), group(), group(), group()].join("-")
}
