import { setFlagsFromString } from "node:v8"
import { runInNewContext } from "node:vm"
import { inputAt } from "./inputs.js"
import type { FuzzTarget } from "./target.js"

/** A read that takes longer holds up a person, or a server. */
export const SLOWEST_READ_MS = 2000
/** How far the heap may grow over a run, once what is no longer held is swept. */
const MOST_GROWTH_BYTES = 64_000_000
const INPUTS_BETWEEN_SWEEPS = 5000

export interface Failure {
  readonly index: number
  readonly why: string
}

export interface FuzzResult {
  readonly inputs: number
  readonly seconds: number
  readonly slowestMs: number
  readonly slowestIndex: number
  /** How far what is held after a sweep stood above what was held before the first input. */
  readonly heapGrowthBytes: number
  readonly failures: readonly Failure[]
}

export interface FuzzRun {
  readonly target: FuzzTarget
  readonly seed: number
  readonly from?: number
  readonly inputs: number
  /** Told of every input before it is read, so that one that never ends is known. */
  readonly begin?: (index: number) => void
  readonly mostFailures?: number
}

/** Reads so many broken files, and says which were thrown at, were slow, or left memory behind. */
export async function fuzzRun({
  target,
  seed,
  from = 0,
  inputs,
  begin,
  mostFailures = 5,
}: FuzzRun): Promise<FuzzResult> {
  const seeds = await target.seeds()
  for (const bytes of seeds) await target.read(bytes)
  const sweep = sweeper()
  sweep()
  const atFirst = held()
  const failures: Failure[] = []
  const slowest = { ms: 0, index: from }
  const started = performance.now()
  let largest = atFirst
  let settled = Number.POSITIVE_INFINITY
  let done = 0
  for (let index = from; index < from + inputs && failures.length < mostFailures; index++, done++) {
    begin?.(index)
    const input = inputAt({ seeds, target }, { seed, index })
    const before = performance.now()
    try {
      await target.read(input)
    } catch (cause) {
      failures.push({ index, why: cause instanceof Error ? (cause.stack ?? cause.message) : String(cause) })
    }
    const ms = await settledMs(performance.now() - before, () => target.read(input))
    if (ms > slowest.ms) Object.assign(slowest, { ms, index })
    if (done % INPUTS_BETWEEN_SWEEPS !== INPUTS_BETWEEN_SWEEPS - 1) continue
    sweep()
    // The first sweep is what the reader needs to work at all; only growth from there on is a leak.
    const kept = held()
    largest = Math.max(largest, kept)
    if (kept > settled + MOST_GROWTH_BYTES)
      failures.push({ index, why: `memory grew from ${settled} to ${kept} bytes` })
    settled = Math.min(settled, kept)
  }
  if (slowest.ms > SLOWEST_READ_MS)
    failures.push({ index: slowest.index, why: `reading it took ${Math.round(slowest.ms)} ms` })
  return {
    inputs: done,
    seconds: (performance.now() - started) / 1000,
    slowestMs: slowest.ms,
    slowestIndex: slowest.index,
    heapGrowthBytes: Math.max(largest, sweptBy(sweep)) - atFirst,
    failures,
  }
}

/** A read that took too long is read again: on a busy machine the first time may have been another program's. */
async function settledMs(ms: number, again: () => Promise<unknown>): Promise<number> {
  if (ms <= SLOWEST_READ_MS) return ms
  const before = performance.now()
  await again().catch(() => undefined)
  return Math.min(ms, performance.now() - before)
}

function sweptBy(sweep: () => void): number {
  sweep()
  return held()
}

function held(): number {
  const { heapUsed, external, arrayBuffers } = process.memoryUsage()
  return heapUsed + Math.max(external, arrayBuffers)
}

/** The collector, which Node hands out only when asked. */
function sweeper(): () => void {
  setFlagsFromString("--expose-gc")
  return runInNewContext("gc") as () => void
}
