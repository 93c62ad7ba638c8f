/**
 * How many drops one millilitre gives, over the bottles that were measured (evidence: treatments/compounding.json, drops).
 * 19 bottles gave drops of 33.8 to 63.4 microlitres (german1999), another study 20.9 to 40.8 drops a millilitre (moore2017); both
 * read in the abstract, both of other eye drops, none of compounded atropine. The ends of both together are taken. A fixed
 * 20 drops a millilitre is never used: it would put refills on the wrong dates.
 */
export const dropVolume = {
  largestDropMicrolitres: 63.4,
  mostDropsPerMl: 40.8,
  sources: ["treatments/german1999", "treatments/moore2017"],
} as const

export const dropsPerMl = {
  low: 1000 / dropVolume.largestDropMicrolitres,
  high: dropVolume.mostDropsPerMl,
} as const

/**
 * Nights that the drops of a volume last, unrounded, with nothing spilled.
 *
 * @example
 * nightsOfDrops({ volumeMl: 5, dropsANight: 2 }) // => { low: 39.4, high: 102 }
 */
export function nightsOfDrops({ volumeMl, dropsANight }: { volumeMl: number; dropsANight: number }): {
  readonly low: number
  readonly high: number
} {
  return {
    low: (volumeMl * dropsPerMl.low) / dropsANight,
    high: (volumeMl * dropsPerMl.high) / dropsANight,
  }
}
