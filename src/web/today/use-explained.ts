import { useMutation, useQueryClient } from "@tanstack/react-query"
import { useState } from "react"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import type { OwedRow } from "../../server/contract/today.js"
import { ask } from "../client.js"
import { newEntryId } from "../entry-id.js"

interface Told {
  readonly row: OwedRow
  readonly entryId: string
}

/** Records from the list that a family was told its results, and takes it back when that was a slip. */
export function useExplained() {
  const client = useQueryClient()
  const [last, setLast] = useState<Told | null>(null)
  const refresh = (view: ChildView) => {
    client.setQueryData(["child", view.child.id], view)
    return client.invalidateQueries({ queryKey: ["today"] })
  }
  const telling = useMutation({
    mutationFn: async ({ row, today }: { readonly row: OwedRow; readonly today: string }) => {
      const body = { ...newEntryId(), date: today, to: "family" }
      const view = await ask<ChildView>("POST", `/api/children/${row.child.id}/explanations`, body)
      const entry = view.entries.findLast(({ kind, supersededBy }) => kind === "explanation" && !supersededBy)
      return { view, told: entry ? { row, entryId: entry.id } : null }
    },
    onSuccess: ({ view, told }) => {
      setLast(told)
      return refresh(view)
    },
  })
  const undoing = useMutation({
    mutationFn: ({ row, entryId }: Told) =>
      ask<ChildView>("POST", `/api/children/${row.child.id}/entries/${entryId}/withdrawal`, {
        reason: say("recorded by mistake"),
      }),
    onSuccess: (view) => {
      setLast(null)
      return refresh(view)
    },
  })
  return {
    tell: telling.mutate,
    undo: () => last && undoing.mutate(last),
    busy: telling.isPending || undoing.isPending,
    message:
      last && say("Recorded: results explained to the family of {name}.", { name: last.row.child.name }),
    failure: telling.error ?? undoing.error,
  }
}
