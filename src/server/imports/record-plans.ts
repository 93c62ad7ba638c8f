import { say } from "../../engine/say.js"
import type { KnownChild } from "../../interop/intake/same-child.js"
import { sameChild } from "../../interop/intake/same-child.js"
import type { Draft, Saved } from "../../record/index.js"
import { ChildIndex } from "./child-index.js"
import { type Planning, planSome } from "./plan.js"
import type { Stoppable } from "./read-rows.js"
import type { StagedPlan } from "./staging.js"

/** Some hundred entries are on the disk in a fraction of a second: nobody waits long for an answer. */
const CHILDREN_AT_ONCE = 100

export interface Recording extends Planning {
  readonly id: string
  readonly author: string
  readonly now: () => string
  readonly oneAtATime: <T>(task: () => Promise<T>) => Promise<T>
  /** End of the chain when the plans were made. */
  readonly head: string
  /** Ids of the children that were known then. */
  readonly knownThen: ReadonlySet<string>
}

/**
 * Records every plan, some children to a transaction. What others recorded since the plans were made is looked at again,
 * so that nothing is overwritten that came in between.
 */
export async function recordPlans(
  recording: Recording,
  { stop, onProgress }: { readonly stop: Stoppable; readonly onProgress: (children: number) => void },
): Promise<void> {
  const made = new Set<string>()
  let { head } = recording
  let last = 0
  let done = 0
  while (!stop.isStopped()) {
    const plans = recording.staging.plansAfter(last, CHILDREN_AT_ONCE)
    const end = plans.at(-1)
    if (!end) return
    last = end.place
    head = await recording.oneAtATime(async () => {
      const now = await recording.record.head()
      const sound = now === head ? plans : await plannedAnew(recording, plans, made)
      return (await recordSome(recording, sound)) ?? now
    })
    for (const { child, isNew } of plans) if (isNew) made.add(child)
    done += plans.length
    onProgress(done)
    await new Promise((next) => setImmediate(next))
  }
}

/** Plans the same children against the record as it is now; a new child of which a like one came meanwhile is left out. */
async function plannedAnew(
  recording: Recording,
  plans: readonly (StagedPlan & { readonly place: number })[],
  made: ReadonlySet<string>,
): Promise<readonly StagedPlan[]> {
  const { record, staging, problems, knownThen } = recording
  const strangers = (await record.everyChild()).filter(({ id }) => !knownThen.has(id) && !made.has(id))
  const index = new ChildIndex(strangers)
  const kept = plans.filter((plan) => {
    const like = plan.isNew ? likeOneOf(index, plan) : null
    if (like) {
      staging.dropPlan(plan.child)
      problems.add({
        line: staging.groupsOf(plan.child)[0]?.firstLine ?? null,
        heading: like.name,
        value: "",
        why: say("a child like this one was recorded meanwhile; import the file once more to decide"),
      })
    }
    return like === null
  })
  await planSome(
    recording,
    kept.map(({ child }) => child),
  )
  const anew = new Map(
    staging.plansAfter((plans[0]?.place ?? 1) - 1, plans.length).map((plan) => [plan.child, plan]),
  )
  return kept.flatMap(({ child }) => anew.get(child) ?? [])
}

function likeOneOf(index: ChildIndex, { entries }: StagedPlan): KnownChild | null {
  const named = entries.find((entry) => entry.kind === "child")
  if (named?.kind !== "child") return null
  const { name, number, born, sex } = named.body as {
    name: string
    number?: string
    born: string
    sex: "female" | "male"
  }
  const identity = { name, number, born, sex }
  const found = sameChild(identity, index.candidates(identity))
  return found.kind === "same"
    ? found.child
    : found.kind === "near"
      ? (found.candidates[0]?.child ?? null)
      : null
}

/** Records the plans together; where the record refuses, child by child, so that one costs no other. */
async function recordSome(recording: Recording, plans: readonly StagedPlan[]): Promise<string | null> {
  const filled = plans.filter(({ entries }) => entries.length > 0)
  if (filled.length === 0) return null
  const together = await append(recording, filled)
  if (together.kind === "saved") return together.entries.at(-1)?.hash ?? null
  let head: string | null = null
  for (const plan of filled) {
    const saved = await append(recording, [plan])
    if (saved.kind === "saved") {
      head = saved.entries.at(-1)?.hash ?? head
      continue
    }
    const line = recording.staging.groupsOf(plan.child)[0]?.firstLine ?? null
    for (const { message, value } of saved.problems)
      recording.problems.add({ line, heading: "", value: String(value ?? ""), why: message })
    recording.staging.dropPlan(plan.child)
  }
  return head
}

function append({ record, id, author, now }: Recording, plans: readonly StagedPlan[]): Promise<Saved> {
  const recordedAt = now()
  const drafts = plans.flatMap(({ child, entries }) =>
    entries.map((entry) => ({ ...entry, child, author, recordedAt }) as Draft),
  )
  return record.imports.append(id, drafts)
}
