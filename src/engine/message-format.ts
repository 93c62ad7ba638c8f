/**
 * Messages in the form that ICU gave the trade: `{name}`, `{n, plural, =0 {…} one {…} other {…}}` with `#` for the
 * number, `{word, select, a {…} other {…}}`. A brace stands for itself as '{', an apostrophe as itself. Only these; the
 * tests hold every answer to a full implementation.
 */
export type MessagePart =
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "value"; readonly name: string }
  | { readonly kind: "number" }
  | {
      readonly kind: "plural" | "select"
      readonly name: string
      readonly cases: Readonly<Record<string, readonly MessagePart[]>>
    }

/**
 * A message taken apart.
 *
 * @throws SyntaxError when it is no message, with the place of the fault.
 * @example
 * parseMessage("{n, plural, one {# drop} other {# drops}}")
 */
export function parseMessage(message: string): readonly MessagePart[] {
  let at = 0
  const fail = (expected: string): never => {
    throw new SyntaxError(`expected ${expected} at character ${at + 1} of the message "${message}"`)
  }
  const blanks = () => {
    while (/\s/.test(message[at] ?? "")) at++
  }
  const word = (): string => {
    const found = /^(=\d+|[\w-]+)/.exec(message.slice(at))?.[0] ?? fail("a name")
    at += found.length
    return found
  }
  const take = (character: string) => {
    blanks()
    if (message[at] !== character) fail(`"${character}"`)
    at++
    blanks()
  }

  const parts = (inPlural: boolean, isInner: boolean): readonly MessagePart[] => {
    const found: MessagePart[] = []
    let text = ""
    const endText = () => {
      if (text !== "") found.push({ kind: "text", text })
      text = ""
    }
    while (at < message.length) {
      const character = message[at] as string
      if (character === "}") {
        if (isInner) break
        fail("no closing brace here")
      } else if (character === "'") {
        text += apostrophe(inPlural)
      } else if (character === "{") {
        endText()
        found.push(argument())
      } else if (character === "#" && inPlural) {
        endText()
        found.push({ kind: "number" })
        at++
      } else {
        text += character
        at++
      }
    }
    endText()
    return found
  }

  /** An apostrophe, two of them, or text quoted by them. */
  const apostrophe = (inPlural: boolean): string => {
    const next = message[at + 1] ?? ""
    if (next === "'") {
      at += 2
      return "'"
    }
    if (!(next === "{" || next === "}" || (next === "#" && inPlural))) {
      at++
      return "'"
    }
    let quoted = ""
    for (at++; at < message.length; at++) {
      if (message[at] !== "'") quoted += message[at]
      else if (message[at + 1] === "'") {
        quoted += "'"
        at++
      } else {
        at++
        break
      }
    }
    return quoted
  }

  const argument = (): MessagePart => {
    take("{")
    const name = word()
    blanks()
    if (message[at] === "}") {
      at++
      return { kind: "value", name }
    }
    take(",")
    const kind = word()
    if (kind !== "plural" && kind !== "select") return fail('"plural" or "select"')
    take(",")
    const cases: Record<string, readonly MessagePart[]> = {}
    while (message[at] !== "}") {
      const selector = word()
      take("{")
      // White space inside a case is its own, so the brace is not taken with the blanks after it.
      while (message[at - 1] !== "{") at--
      cases[selector] = parts(kind === "plural", true)
      if (message[at] !== "}") fail('"}"')
      at++
      blanks()
    }
    at++
    if (!("other" in cases)) fail('a case "other"')
    return { kind, name, cases }
  }

  return parts(false, false)
}

/** Names of the values that a message takes, in any order. */
export function valueNames(parts: readonly MessagePart[]): ReadonlySet<string> {
  const names = new Set<string>()
  const visit = (part: MessagePart) => {
    if (part.kind === "value" || part.kind === "plural" || part.kind === "select") names.add(part.name)
    if (part.kind === "plural" || part.kind === "select") Object.values(part.cases).flat().forEach(visit)
  }
  parts.forEach(visit)
  return names
}

export interface FilledMessage<Value> {
  readonly values: Readonly<Record<string, Value | string | number>>
  readonly language: string
  /** A number as the language writes it. */
  readonly digits: (value: number) => string
}

/**
 * A message filled in, piece by piece, so that a page can put a link in the middle of a sentence.
 *
 * @throws RangeError when a value is missing, or a plural is given no number.
 */
export function filledParts<Value>(
  parts: readonly MessagePart[],
  { values, language, digits }: FilledMessage<Value>,
  counted?: number,
): readonly (Value | string)[] {
  const given = (name: string): Value | string | number => {
    const value = values[name]
    if (value === undefined) throw new RangeError(`the message lacks a value for "${name}"`)
    return value
  }
  return parts.flatMap((part): readonly (Value | string)[] => {
    switch (part.kind) {
      case "text":
        return [part.text]
      case "number":
        return [digits(counted ?? Number.NaN)]
      case "value": {
        const value = given(part.name)
        return [typeof value === "number" ? digits(value) : value]
      }
      case "select":
        return filledParts(
          caseOf(part.cases, String(given(part.name))),
          { values, language, digits },
          counted,
        )
      case "plural": {
        const count = given(part.name)
        if (typeof count !== "number")
          throw new RangeError(`"${part.name}" must be a number: ${String(count)}`)
        const chosen =
          part.cases[`=${count}`] ?? caseOf(part.cases, new Intl.PluralRules(language).select(count))
        return filledParts(chosen, { values, language, digits }, count)
      }
      default:
        return part satisfies never
    }
  })
}

const caseOf = (
  cases: Readonly<Record<string, readonly MessagePart[]>>,
  name: string,
): readonly MessagePart[] => (Object.hasOwn(cases, name) ? cases[name] : cases.other) ?? []
