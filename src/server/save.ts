import type { FastifyRequest } from "fastify"
import type { Draft, Person } from "../record/index.js"
import { childViewOf } from "./child-view.js"
import type { Context } from "./context.js"
import type { ChildView } from "./contract/child.js"
import type { Problem } from "./contract/problem.js"
import { Refusal, refusalOfSave } from "./refusal.js"

type Unsigned<D> = D extends Draft ? Omit<D, "author" | "recordedAt"> : never

/** The draft as this person's, now. */
export function authored({ clock }: Context, person: Person, draft: Unsigned<Draft>): Draft {
  return { ...draft, author: person.id, recordedAt: new Date(clock.nowMs()).toISOString() }
}

/** Records the drafts, all or none, and answers with the child as it then stands. */
export async function save({ record }: Context, child: string, drafts: readonly Draft[]): Promise<ChildView> {
  const saved = await record.append(drafts)
  if (saved.kind !== "saved") throw refusalOfSave(saved)
  return childViewOf(record, child)
}

/**
 * What was checked, when neither the contract nor the check had anything against it. Otherwise every fault at once;
 * where both speak of one place the check says it better.
 */
export function problemsOf<T extends object>(
  { validationError }: FastifyRequest,
  checked: T | { readonly problems: readonly Problem[] },
): Exclude<T, { readonly problems: readonly Problem[] }> {
  const found = "problems" in checked ? (checked.problems as readonly Problem[]) : []
  const said = new Set(found.map(({ path }) => path))
  const contract = validationError instanceof Refusal ? validationError.problems : []
  const problems = [...found, ...contract.filter(({ path }) => !said.has(path))]
  if (problems.length > 0 || validationError) throw new Refusal(422, problems)
  return checked as Exclude<T, { readonly problems: readonly Problem[] }>
}
