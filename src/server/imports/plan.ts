import type { CalendarDate } from "../../engine/course.js"
import { say } from "../../engine/say.js"
import type { Identity } from "../../interop/intake/fragment.js"
import type { PracticeRecord } from "../../record/index.js"
import { planChild } from "./plan-child.js"
import type { Problems } from "./problem.js"
import type { Stoppable } from "./read-rows.js"
import { MOST_ROWS_OF_CHILD, type StagedGroup, type Staging } from "./staging.js"

const CHILDREN_AT_ONCE = 100

/** What planning needs to know of the file and the day. */
export interface Planning {
  readonly record: PracticeRecord
  readonly staging: Staging
  readonly problems: Problems
  readonly today: CalendarDate
  readonly file: string
  readonly sha256: string
}

/** Works out what each child's rows add to the record. Nothing is recorded. */
export async function planAll(
  planning: Planning,
  { stop, onProgress }: { readonly stop: Stoppable; readonly onProgress: (groups: number) => void },
): Promise<void> {
  const { staging } = planning
  let last = 0
  let done = 0
  while (!stop.isStopped()) {
    const groups = staging.groupsAfter(last, CHILDREN_AT_ONCE)
    const end = groups.at(-1)
    if (!end) return
    last = end.id
    // Several groups may turn out to be one child: it is planned with the first of them.
    const targets = groups.flatMap(({ id, target }) =>
      target !== null && staging.isFirstOf(target, id) ? [target] : [],
    )
    await planSome(planning, targets)
    done += groups.length
    onProgress(done)
    // Others are waiting for their answers.
    await new Promise((next) => setImmediate(next))
  }
}

/** Plans children anew, whatever was planned for them before. */
export async function planSome(planning: Planning, children: readonly string[]): Promise<void> {
  const { record, staging, problems, today, file, sha256 } = planning
  const recorded = await record.currentEntries(children)
  staging.begin()
  for (const child of children) {
    const groups = staging.groupsOf(child)
    const first = groups[0]
    if (!first) continue
    const readings = groups.flatMap(({ id }) => staging.readingsOf(id))
    const identity: Identity = Object.assign({}, ...groups.toReversed().map((group) => group.identity))
    if (readings.length > MOST_ROWS_OF_CHILD) {
      problems.add({
        line: first.firstLine,
        heading: nameOf(first),
        value: "",
        why: say("more than {most} rows are said to be of one child; none of them was taken", {
          most: MOST_ROWS_OF_CHILD,
        }),
      })
      continue
    }
    const plan = planChild({
      child,
      identity,
      readings,
      recorded: recorded.get(child) ?? [],
      today,
      source: { kind: "table", id: sha256 },
      file,
    })
    for (const problem of plan.problems) problems.add(problem)
    const isNew = (recorded.get(child) ?? []).length === 0
    staging.setPlan(first.id, { child, isNew, entries: plan.entries }, plan.counts)
  }
  staging.commit()
}

const nameOf = ({ identity: { name, number } }: StagedGroup): string => name ?? number ?? ""
