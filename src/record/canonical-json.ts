/**
 * JSON with one spelling: keys sorted, members that are undefined left out, no spaces. The same value always gives
 * the same text, so the text can be hashed and compared.
 *
 * @example
 * canonicalJson({ b: 1, a: [undefined, 2], c: undefined }) // => '{"a":[null,2],"b":1}'
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === "string" || typeof value === "boolean") return JSON.stringify(value)
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new TypeError(`not a number that JSON can hold: ${value}`)
    return JSON.stringify(value)
  }
  if (Array.isArray(value))
    return `[${value.map((item) => canonicalJson(item === undefined ? null : item)).join(",")}]`
  if (typeof value === "object") {
    // Sorted by code units, and joined without lists of pairs: whoever imports a table waits for this.
    let members = ""
    for (const key of Object.keys(value).sort()) {
      const member: unknown = value[key as keyof typeof value]
      if (member === undefined) continue
      members += `${members === "" ? "" : ","}${JSON.stringify(key)}:${canonicalJson(member)}`
    }
    return `{${members}}`
  }
  throw new TypeError(`not a value that JSON can hold: ${typeof value}`)
}
