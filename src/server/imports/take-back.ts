import type { PracticeRecord } from "../../record/index.js"

/** What taking an import back does or did, all its children together. */
export interface TakeBackTotals {
  readonly children: number
  readonly childrenGone: number
  readonly entriesWithdrawn: number
  readonly visitsRestored: number
  /** Names of children that are left as they are. */
  readonly left: readonly string[]
}

const NOTHING: TakeBackTotals = {
  children: 0,
  childrenGone: 0,
  entriesWithdrawn: 0,
  visitsRestored: 0,
  left: [],
}

type Effect = Awaited<ReturnType<PracticeRecord["imports"]["takeBackEffect"]>>

/** What taking the import back would do, before anybody says so. */
export function takeBackTotals(record: PracticeRecord, id: string): Promise<TakeBackTotals> {
  return partByPart((after) => record.imports.takeBackEffect({ id, after }))
}

/** Takes an import back, a part at a time, so that others are answered in between. */
export function takeBack(
  {
    record,
    oneAtATime,
  }: { readonly record: PracticeRecord; readonly oneAtATime: <T>(task: () => Promise<T>) => Promise<T> },
  {
    id,
    onProgress = () => {},
    ...by
  }: {
    readonly id: string
    readonly author: string
    readonly at: string
    readonly reason: string
    readonly onProgress?: (parts: number) => void
  },
): Promise<TakeBackTotals> {
  return partByPart((after) => oneAtATime(() => record.imports.takeBack({ id, after, ...by })), onProgress)
}

async function partByPart(
  part: (after: number) => Promise<Effect>,
  onProgress: (parts: number) => void = () => {},
): Promise<TakeBackTotals> {
  let totals = NOTHING
  let after: number | null = 0
  for (let parts = 1; after !== null; parts++) {
    const effect: Effect = await part(after)
    totals = {
      children: totals.children + effect.children,
      childrenGone: totals.childrenGone + effect.childrenGone,
      entriesWithdrawn: totals.entriesWithdrawn + effect.entriesWithdrawn,
      visitsRestored: totals.visitsRestored + effect.visitsRestored,
      left: [...totals.left, ...effect.left.map(({ name }) => name)],
    }
    after = effect.next
    onProgress(parts)
    await new Promise((next) => setImmediate(next))
  }
  return totals
}
