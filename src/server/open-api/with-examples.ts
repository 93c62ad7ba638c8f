import { API_EXAMPLES } from "./api-examples.js"
import { REFUSED_NOTE } from "./described.js"

/** One call of one line of the contract, as it was answered. */
export interface ApiExample {
  readonly query?: Readonly<Record<string, string>>
  readonly params?: Readonly<Record<string, string>>
  readonly body?: unknown
  readonly status: number
  /** Media type of the answer; absent where there is none. */
  readonly type?: string
  /** Absent where it is no text, or where the example of another line shows the same. */
  readonly answer?: unknown
}

type Loose = Record<string, unknown>
interface Media {
  schema?: { readonly $ref?: string }
  examples?: Record<string, unknown>
}
interface Operation {
  operationId?: string
  parameters?: { name: string; in: string; example?: unknown }[]
  requestBody?: { content: Record<string, Media> }
  responses: Record<string, { description?: string; content?: Record<string, Media> }>
}

/** The document with an example of every request and answer. Of answers that share a schema one example stands for all. */
export function withExamples<Document>(document: Document): Document {
  const { paths = {}, components: known = {} } = document as {
    paths?: Record<string, Record<string, Operation>>
    components?: Loose
  }
  const shared: Loose = {}
  for (const methods of Object.values(paths))
    for (const operation of Object.values(methods)) addTo(operation, shared)
  const components = { ...known, examples: shared }
  return { ...document, components }
}

function addTo(operation: Operation, shared: Loose): void {
  const refused = operation.responses["4XX"]
  if (refused) {
    refused.description = REFUSED_NOTE
    const media = refused.content?.["application/problem+json"]
    if (media) give(media, shared, exampleOf("refused")?.answer)
  }
  const example = exampleOf(operation.operationId ?? "")
  if (!example) return
  for (const parameter of operation.parameters ?? []) {
    const value = (parameter.in === "path" ? example.params : example.query)?.[parameter.name]
    if (value !== undefined) parameter.example = value
  }
  const sent = Object.values(operation.requestBody?.content ?? {})[0]
  if (sent && example.body !== undefined) sent.examples = { example: { value: example.body } }
  const content = operation.responses[String(example.status)]?.content ?? {}
  const answered = (example.type && content[example.type]) || Object.values(content)[0]
  if (answered) give(answered, shared, example.answer)
}

function give(media: Media, shared: Loose, value: unknown): void {
  const name = media.schema?.$ref?.split("/").at(-1)
  if (name === undefined) {
    if (value !== undefined) media.examples = { example: { value } }
    return
  }
  if (value !== undefined) shared[name] ??= { value }
  media.examples = { example: { $ref: `#/components/examples/${name}` } }
}

export function exampleOf(name: string): ApiExample | null {
  const text = Object.hasOwn(API_EXAMPLES, name) ? API_EXAMPLES[name] : undefined
  return text === undefined ? null : (JSON.parse(text) as ApiExample)
}
