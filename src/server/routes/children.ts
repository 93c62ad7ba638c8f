import type { FastifyInstance } from "fastify"
import { assess } from "../../engine/assess.js"
import type { Course } from "../../engine/course.js"
import { evidence } from "../../evidence/index.js"
import type { ChildBody } from "../../record/index.js"
import type { ChildReading, ChildReadings } from "../child-readings.js"
import { childViewOf } from "../child-view.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { PAGE_SIZE } from "../contract/child.js"
import { checkChild } from "../course-check.js"
import { noSuch } from "../refusal.js"
import { serveRoute } from "../route.js"
import { authored, problemsOf, save } from "../save.js"

export function childrenRoutes(app: FastifyInstance, context: Context, readings: () => ChildReadings): void {
  const { record, clock, settings, oneAtATime } = context

  serveRoute(app, api.children, {
    answer: async ({ query: { search, page } }) => {
      const today = clock.today()
      const { total, children } = await record.children({ search, page, pageSize: PAGE_SIZE })
      const day = { today, rules: await context.rules.now() }
      await readings().read(children, day)
      const rows = children.map((child) => ({
        id: child.id,
        name: child.name,
        number: child.number,
        born: child.born,
        sex: child.sex,
        lastVisit: child.lastVisit,
        ...summaryOf(readings().known(child, day)),
      }))
      return { total, page, pageSize: PAGE_SIZE, children: rows }
    },
  })

  serveRoute(app, api.child, { answer: ({ params }) => childViewOf(record, params.id) })

  serveRoute(app, api.assessment, {
    answer: async ({ params, query }) => {
      const course = await record.courseOf(params.id)
      if (!course) throw noSuch("child", params.id)
      return assess({ course, asOf: query.asOf ?? clock.today(), evidence, settings })
    },
  })

  serveRoute(app, api.addChild, {
    ownBodyCheck: true,
    answer: ({ body, bodyAsSent, person, request }) =>
      oneAtATime(async () => {
        const { id: _, name: __, number: ___, ...sent } = objectOf(bodyAsSent)
        const checked = checkChild(sent, { course: null, today: clock.today(), place: "" })
        const child = problemsOf(request, checked)
        const id = body.id ?? crypto.randomUUID()
        const drafted = { kind: "child", id, child: id, body: childBody(body, child) } as const
        return save(context, id, [authored(context, person, drafted)])
      }),
  })

  serveRoute(app, api.correctChild, {
    ownBodyCheck: true,
    answer: ({ params, body, bodyAsSent, person, request }) =>
      oneAtATime(async () => {
        const course = await record.courseOf(params.id)
        const named = (await record.entriesOf(params.id)).findLast(({ kind }) => kind === "child")
        if (!course || !named) throw noSuch("child", params.id)
        const { name: _, number: __, ...sent } = objectOf(objectOf(bodyAsSent).child)
        const checked = checkChild(sent, { course, today: clock.today(), place: "child." })
        const child = problemsOf(request, checked)
        const drafted = {
          kind: "child",
          child: params.id,
          body: childBody(body.child, child),
          supersedes: named.id,
          reason: body.reason,
        } as const
        return save(context, params.id, [authored(context, person, drafted)])
      }),
  })
}

function summaryOf(reading: ChildReading | undefined): ChildReading["summary"] {
  if (!reading) throw new RangeError("a child of the list has no course")
  return reading.summary
}

function objectOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? (value as Readonly<Record<string, unknown>>) : {}
}

function childBody(
  { name, number }: { readonly name: string; readonly number?: string | null | undefined },
  { child }: { readonly child: Course["child"] },
): ChildBody {
  const { id: _, ...fields } = child
  return { ...fields, name, ...(number ? { number } : {}) }
}
