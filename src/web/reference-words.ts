import { msg, say } from "../engine/say.js"

/** Populations of the references that ship, by the reference's id: the evidence writes them in English. */
const POPULATIONS: Readonly<Record<string, string>> = {
  "al-europe-sexed-approx": msg("European children, split by sex"),
  "tideman2018-derived": msg("European children, sexes mixed"),
  "olsm-al": msg("Californian children, mostly white, not myopic at entry"),
  "olsm-lms": msg("Californian children, mostly white, not myopic at entry"),
  "truckenbrod2020-se": msg("German children (Leipzig)"),
  "olsm-se": msg("Californian children, mostly white, not myopic at entry"),
  "chen2016-se": msg("Guangzhou, China, a city with much high myopia"),
}

/** Whom a reference was measured in; of one that is not listed as the evidence has it. */
export function populationInWords({
  id,
  population,
}: {
  readonly id: string
  readonly population: string
}): string {
  const text = Object.hasOwn(POPULATIONS, id) ? POPULATIONS[id] : undefined
  return text === undefined ? population : say(text)
}
