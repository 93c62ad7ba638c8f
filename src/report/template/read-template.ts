/** One line of a template, as a person wrote it. */
export type TemplateLine =
  | { readonly kind: "part"; readonly name: string; readonly line: number }
  | { readonly kind: "heading"; readonly level: 1 | 2; readonly text: string; readonly line: number }
  | { readonly kind: "text" | "item" | "caution"; readonly text: string; readonly line: number }
  | { readonly kind: "page-break"; readonly line: number }
  | { readonly kind: "blank"; readonly line: number }

/**
 * A template's lines: `[part]` puts a part of the document there, `# ` and `## ` begin headings, `- ` an item of a list,
 * `! ` a caution, `---` a new page; anything else is a paragraph. `{name}` in a text is filled in.
 *
 * @example
 * readTemplate("# Dear family\n[lead]")[1] // => { kind: "part", name: "lead", line: 2 }
 */
export function readTemplate(text: string): readonly TemplateLine[] {
  return text.split(/\r?\n/).map((written, index) => lineOf(written.trim(), index + 1))
}

function lineOf(written: string, line: number): TemplateLine {
  const part = /^\[([^\]]*)\]$/.exec(written)
  if (part) return { kind: "part", name: (part[1] ?? "").trim(), line }
  if (written === "") return { kind: "blank", line }
  if (/^-{3,}$/.test(written)) return { kind: "page-break", line }
  const marked = /^(##?|-|!)\s+(.+)$/.exec(written)
  const text = marked?.[2] ?? written
  switch (marked?.[1]) {
    case "#":
      return { kind: "heading", level: 1, text, line }
    case "##":
      return { kind: "heading", level: 2, text, line }
    case "-":
      return { kind: "item", text, line }
    case "!":
      return { kind: "caution", text, line }
    default:
      return { kind: "text", text, line }
  }
}

const BRACES = /\{([^{}]*)\}/g

/** Names in braces. */
export const namesIn = (text: string): readonly string[] =>
  [...text.matchAll(BRACES)].map(([, name = ""]) => name.trim())

/** Whether a brace stands alone. */
export const hasLooseBrace = (text: string): boolean => /[{}]/.test(text.replace(BRACES, ""))

/** A text with its names filled in; a name nothing is known for in this document stays out. */
export const filledIn = (text: string, values: Readonly<Record<string, string>>): string =>
  text.replace(BRACES, (_, name: string) => values[name.trim()] ?? "")
