import type { Course, Supply } from "../../engine/course.js"
import type { ChildView } from "../../server/contract/child.js"

export interface RecordedBottle {
  readonly entryId: string
  readonly body: Supply
}

/** The bottles as they stand in the record. */
export const recordedBottles = ({ entries }: Pick<ChildView, "entries">): readonly RecordedBottle[] =>
  entries
    .filter(({ kind, supersededBy }) => kind === "supply" && supersededBy === null)
    .map(({ id, body }) => ({ entryId: id, body: body as Supply }))

/** The course with its bottles in the order of the record, so that a bottle of a report is known by its place. */
export const withBottles = (course: Course, bottles: readonly RecordedBottle[]): Course => ({
  ...course,
  supplies: bottles.map(({ body }) => body),
})
