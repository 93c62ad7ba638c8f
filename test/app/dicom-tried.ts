import { type ExecFileException, execFile } from "node:child_process"
import { readdirSync } from "node:fs"
import { join } from "node:path"
import { afterEach } from "vitest"
import { type InstrumentRules, noRules } from "../../src/engine/practice-rules.js"
import { type DicomLimits, dicomLimits } from "../../src/server/dicom/limits.js"
import { type InstrumentReceiver, instrumentReceiver } from "../../src/server/dicom/receiver.js"
import type { Taken } from "../../src/server/intake/taken.js"
import { hasTool } from "../report/outside-tools.js"

/** A receiver to be tried, and the programs that try it. */

export const OURS = { title: "EYES", allowed: ["BIOMETER"], isOn: true, port: 11112 }
/** Types of the answers. */
export const ACCEPT = 2
export const REJECT = 3
export const RELEASED = 6
export const ABORT = 7

export const hasDcmtk = ["echoscu", "storescu", "dump2dcm"].every(hasTool)
export const DUMPS = "test/validation/dicom/dumps"

export interface Tried {
  readonly port: number
  readonly taken: { readonly file: string; readonly bytes: Uint8Array; readonly title: string }[]
  readonly receiver: InstrumentReceiver
  readonly set: (rules: InstrumentRules | undefined) => void
  readonly lines: string[]
  readonly refusals: () => readonly (string | null)[]
}

const closing: (() => Promise<void>)[] = []
afterEach(async () => {
  for (const close of closing.splice(0)) await close()
})

/** A receiver whose objects go into a list. */
export async function tried({
  limits = {},
  rules,
  take,
}: {
  readonly limits?: Partial<DicomLimits>
  readonly rules?: InstrumentRules
  readonly take?: (file: string) => Promise<readonly Taken[]>
} = {}): Promise<Tried> {
  const taken: { file: string; bytes: Uint8Array; title: string }[] = []
  const lines: string[] = []
  let instruments: InstrumentRules | undefined = rules
  const receiver = instrumentReceiver(
    {
      clock: { nowMs: () => Date.now(), today: () => "2026-11-25" },
      rules: { now: async () => ({ ...noRules, instruments }), changed: () => {} },
      oneAtATime: (task) => task(),
    } as Parameters<typeof instrumentReceiver>[0],
    {
      limits: { ...dicomLimits, ...limits },
      take: async (object) => {
        if (take) return take(object.file)
        taken.push(object)
        return [{ file: object.file, outcome: "recorded" }]
      },
    },
  )
  closing.push(() => receiver.close())
  const { port } = await receiver.start({
    host: "127.0.0.1",
    port: 0,
    keys: null,
    write: (line) => lines.push(line),
  })
  return {
    port: port ?? 0,
    taken,
    receiver,
    lines,
    set: (changed) => {
      instruments = changed
    },
    refusals: () =>
      receiver.log
        .page({ search: "", only: "refused", page: 1, words: () => "" })
        .events.map(({ refusal }) => refusal),
  }
}

export interface Ran {
  readonly code: number
  readonly out: string
}

export const run = (program: string, ...args: readonly string[]): Promise<Ran> =>
  new Promise((resolve) =>
    execFile(
      program,
      args,
      { encoding: "utf8", maxBuffer: 10_000_000 },
      (error: ExecFileException | null, stdout, stderr) =>
        resolve({ code: error ? Number(error.code ?? 1) : 0, out: stdout + stderr }),
    ),
  )

/** Builds the text fixtures with dcmtk. */
export async function builtObjects(folder: string, dumps: string): Promise<readonly string[]> {
  const names = readdirSync(dumps).filter((name) => name.endsWith(".dump"))
  const built = names.map((name) => join(folder, name.replace(".dump", ".dcm")))
  await Promise.all(names.map((name, index) => run("dump2dcm", "+te", join(dumps, name), built[index] ?? "")))
  return built
}
