import type { Block, DocumentContent, DocumentPart } from "../document.js"
import { filledIn, readTemplate, type TemplateLine } from "./read-template.js"

/**
 * The blocks of a document in the order of a template, with the practice's own sentences between them; of its parts as
 * they come where there is none. A part that this child's document does not have leaves no trace.
 */
export function inOrder(
  { parts, values }: Pick<DocumentContent, "parts" | "values">,
  template: { readonly text: string } | undefined,
): readonly Block[] {
  if (template === undefined || template.text.trim() === "") return parts.flatMap(({ blocks }) => blocks)
  return grouped(readTemplate(template.text)).flatMap((lines) => blocksOf(lines, { parts, values }))
}

/** Items that follow each other are one list, cautions one box. */
function grouped(lines: readonly TemplateLine[]): readonly (readonly TemplateLine[])[] {
  const groups: TemplateLine[][] = []
  for (const line of lines) {
    const last = groups.at(-1)
    const joins = (line.kind === "item" || line.kind === "caution") && last?.[0]?.kind === line.kind
    if (joins) last?.push(line)
    else groups.push([line])
  }
  return groups
}

function blocksOf(
  lines: readonly TemplateLine[],
  {
    parts,
    values,
  }: { readonly parts: readonly DocumentPart[]; readonly values: Readonly<Record<string, string>> },
): readonly Block[] {
  const [first] = lines
  const texts = lines.flatMap((line) => ("text" in line ? [filledIn(line.text, values)] : []))
  const [text = ""] = texts
  switch (first?.kind) {
    case "part":
      return parts.filter(({ name }) => name === first.name).flatMap(({ blocks }) => blocks)
    case "heading":
      return [{ kind: "heading", level: first.level, text }]
    case "item":
      return [{ kind: "list", items: texts }]
    case "caution":
      return [{ kind: "caution", lines: texts }]
    case "text":
      return [{ kind: "text", text }]
    case "page-break":
      return [{ kind: "page-break" }]
    default:
      return []
  }
}
