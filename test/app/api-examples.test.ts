import { createRequire } from "node:module"
import { afterAll, beforeAll, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import { type RouteScope, ruledScope } from "../../src/server/contract/scopes.js"
import { SUMMARIES } from "../../src/server/contract/summaries.js"
import { exampleOf } from "../../src/server/open-api/with-examples.js"
import { type MadeExamples, makeExamples } from "./api-examples.js"
import { type TestApp, testApp } from "./test-app.js"

const RENEW = "npx tsx scripts/api-examples.ts"

interface Media {
  readonly schema: object
  readonly examples?: Readonly<Record<string, { readonly value?: unknown; readonly $ref?: string }>>
}
interface Operation {
  readonly operationId: string
  readonly summary: string
  readonly security: readonly object[]
  readonly parameters?: readonly {
    readonly name: string
    readonly schema: object
    readonly example?: unknown
  }[]
  readonly requestBody?: { readonly content: Readonly<Record<string, Media>> }
  readonly responses: Readonly<
    Record<string, { readonly description: string; readonly content?: Readonly<Record<string, Media>> }>
  >
}
interface Document {
  readonly openapi: string
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>
  readonly components: {
    readonly schemas: Readonly<Record<string, object>>
    readonly examples: Readonly<Record<string, { readonly value: unknown }>>
    readonly securitySchemes: Readonly<Record<string, object>>
  }
}

let t: TestApp
let made: MadeExamples
let document: Document
beforeAll(async () => {
  t = await testApp()
  document = (await t.app.inject("/api/openapi.json")).json()
  made = await makeExamples()
}, 120_000)
afterAll(() => t.close())

const operations = () => Object.values(document.paths).flatMap((methods) => Object.values(methods))

// Ajv is what Fastify itself brings; it speaks the dialect of OpenAPI 3.1.
interface Ajv {
  readonly addKeyword: (keyword: string) => void
  readonly addFormat: (name: string, format: true) => void
  readonly addSchema: (schema: object, key: string) => void
  readonly validateSchema: (schema: object) => boolean
  readonly validate: (schema: object, value: unknown) => boolean
  readonly errorsText: () => string
}
function validator(): Ajv {
  const fromFastify = createRequire(createRequire(import.meta.url).resolve("@fastify/ajv-compiler"))
  const { default: Ajv2020 } = fromFastify("ajv/dist/2020") as {
    default: new (options: object) => Ajv
  }
  const ajv = new Ajv2020({ strict: false, allErrors: true, validateFormats: true })
  ;(fromFastify("ajv-formats") as { default: (ajv: Ajv) => void }).default(ajv)
  ajv.addFormat("binary", true)
  ajv.addSchema({ ...document, $id: "api" }, "api")
  return ajv
}
/** References of the document's own schemas, seen from outside of it. */
const absolute = (schema: object): object =>
  JSON.parse(JSON.stringify(schema).replaceAll('"#/components/', '"api#/components/'))

describe("every line of the contract", () => {
  it(`has an example; otherwise write its call in test/app/example-calls.ts and run ${RENEW}`, () => {
    expect(made.missing).toEqual([])
  })

  it(`has the example that the application gives today; otherwise run ${RENEW}`, () => {
    const kept = Object.fromEntries([...made.examples.keys()].map((name) => [name, exampleOf(name)]))
    expect(kept).toEqual(JSON.parse(JSON.stringify(Object.fromEntries(made.examples))))
  })

  it("has a summary in src/server/contract/summaries.ts", () => {
    expect(Object.keys(api).filter((name) => !Object.hasOwn(SUMMARIES, name))).toEqual([])
  })

  it("asks something of a token by the rule of its area in src/server/contract/scopes.ts", () => {
    const lines = Object.entries<{ method: string; url: string; scope?: RouteScope }>(api)
    expect(lines.filter(([, line]) => ruledScope(line) === null).map(([name]) => name)).toEqual([])
  })
})

describe("no token opens", () => {
  it.each([
    "session",
    "logOut",
    "changePassword",
    "tokens",
    "addToken",
    "revokeToken",
    "webhooks",
    "addWebhook",
    "removeWebhook",
    "deliverAgain",
    "recordPaper",
    "messages",
    "handOverMessages",
    "familyLinks",
    "addFamilyLink",
    "tryTemplate",
  ] as const)("%s", (name) => expect(ruledScope(api[name])).toBe("session"))
})

it("no example holds a secret", () => {
  const text = JSON.stringify(Object.fromEntries(made.examples))
  expect(text).not.toMatch(/lw_[\w-]{43}|correct horse|lighthouse/)
})

describe("the document", () => {
  it("is made as OpenAPI 3.1 is: schemes named, parameters of the path declared, ids unlike", () => {
    expect(document.openapi).toBe("3.1.0")
    const ids = operations().map(({ operationId }) => operationId)
    expect(new Set(ids).size).toBe(Object.keys(api).length)
    const schemes = Object.keys(document.components.securitySchemes)
    for (const [path, methods] of Object.entries(document.paths))
      for (const operation of Object.values(methods)) {
        expect(operation.summary).not.toBe("")
        for (const wanted of operation.security)
          expect(schemes).toEqual(expect.arrayContaining(Object.keys(wanted)))
        const declared = (operation.parameters ?? []).map(({ name }) => name)
        for (const [, name] of path.matchAll(/\{(\w+)\}/g)) expect(declared).toContain(name)
        expect(Object.keys(operation.responses).every((status) => /^[1-5](\d\d|XX)$/.test(status))).toBe(true)
        for (const { description } of Object.values(operation.responses))
          expect(description).toBeTypeOf("string")
      }
  })

  it("has schemas that are JSON Schema 2020-12", () => {
    const ajv = validator()
    const wrong = [
      ...Object.values(document.components.schemas),
      ...operations().flatMap(({ parameters = [] }) => parameters.map(({ schema }) => schema)),
      ...operations().flatMap((operation) => mediaOf(operation).map(({ schema }) => schema)),
    ].filter((schema) => !ajv.validateSchema(schema))
    expect(wrong).toEqual([])
  })

  it("has examples that fit their schemas", () => {
    const ajv = validator()
    const misfits: string[] = []
    let checked = 0
    for (const operation of operations())
      for (const { schema, examples = {} } of mediaOf(operation))
        for (const { value, $ref } of Object.values(examples)) {
          const shown = $ref ? document.components.examples[$ref.split("/").at(-1) ?? ""]?.value : value
          checked++
          if (!ajv.validate(absolute(schema), shown))
            misfits.push(`${operation.operationId}: ${ajv.errorsText()}`)
        }
    expect(misfits).toEqual([])
    expect(checked).toBeGreaterThan(100)
  })
})

function mediaOf({ requestBody, responses }: Operation): readonly Media[] {
  const contents = [requestBody?.content, ...Object.values(responses).map(({ content }) => content)]
  return contents.flatMap((content) => Object.values(content ?? {})).filter(({ schema }) => schema)
}
