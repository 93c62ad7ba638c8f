import type { FastifyInstance } from "fastify"
import type { FamilyContact } from "../../engine/messages/family-contact.js"
import { problem } from "../../interop/course/problem.js"
import type { Entry } from "../../record/index.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import type { Problem } from "../contract/problem.js"
import { noSuch, Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"
import { authored, save } from "../save.js"

/** Whom the practice speaks with about a child, and what that family agreed to. */
export function familyContactRoutes(app: FastifyInstance, context: Context): void {
  const { record, clock, oneAtATime } = context
  serveRoute(app, api.recordFamilyContact, {
    answer: ({ params, body: { contact, supersedes, reason, id }, person }) =>
      oneAtATime(async () => {
        const entries = await record.entriesOf(params.id)
        if (entries.length === 0) throw noSuch("child", params.id)
        const problems = agreementProblems(contact, clock.today())
        if (problems.length > 0) throw new Refusal(422, [...problems])
        const isRepeated = id != null && entries.some((entry) => entry.id === id)
        const there = inForce(entries)
        if (there && there.id !== supersedes && !isRepeated)
          throw new Refusal(409, [changedMeanwhile(supersedes)])
        const drafted = {
          kind: "family",
          child: params.id,
          body: withoutAbsent(contact),
          ...(supersedes ? { supersedes, reason: reason ?? "contact changed" } : {}),
          ...(id ? { id } : {}),
        } as const
        return save(context, params.id, [authored(context, person, drafted)])
      }),
  })
}

function inForce(entries: readonly Entry[]): Entry | undefined {
  const superseded = new Set(entries.map(({ supersedes }) => supersedes))
  return entries.find(({ kind, id }) => kind === "family" && !superseded.has(id))
}

function changedMeanwhile(supersedes: string | null | undefined): Problem {
  return problem({
    path: "supersedes",
    value: supersedes ?? null,
    allowed: "the contact that holds now; another one was recorded in the meantime",
  })
}

/** An agreement is recorded once it was given. */
function agreementProblems({ agreed }: FamilyContact, today: string): readonly Problem[] {
  const late = (["on", "until"] as const).filter((field) => (agreed?.[field] ?? "") > today)
  return late.map((field) =>
    problem({
      path: `contact.agreed.${field}`,
      value: agreed?.[field],
      allowed: `a day up to today, ${today}`,
    }),
  )
}

/** The contact without fields that hold nothing, as it is hashed and kept. */
function withoutAbsent({ agreed, ...contact }: FamilyContact): FamilyContact {
  const filled = Object.fromEntries(Object.entries(contact).filter(([, value]) => value !== undefined))
  const until = agreed?.until === undefined ? {} : { until: agreed.until }
  return {
    ...(filled as unknown as FamilyContact),
    ...(agreed ? { agreed: { on: agreed.on, to: agreed.to, ...until } } : {}),
  }
}
