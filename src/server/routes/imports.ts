import type { Readable } from "node:stream"
import type { FastifyInstance } from "fastify"
import type { TableMapping } from "../../engine/practice-rules.js"
import { say } from "../../engine/say.js"
import { csvText } from "../../interop/table/csv-text.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { IMPORTS_PAGE, LARGEST_TABLE_BYTES, type MappingBody } from "../contract/imports.js"
import { problemAnswer } from "../contract/problem.js"
import { ImportDesk, type Work } from "../imports/import-desk.js"
import { TooLarge } from "../imports/scratch.js"
import { faultOf } from "../imports/table-import.js"
import { takeBackTotals } from "../imports/take-back.js"
import { atWorkAnswer, questionsInWords } from "../imports/work-answer.js"
import { Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"

/** Tables of other programs, read into the record as one step that can be taken back. */
export async function importsRoutes(app: FastifyInstance, context: Context): Promise<void> {
  const { record, rules, clock, oneAtATime } = context
  const place = { record, today: clock.today, nowMs: clock.nowMs, oneAtATime }
  const desk = new ImportDesk(place, (cause) => app.log.error({ err: cause }, "an import failed"))
  let recovering: Promise<void> = Promise.resolve()
  app.addHook("onReady", async () => {
    recovering = desk
      .recover()
      .catch((cause) => app.log.error({ err: cause }, "an import was not taken back"))
  })
  app.addHook("onClose", async () => {
    await recovering
    await desk.clear()
  })
  // The body is passed on as it arrives: a table is larger than what memory is for.
  app.addContentTypeParser("application/octet-stream", (_request, body, done) => done(null, body))

  const workOf = (id: string): Work => {
    const work = desk.current
    if (work?.id !== id) throw notHere(id)
    work.touchedAt = clock.nowMs()
    return work
  }
  const free = async (person: Parameters<ImportDesk["taken"]>[0]) => {
    await recovering
    const taken = desk.taken(person)
    if (taken !== null) throw conflict(taken)
  }

  serveRoute(app, api.imports, {
    answer: async ({ query: { search, page } }) => {
      const { total, imports } = await record.imports.list({ search, page, pageSize: IMPORTS_PAGE })
      const names = new Map((await record.people()).map(({ id, name }) => [id, name]))
      const rows = imports.map(({ sha256: _, mapping: __, author, ...row }) => ({
        ...row,
        leftChildren: [...row.leftChildren],
        by: names.get(author) ?? author,
      }))
      const atWork = desk.current ? atWorkAnswer(desk, desk.current) : null
      return { total, page, pageSize: IMPORTS_PAGE, imports: rows, atWork }
    },
  })

  serveRoute(app, api.newImport, {
    answer: async ({ query: { name }, bodyAsSent, person }) => {
      if (!isStream(bodyAsSent)) throw new Refusal(415)
      await free(person)
      const saved = (await rules.now()).mappings ?? []
      try {
        const arriving = { name, by: person, most: LARGEST_TABLE_BYTES, saved }
        return atWorkAnswer(desk, await desk.receive(bodyAsSent, arriving))
      } catch (cause) {
        if (cause instanceof TooLarge) throw tooLarge(name)
        const fault = faultOf(cause)
        if (fault !== null) throw new Refusal(422, [problem("file", name, fault)])
        throw cause
      }
    },
  })

  serveRoute(app, api.importAtWork, { answer: async ({ params }) => atWorkAnswer(desk, workOf(params.id)) })

  serveRoute(app, api.importQuestions, {
    answer: async ({ params, body: { mapping, settled } }) => {
      const work = idle(workOf(params.id))
      return {
        questions: questionsInWords(desk.questionsOf({ ...work, mapping: mappingOf(mapping), settled })),
      }
    },
  })

  serveRoute(app, api.checkImport, {
    answer: async ({ params, body: { mapping, settled } }) => {
      const work = idle(workOf(params.id))
      work.mapping = mappingOf(mapping)
      work.settled = settled
      const open = desk.questionsOf(work)
      if (open.length > 0)
        throw new Refusal(
          422,
          open.map(({ kind, why }) => problem(`mapping.${kind}`, null, why)),
        )
      desk.check(work)
      return atWorkAnswer(desk, work)
    },
  })

  serveRoute(app, api.settleImport, {
    answer: async ({ params, body }) => {
      const work = checked(workOf(params.id))
      for (const { group, as } of body.decisions) {
        const settled = await oneAtATime(async () => work.table?.settle(group, as))
        if (settled !== "settled") throw notHere(String(group))
      }
      return atWorkAnswer(desk, work)
    },
  })

  serveRoute(app, api.runImport, {
    answer: async ({ params, person }) => {
      const work = checked(workOf(params.id))
      const fault = work.table?.outcome()?.fault
      if (fault) throw new Refusal(422, [problem("file", work.file, fault)])
      desk.run(work, person.id)
      return atWorkAnswer(desk, work)
    },
  })

  serveRoute(app, api.cancelImport, {
    answer: async ({ params }) => {
      const work = workOf(params.id)
      desk.stop(work)
      return atWorkAnswer(desk, work)
    },
  })

  serveRoute(app, api.discardImport, {
    answer: async ({ params }) => {
      const work = workOf(params.id)
      if (!isIdle(work)) idle(work)
      await desk.clear()
      return undefined
    },
  })

  serveRoute(app, api.importUndoing, {
    answer: async ({ params: { id } }) => {
      const found = await record.imports.one(id)
      if (found?.state !== "done") throw notHere(id)
      const totals = await takeBackTotals(record, id)
      return { ...totals, left: [...totals.left] }
    },
  })

  serveRoute(app, api.undoImport, {
    answer: async ({ params: { id }, person }) => {
      const found = await record.imports.one(id)
      if (!found) throw notHere(id)
      if (found.state !== "done")
        throw conflict(say("this import was taken back already; that can be done once"))
      await free(person)
      return atWorkAnswer(desk, await desk.undo(found, person))
    },
  })

  app.get<{ Params: { id: string } }>(
    api.importProblems.url,
    { schema: { params: api.importProblems.params, response: CSV } },
    async ({ params: { id } }, reply) => {
      const rows = (workOf(id).table?.notTaken() ?? []).map(({ line, heading, value, why }) => [
        String(line ?? ""),
        heading,
        value,
        why,
      ])
      const header = [say("Line"), say("Column or child"), say("Value"), say("Why")]
      return reply
        .type("text/csv; charset=utf-8")
        .header("content-disposition", 'attachment; filename="not-taken.csv"')
        .send(csvText({ header, rows }))
    },
  )
}

function isIdle({ state }: Work): boolean {
  return state !== "checking" && state !== "recording" && state !== "taking-back"
}

/** Work whose file is still there to be read. */
function idle(work: Work): Work {
  if (isIdle(work) && work.table?.isHere) return work
  throw conflict(say("{file} is being worked on; wait for it or cancel it", { file: work.file }))
}

function checked(work: Work): Work {
  if (work.state === "checked") return work
  throw conflict(say("{file} has to be checked first", { file: work.file }))
}

/** Units that are nobody's own are left away. */
const mappingOf = ({ columns, ...mapping }: MappingBody["mapping"]): TableMapping => ({
  ...mapping,
  columns: columns.map(({ unit, ...column }) => ({ ...column, ...(unit ? { unit } : {}) })),
})

const notHere = (id: string) =>
  new Refusal(404, [
    { path: "", value: id, allowed: say("an import of this practice"), message: say("no such import") },
  ])
const conflict = (message: string) => new Refusal(409, [problem("", null, message)])
const problem = (path: string, value: unknown, message: string) => ({ path, value, allowed: "", message })
const tooLarge = (name: string) =>
  new Refusal(413, [
    problem(
      "file",
      name,
      say("The file may have at most {most} MB.", { most: LARGEST_TABLE_BYTES / 1_000_000 }),
    ),
  ])

const isStream = (body: unknown): body is Readable =>
  typeof body === "object" && body !== null && "pipe" in body

const CSV = {
  200: { description: "What is not taken, as a table" },
  "4xx": { content: { "application/problem+json": { schema: problemAnswer } } },
}
