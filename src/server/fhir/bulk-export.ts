import { randomUUID } from "node:crypto"
import { once } from "node:events"
import { createReadStream, createWriteStream, type WriteStream } from "node:fs"
import { mkdtemp, rm } from "node:fs/promises"
import { tmpdir } from "node:os"
import { join } from "node:path"
import type { Context } from "../context.js"
import { childrenInOrder, isOfChild, resourcesOf } from "./child-resources.js"
import { FhirFault } from "./fhir-fault.js"
import { isServed, SERVED_TYPES, type ServedType } from "./served-types.js"

/** What was made is kept for so long after it was ready. */
const KEPT_MS = 60 * 60 * 1000

interface Output {
  readonly type: ServedType
  readonly count: number
}

type State =
  | { readonly kind: "running" }
  | { readonly kind: "ready"; readonly outputs: readonly Output[]; readonly at: string }
  | { readonly kind: "failed" }

interface Job {
  readonly id: string
  readonly request: string
  readonly folder: string
  readonly startedAt: string
  readonly stop: AbortController
  done: number
  total: number
  state: State
  readyMs: number
}

/** What a client asks while it waits. */
export type JobState =
  | { readonly kind: "running"; readonly progress: string }
  | { readonly kind: "ready"; readonly manifest: BulkManifest }

export interface BulkManifest {
  readonly transactionTime: string
  readonly request: string
  readonly requiresAccessToken: true
  readonly output: readonly { readonly type: string; readonly url: string; readonly count: number }[]
  readonly error: readonly never[]
}

/**
 * The whole practice as NDJSON, made in the background (FHIR Bulk Data Access): one file a type, one resource a line. One
 * is made at a time, since each reads the whole record. The files lie in a folder that only this process reads, and are
 * gone with it.
 */
export function bulkExports(context: Pick<Context, "record" | "clock" | "rules">) {
  const jobs = new Map<string, Job>()

  const forget = async (job: Job) => {
    job.stop.abort()
    jobs.delete(job.id)
    await rm(job.folder, { recursive: true, force: true })
  }
  const forgetOld = async () => {
    const now = context.clock.nowMs()
    for (const job of jobs.values())
      if (job.state.kind !== "running" && now - job.readyMs > KEPT_MS) await forget(job)
  }
  const jobOf = (id: string): Job => {
    const job = jobs.get(id)
    if (job) return job
    throw new FhirFault(404, "not-found", "there is no such export; it was taken away or never begun")
  }

  return {
    async begin({ request, types }: { readonly request: string; readonly types: readonly ServedType[] }) {
      await forgetOld()
      if ([...jobs.values()].some(({ state }) => state.kind === "running"))
        throw new FhirFault(409, "invalid", "an export is being made; ask for the next one when it is done")
      const folder = await mkdtemp(join(tmpdir(), "lengthwise-bulk-"))
      const startedAt = new Date(context.clock.nowMs()).toISOString()
      const job: Job = {
        ...{ id: randomUUID(), request, folder, startedAt, stop: new AbortController() },
        ...{ done: 0, total: 0, state: { kind: "running" }, readyMs: 0 },
      }
      jobs.set(job.id, job)
      written(context, job, types)
        .then((outputs) => {
          job.state = { kind: "ready", outputs, at: startedAt }
        })
        .catch(() => {
          job.state = { kind: "failed" }
        })
        .finally(() => {
          job.readyMs = context.clock.nowMs()
        })
      return job.id
    },

    state(id: string, fileUrl: (type: ServedType) => string): JobState {
      const { state, done, total, request } = jobOf(id)
      if (state.kind === "running") return { kind: "running", progress: `${done} of ${total} children` }
      if (state.kind === "failed")
        throw new FhirFault(422, "exception", "the export failed; nothing of it is kept, ask for it again")
      const output = state.outputs.map(({ type, count }) => ({ type, url: fileUrl(type), count }))
      const manifest = {
        transactionTime: state.at,
        request,
        requiresAccessToken: true as const,
        output,
        error: [],
      }
      return { kind: "ready", manifest }
    },

    file(id: string, type: string) {
      const { state, folder } = jobOf(id)
      if (!isServed(type) || state.kind !== "ready" || !state.outputs.some((output) => output.type === type))
        throw new FhirFault(404, "not-found", `the export has no file of ${type.slice(0, 40)}`)
      return createReadStream(join(folder, `${type}.ndjson`))
    },

    cancel: (id: string): Promise<void> => forget(jobOf(id)),

    async close(): Promise<void> {
      for (const job of [...jobs.values()]) await forget(job)
    },
  }
}

async function written(
  context: Pick<Context, "record" | "clock" | "rules">,
  job: Job,
  types: readonly ServedType[],
): Promise<readonly Output[]> {
  const files = new Map<ServedType, { readonly stream: WriteStream; count: number }>()
  // Instruments and people stand among the resources of many children, and are written once.
  const shared = new Set<string>()
  try {
    const children = await childrenInOrder(context)
    job.total = children.length
    for await (const { child, resources } of resourcesOf(context, children)) {
      job.stop.signal.throwIfAborted()
      for (const resource of resources) {
        const type = types.find((wanted) => wanted === resource.resourceType)
        if (!type) continue
        const key = `${type}/${resource.id}`
        if (!isOfChild(child.id, resource.id ?? "")) {
          if (shared.has(key)) continue
          shared.add(key)
        }
        const file = files.get(type) ?? newFile(job.folder, type)
        files.set(type, file)
        file.count++
        if (!file.stream.write(`${JSON.stringify(resource)}\n`)) await once(file.stream, "drain")
      }
      job.done++
    }
  } finally {
    for (const { stream } of files.values()) {
      stream.end()
      await once(stream, "close")
    }
  }
  return SERVED_TYPES.flatMap((type) => {
    const file = files.get(type)
    return file ? [{ type, count: file.count }] : []
  })
}

const newFile = (folder: string, type: ServedType) => ({
  stream: createWriteStream(join(folder, `${type}.ndjson`), { mode: 0o600, flags: "wx" }),
  count: 0,
})
