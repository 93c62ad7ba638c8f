import type { DocumentTemplate } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { DOCUMENT_KINDS, type DocumentKind } from "../document.js"
import { PARTS_OF, REQUIRED_PARTS, VALUES_OF } from "./document-parts.js"
import { hasLooseBrace, namesIn, readTemplate, type TemplateLine } from "./read-template.js"

/** A fault of a template, with the line a person finds it in; 0 is the template as a whole. */
export interface TemplateProblem {
  readonly line: number
  readonly message: string
}

/** The most a template may hold: a document is a sheet or two. */
export const LONGEST_TEMPLATE = 20_000

/** What is wrong with a template. One with any fault is not taken: half a letter is worse than the one that ships. */
export function templateProblems({ document, text }: DocumentTemplate): readonly TemplateProblem[] {
  if (!DOCUMENT_KINDS.includes(document as DocumentKind)) {
    const known = DOCUMENT_KINDS.join(", ")
    return [
      { line: 0, message: say("there is no document “{document}”; there are {known}", { document, known }) },
    ]
  }
  if (text.length > LONGEST_TEMPLATE) {
    const most = LONGEST_TEMPLATE
    return [
      {
        line: 0,
        message: say("the template has {length} characters; it may have {most}", {
          length: text.length,
          most,
        }),
      },
    ]
  }
  if (text.trim() === "") return []
  const kind = document as DocumentKind
  const lines = readTemplate(text)
  return [...lines.flatMap((line) => problemsOf(line, { kind, lines })), ...leftOut(kind, lines)].toSorted(
    (one, other) => one.line - other.line,
  )
}

function problemsOf(
  line: TemplateLine,
  { kind, lines }: { readonly kind: DocumentKind; readonly lines: readonly TemplateLine[] },
): readonly TemplateProblem[] {
  const at = (message: string): TemplateProblem => ({ line: line.line, message })
  if (line.kind === "blank" || line.kind === "page-break") return []
  if (line.kind === "part") {
    const { name } = line
    const known = PARTS_OF[kind]
    if (!known.includes(name)) {
      return [at(say("there is no part [{name}]; the parts are {known}", { name, known: bracketed(known) }))]
    }
    const first = lines.find((other) => other.kind === "part" && other.name === name)?.line ?? line.line
    return first < line.line ? [at(say("[{name}] stands in line {first} already", { name, first }))] : []
  }
  const { text } = line
  if (hasLooseBrace(text)) return [at(say("a brace stands alone: a name to fill in is written '{name}'"))]
  const known = VALUES_OF[kind]
  return namesIn(text)
    .filter((name) => !known.includes(name))
    .map((name) =>
      at(
        say("nothing is called {name} here; known are {known}", {
          name: braced([name]),
          known: braced(known),
        }),
      ),
    )
}

const leftOut = (kind: DocumentKind, lines: readonly TemplateLine[]): readonly TemplateProblem[] =>
  REQUIRED_PARTS[kind]
    .filter((name) => !lines.some((line) => line.kind === "part" && line.name === name))
    .map((name) => ({
      line: lines.length,
      message: say("[{name}] must stand somewhere: it keeps the child safe, or says who answers for this", {
        name,
      }),
    }))

const bracketed = (names: readonly string[]): string => names.map((name) => `[${name}]`).join(", ")
const braced = (names: readonly string[]): string => names.map((name) => `{${name}}`).join(", ")
