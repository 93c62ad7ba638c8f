import type { FastifyInstance } from "fastify"
import { wordingProblems } from "../../engine/consent/wording-problems.js"
import type {
  ConsentWording,
  DocumentTemplate,
  FeeSchedule,
  PracticeLetterhead,
} from "../../engine/practice-rules.js"
import { protocolProblems } from "../../engine/protocol/protocol-problems.js"
import { say } from "../../engine/say.js"
import { pathText, problem } from "../../interop/course/problem.js"
import type { Draft, Entry, PaperKind } from "../../record/index.js"
import { type TemplateProblem, templateProblems } from "../../report/template/template-problems.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import type { Problem } from "../contract/problem.js"
import { paperSchemas, type RulesAnswer } from "../contract/rules.js"
import { feesPaperProblems } from "../fees-paper.js"
import { checkedLetterhead } from "../letterhead.js"
import { Refusal, refusalOfSave } from "../refusal.js"
import { serveRoute } from "../route.js"
import { authored } from "../save.js"

export function rulesRoutes(app: FastifyInstance, context: Context): void {
  const { record, rules, oneAtATime } = context

  serveRoute(app, api.rules, { answer: () => rulesAnswer(context) })

  serveRoute(app, api.recordPaper, {
    answer: ({ params: { kind }, body: { body, supersedes, reason, id }, person }) =>
      oneAtATime(async () => {
        const paper = checked(kind, body)
        if (kind === "fees") {
          const problems = await feesPaperProblems(paper as FeeSchedule, {
            record,
            without: [supersedes, id],
          })
          if (problems.length > 0) throw new Refusal(422, problems.map(inBody))
        }
        if (kind === "wording") {
          const others = (await record.papers())
            .filter((entry) => entry.kind === "wording" && entry.id !== id)
            .map((entry) => entry.body as ConsentWording)
          const problems = wordingProblems(paper as ConsentWording, { others })
          if (problems.length > 0) throw new Refusal(422, problems.map(inBody))
        }
        if (kind === "letterhead") await checkedLetterhead(paper as PracticeLetterhead, context)
        if (kind === "template") {
          const problems = templateProblems(paper as DocumentTemplate)
          if (problems.length > 0) throw new Refusal(422, problems.map(inTemplate))
        }
        const drafted = {
          kind,
          child: record.practice.id,
          body: paper,
          ...(supersedes ? { supersedes } : {}),
          ...(reason ? { reason } : {}),
          ...(id ? { id } : {}),
        } as unknown as Draft
        const saved = await record.append([authored(context, person, drafted)])
        if (saved.kind !== "saved") throw refusalOfSave(saved)
        rules.changed()
        return rulesAnswer(context)
      }),
  })
}

/** The paper as it is kept; every fault of it is one refusal, with paths inside `body`. */
function checked(kind: PaperKind, sent: unknown): unknown {
  if (kind === "protocol") {
    const problems = protocolProblems(sent).map((fault) => inBody(fault))
    if (problems.length > 0) throw new Refusal(422, problems)
    return sent
  }
  const result = paperSchemas[kind].safeParse(sent)
  if (result.success) return result.data
  throw new Refusal(
    422,
    result.error.issues.map(({ path, message }) =>
      problem({ path: `body.${pathText(path)}`, value: valueAt(sent, path), allowed: message }),
    ),
  )
}

const inBody = (fault: Problem): Problem => ({ ...fault, path: fault.path ? `body.${fault.path}` : "body" })

/** The line is part of the message, so that a person finds it in the text; nothing of the text is repeated. */
const inTemplate = ({ line, message }: TemplateProblem): Problem => ({
  path: "body.text",
  value: null,
  allowed: "",
  message: line === 0 ? message : say("line {line}: {message}", { line, message }),
})

function valueAt(sent: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inside, key) => (inside as Readonly<Record<PropertyKey, unknown>> | null | undefined)?.[key],
    sent,
  )
}

async function rulesAnswer({ record, rules }: Context): Promise<RulesAnswer> {
  const [papers, people] = await Promise.all([record.papers(), record.people()])
  const names = new Map(people.map(({ id, name }) => [id, name]))
  const later = new Map(papers.map(({ supersedes, id }) => [supersedes, id]))
  const listed = ({ id, kind, body, author, recordedAt, supersedes, reason }: Entry) => ({
    id,
    kind,
    body,
    author: names.get(author) ?? author,
    recordedAt,
    supersedes,
    supersededBy: later.get(id) ?? null,
    reason,
  })
  return { rules: await rules.now(), papers: papers.map(listed) }
}
