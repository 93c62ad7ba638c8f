import type { FastifyInstance } from "fastify"
import { say } from "../../engine/say.js"
import type { Entry, EntryKind } from "../../record/index.js"
import { changeTreatment } from "../change-treatment.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { listOf, recordItems, type SentItem, sentItem } from "../record-items.js"
import { noSuch } from "../refusal.js"
import { serveRoute } from "../route.js"
import { authored, save } from "../save.js"
import { amendedBeside } from "../signed-consent.js"

/** What a visit made of earlier glasses says of where its figures come from, unless told otherwise. */
const OLD_GLASSES = "old glasses"

/** Faults are looked for by `recordItems`, in the whole course at once. */
const ownBodyCheck = true

export function entriesRoutes(app: FastifyInstance, context: Context): void {
  const added = [
    { described: api.addVisit, list: "visits" },
    { described: api.startTreatment, list: "treatments" },
    { described: api.addSupply, list: "supplies" },
    { described: api.addMissedNights, list: "missedNights" },
    { described: api.addDecision, list: "decisions" },
    { described: api.addConcern, list: "concerns" },
    { described: api.addOrder, list: "orders" },
    { described: api.addExplanation, list: "explanations" },
    { described: api.addPayment, list: "payments" },
  ] as const
  for (const { described, list } of added)
    serveRoute(app, described, {
      ownBodyCheck,
      answer: ({ params, bodyAsSent, person, request }) =>
        recordItems(context, { list, child: params.id, items: [sentItem(bodyAsSent)], person, request }),
    })

  serveRoute(app, api.addGlasses, {
    ownBodyCheck,
    answer: ({ params, bodyAsSent, person, request }) => {
      const items = Array.isArray(bodyAsSent) ? bodyAsSent.map(visitOfGlasses) : []
      return recordItems(context, { list: "visits", child: params.id, items, person, request })
    },
  })

  serveRoute(app, api.correctVisit, {
    ownBodyCheck,
    answer: async ({ params, body, bodyAsSent, person, request }) => {
      await entryOf(context, params, "visit")
      const { id } = sentItem(bodyAsSent)
      const fields = (bodyAsSent as { readonly visit?: unknown } | null)?.visit
      const item = { fields, place: "visit", id, supersedes: params.entryId, reason: body?.reason }
      return recordItems(context, { list: "visits", child: params.id, items: [item], person, request })
    },
  })

  serveRoute(app, api.endTreatment, {
    answer: async ({ params, body, person, request }) => {
      const treatment = await entryOf(context, params, "treatment")
      const fields = { ...treatment.body, to: body.to }
      const reason = body.reason ?? say("ended on {day}", { day: body.to })
      const item = { fields, place: "", supersedes: params.entryId, reason }
      return recordItems(context, { list: "treatments", child: params.id, items: [item], person, request })
    },
  })

  serveRoute(app, api.changeTreatment, {
    ownBodyCheck,
    answer: ({ params, bodyAsSent, person, request }) =>
      changeTreatment(context, {
        child: params.id,
        entryId: params.entryId,
        sent: bodyAsSent,
        person,
        request,
      }),
  })

  serveRoute(app, api.amendEntry, {
    answer: async ({ params, body, person, request }) => {
      const { record } = context
      const entry = (await record.entriesOf(params.id)).find(({ id }) => id === params.entryId)
      const list = entry && listOf(entry.kind)
      if (!list) throw noSuch("entry that can be put right", params.entryId)
      const { fields, reason, id } = body
      const place = "fields"
      const { signature: _, ...unsigned } = fields
      const isConsent = entry.kind === "consent"
      const beside = isConsent
        ? await amendedBeside(record, { signed: entry.body, fields, place })
        : undefined
      const item = {
        fields: isConsent ? unsigned : fields,
        place,
        supersedes: params.entryId,
        reason,
        ...(id ? { id } : {}),
        ...(beside && { beside }),
      }
      return recordItems(context, { list, child: params.id, items: [item], person, request })
    },
  })

  serveRoute(app, api.withdrawEntry, {
    answer: ({ params, body, person }) =>
      context.oneAtATime(async () => {
        const { id: child, entryId: supersedes } = params
        // A child goes only as a part of what made it: an import that is taken back.
        const known = await context.record.entriesOf(child)
        if (known.some(({ id, kind }) => id === supersedes && kind === "child"))
          throw noSuch("entry that can be put right", supersedes)
        const drafted = { kind: "withdrawal", child, body: {}, supersedes, reason: body.reason } as const
        return save(context, child, [authored(context, person, drafted)])
      }),
  })
}

async function entryOf<K extends EntryKind>(
  { record }: Context,
  { id, entryId }: { readonly id: string; readonly entryId: string },
  kind: K,
): Promise<Extract<Entry, { kind: K }>> {
  const entry = (await record.entriesOf(id)).find((candidate) => candidate.id === entryId)
  if (entry?.kind !== kind) throw noSuch(kind, entryId)
  return entry as Extract<Entry, { kind: K }>
}

/** A prescription as a visit with nothing but its refractions; what was sent stays as it was sent. */
function visitOfGlasses(sent: unknown, index: number): SentItem {
  const item = sentItem(sent)
  const place = `[${index}]`
  if (typeof item.fields !== "object" || item.fields === null) return { ...item, place }
  const { right, left, ...rest } = item.fields as Readonly<Record<string, unknown>>
  const eyes = {
    ...(right ? { right: { refraction: right } } : {}),
    ...(left ? { left: { refraction: left } } : {}),
  }
  return { ...item, place, fields: { from: OLD_GLASSES, ...rest, ...eyes } }
}
