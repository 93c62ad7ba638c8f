const MINUTE_MS = 60_000
/** Names that are counted at once; more than a practice can allow. */
const MOST_NAMES = 200

/** Counts by name in minutes that begin with the first count; false once the minute is full. */
export function perMinute({ most, nowMs }: { readonly most: number; readonly nowMs: () => number }) {
  const minutes = new Map<string, { readonly startMs: number; count: number }>()
  return (name: string): boolean => {
    const now = nowMs()
    const minute = minutes.get(name)
    if (minute && now - minute.startMs < MINUTE_MS) {
      minute.count += 1
      return minute.count <= most
    }
    minutes.delete(name)
    minutes.set(name, { startMs: now, count: 1 })
    const [oldest] = minutes.keys()
    if (minutes.size > MOST_NAMES && oldest !== undefined) minutes.delete(oldest)
    return most >= 1
  }
}
