/** A value without its empty fields, or nothing when all are empty. */
export function defined<T extends object>(value: T): T | undefined {
  const held: Partial<T> = {}
  let isEmpty = true
  for (const field in value) {
    if (value[field] === undefined) continue
    held[field] = value[field]
    isEmpty = false
  }
  return isEmpty ? undefined : (held as T)
}
