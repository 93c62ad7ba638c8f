import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify"
import type { Context } from "../context.js"
import { everything, resourceById, searched } from "../fhir/answers.js"
import { bulkExports } from "../fhir/bulk-export.js"
import { capabilities } from "../fhir/capabilities.js"
import { FhirFault } from "../fhir/fhir-fault.js"
import { FHIR_JSON, outcome } from "../fhir/outcome.js"
import { searchOf } from "../fhir/search.js"
import { isServed, SERVED_TYPES, type ServedType } from "../fhir/served-types.js"

type Query = Readonly<Record<string, unknown>>

/** The record as FHIR R4, to be read only. */
export async function fhirRoutes(app: FastifyInstance, context: Context): Promise<void> {
  const bulk = bulkExports(context)
  app.addHook("onClose", () => bulk.close())
  const baseOf = (request: FastifyRequest): string =>
    `${context.publicAddress ?? `${request.protocol}://${request.host}`}/fhir`
  // Described by its own metadata, and so not by the description of the API.
  const schema = { hide: true }
  const config = { scope: "fhir" as const }

  /** Answers a question; what is turned down becomes an OperationOutcome. */
  const answered =
    (answer: (request: FastifyRequest, reply: FastifyReply) => Promise<unknown>) =>
    async (request: FastifyRequest, reply: FastifyReply) => {
      try {
        refuseOtherForms(request)
        const value = await answer(request, reply)
        if (reply.sent || value === reply) return reply
        return await reply.type(FHIR_JSON).send(JSON.stringify(value))
      } catch (cause) {
        if (!(cause instanceof FhirFault)) throw cause
        return reply
          .code(cause.status)
          .type(FHIR_JSON)
          .send(JSON.stringify(outcome(cause.code, [cause.message])))
      }
    }

  app.get(
    "/fhir/metadata",
    { config: { open: true, scope: "none" as const }, schema },
    answered(async (request) => capabilities(baseOf(request))),
  )

  app.get(
    "/fhir/$export",
    { config, schema },
    answered(async (request, reply) => {
      const types = typesAsked(request.query as Query)
      const id = await bulk.begin({
        request: `${baseOf(request)}${request.url.slice("/fhir".length)}`,
        types,
      })
      return reply
        .code(202)
        .header("content-location", `${baseOf(request)}/exports/${id}`)
        .send()
    }),
  )
  app.get<{ Params: { id: string } }>(
    "/fhir/exports/:id",
    { config, schema },
    answered(async (request, reply) => {
      const { id } = request.params as { readonly id: string }
      const state = bulk.state(id, (type) => `${baseOf(request)}/exports/${id}/${type}.ndjson`)
      if (state.kind === "running")
        return reply.code(202).header("x-progress", state.progress).header("retry-after", "1").send()
      return reply.type("application/json; charset=utf-8").send(JSON.stringify(state.manifest))
    }),
  )
  app.delete(
    "/fhir/exports/:id",
    { config, schema },
    answered(async (request, reply) => {
      await bulk.cancel((request.params as { readonly id: string }).id)
      return reply.code(202).send()
    }),
  )
  app.get(
    "/fhir/exports/:id/:file",
    { config, schema },
    answered(async (request, reply) => {
      const { id, file } = request.params as { readonly id: string; readonly file: string }
      return reply.type("application/fhir+ndjson").send(bulk.file(id, file.replace(/\.ndjson$/, "")))
    }),
  )

  app.get(
    "/fhir/Patient/:id/$everything",
    { config, schema },
    answered(async (request) => {
      const { id } = request.params as { readonly id: string }
      const { _count, _page, ...rest } = request.query as Query
      const search = searchOf("Patient", { _count, _page, ...rest })
      return everything(context, { id, search, address: addressOf(request, baseOf(request)) })
    }),
  )
  app.get(
    "/fhir/:type",
    { config, schema },
    answered(async (request) => {
      const type = typeOf(request)
      const search = searchOf(type, request.query as Query)
      return searched(context, { type, search, address: addressOf(request, baseOf(request)) })
    }),
  )
  app.get(
    "/fhir/:type/:id",
    { config, schema },
    answered(async (request) => {
      const { id } = request.params as { readonly id: string }
      return resourceById(context, { type: typeOf(request), id })
    }),
  )
}

function typeOf(request: FastifyRequest): ServedType {
  const { type } = request.params as { readonly type: string }
  if (isServed(type)) return type
  throw new FhirFault(
    404,
    "not-supported",
    `there is no ${type.slice(0, 40)} here; there are ${SERVED_TYPES.join(", ")}`,
  )
}

/** All types, or those of `_type`; the time of the last export is refused, since what was withdrawn would be missed. */
function typesAsked(query: Query): readonly ServedType[] {
  for (const [name, value] of Object.entries(query)) {
    if (
      name === "_outputFormat" &&
      /^(application\/fhir\+ndjson|application\/ndjson|ndjson)$/.test(String(value))
    )
      continue
    if (name !== "_type")
      throw new FhirFault(
        400,
        "not-supported",
        `an export takes _type and _outputFormat=ndjson, not ${name.slice(0, 40)}`,
      )
  }
  if (query._type === undefined) return SERVED_TYPES
  const types = String(query._type).split(",")
  const unknown = types.find((type) => !isServed(type))
  if (unknown !== undefined)
    throw new FhirFault(
      400,
      "not-supported",
      `there is no ${unknown.slice(0, 40)} here; there are ${SERVED_TYPES.join(", ")}`,
    )
  return types.filter(isServed)
}

function addressOf(request: FastifyRequest, base: string) {
  const [path = ""] = request.url.split("?")
  const { _page: _, ...query } = request.query as Readonly<Record<string, string>>
  return { base, self: `${base}${path.slice("/fhir".length)}`, query }
}

/** XML is not written here; a client that takes nothing else is told so. */
function refuseOtherForms({ headers, query }: FastifyRequest): void {
  const format = (query as Query)._format
  const accepted = typeof format === "string" ? format : (headers.accept ?? "*/*")
  if (/json|\*\/\*|application\/\*/.test(accepted)) return
  throw new FhirFault(406, "not-supported", "answers are JSON (application/fhir+json)")
}
