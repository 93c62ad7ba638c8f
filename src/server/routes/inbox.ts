import type { FastifyInstance } from "fastify"
import { z } from "zod"
import { say } from "../../engine/say.js"
import type { InboxItem } from "../../record/index.js"
import type { Context } from "../context.js"
import { INBOX_PAGE_SIZE, inboxApi } from "../contract/inbox.js"
import { LARGEST_INBOX_FILE_BYTES } from "../contract/inbox-words.js"
import { problemAnswer } from "../contract/problem.js"
import { itemView, rowOf } from "../intake/item-view.js"
import { noSuchObject, setItemAside, takeItem, undoItem } from "../intake/settle.js"
import { takeFile } from "../intake/take-file.js"
import { Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"

/** What instruments and files sent, waiting for a person, and files dropped on the page. */
export async function inboxRoutes(app: FastifyInstance, context: Context): Promise<void> {
  const { record } = context
  // A little too large is refused by us, in words; what is far too large is not even read.
  app.addContentTypeParser(
    "application/octet-stream",
    { parseAs: "buffer", bodyLimit: LARGEST_INBOX_FILE_BYTES + 1_000_000 },
    (_request, bytes, done) => done(null, bytes),
  )

  serveRoute(app, inboxApi.inbox, {
    answer: async ({ query: { state, search, page } }) => {
      const [counts, { total, items }] = await Promise.all([
        record.inbox.counts(),
        record.inbox.list({ state, search, page, pageSize: INBOX_PAGE_SIZE }),
      ])
      const rows = items.map((item) => rowOf(item, item.childName))
      return { counts, total, page, pageSize: INBOX_PAGE_SIZE, items: rows }
    },
  })

  serveRoute(app, inboxApi.inboxCounts, { answer: async () => ({ counts: await record.inbox.counts() }) })

  serveRoute(app, inboxApi.inboxFiles, {
    answer: async ({ query: { file }, bodyAsSent, person }) => {
      if (!Buffer.isBuffer(bodyAsSent)) throw new Refusal(415)
      if (bodyAsSent.length > LARGEST_INBOX_FILE_BYTES) {
        const allowed = say("at most {megabytes} MB", { megabytes: LARGEST_INBOX_FILE_BYTES / 1_000_000 })
        const message = say("The file must be {allowed}.", { allowed })
        throw new Refusal(413, [{ path: "file", value: null, allowed, message }])
      }
      const taken = await takeFile(context, { file, bytes: bodyAsSent, from: { kind: "person", person } })
      return { taken: [...taken] }
    },
  })

  serveRoute(app, inboxApi.inboxItem, {
    answer: async ({ params, query }) =>
      itemView(context, { item: await itemOf(params.itemId), child: query.child }),
  })

  const decided = async (item: Promise<InboxItem>) =>
    itemView(context, { item: await item, child: undefined })

  serveRoute(app, inboxApi.takeInboxItem, {
    answer: ({ params, body: { newChild, ...body }, person }) =>
      decided(
        takeItem(context, {
          ...params,
          ...body,
          person,
          newChild: newChild && {
            ...newChild,
            number: newChild.number ?? undefined,
            ancestry: newChild.ancestry ?? undefined,
            myopicParents: newChild.myopicParents ?? undefined,
          },
        }),
      ),
  })

  serveRoute(app, inboxApi.setAsideInboxItem, {
    answer: ({ params, body, person }) => decided(setItemAside(context, { ...params, ...body, person })),
  })

  serveRoute(app, inboxApi.undoInboxItem, {
    answer: ({ params, body, person }) => decided(undoItem(context, { ...params, ...body, person })),
  })

  app.get<{ Params: { itemId: string } }>(
    inboxApi.inboxItemFile.url,
    { schema: { params: inboxApi.inboxItemFile.params, response: BYTES } },
    async ({ params: { itemId } }, reply) => {
      const item = await itemOf(itemId)
      const file = await record.file(item.sha256)
      if (!file) throw noSuchObject(itemId)
      return reply
        .type("application/octet-stream")
        .header("content-disposition", attachment(item.file))
        .header("content-security-policy", "sandbox; default-src 'none'")
        .send(file.bytes)
    },
  )

  async function itemOf(id: string): Promise<InboxItem> {
    const item = await record.inbox.item(id)
    if (!item) throw noSuchObject(id)
    return item
  }
}

/** The name as it was received, without its folders and whatever could end the header. */
function attachment(file: string): string {
  const name = file.split(/[/\\]/).at(-1) ?? ""
  const plain = name.replace(/[^\w.-]/g, "_") || "received"
  return `attachment; filename="${plain}"; filename*=UTF-8''${encodeURIComponent(name || "received").replace(/['()*]/g, "_")}`
}

const BYTES = {
  200: {
    description: "The file as it was received",
    content: { "application/octet-stream": { schema: z.string().meta({ format: "binary" }) } },
  },
  "4xx": { content: { "application/problem+json": { schema: problemAnswer } } },
}
