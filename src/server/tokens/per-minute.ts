const MINUTE_MS = 60_000
/** More names than this at once are forgotten together: an attacker must not fill the memory. */
const MOST_NAMES = 10_000

/**
 * Counts by name and minute. Answers with the seconds to wait once a name has had its share, otherwise with null.
 *
 * @example
 * const tooMany = perMinute({ most: 1, nowMs: () => 0 })
 * tooMany("a") // => null
 * tooMany("a") // => 60
 */
export function perMinute({ most, nowMs }: { readonly most: number; readonly nowMs: () => number }) {
  const counts = new Map<string, { readonly sinceMs: number; count: number }>()
  return (name: string): number | null => {
    const now = nowMs()
    const known = counts.get(name)
    if (!known || now - known.sinceMs >= MINUTE_MS || now < known.sinceMs) {
      if (counts.size >= MOST_NAMES) counts.clear()
      counts.set(name, { sinceMs: now, count: 1 })
      return null
    }
    known.count++
    return known.count > most ? Math.ceil((known.sinceMs + MINUTE_MS - now) / 1000) : null
  }
}
