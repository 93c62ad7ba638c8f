/** A value without its empty fields, or nothing when all are empty. */
export function defined<T extends object>(value: T): T | undefined {
  const held = Object.entries(value).filter(([, item]) => item !== undefined)
  return held.length === 0 ? undefined : (Object.fromEntries(held) as T)
}
