/**
 * `npm run fuzz`: feeds broken files to every reader of files, at least 100,000 of them, and fails when one throws, takes
 * more than two seconds, never ends, or keeps memory. Each format runs in a thread of its own that is watched from here.
 *
 *   npm run fuzz                                          every format
 *   npm run fuzz -- --inputs 50000 --format dicom         one format
 *   npm run fuzz -- --format dicom --seed 1 --only 4711   one input again
 */
import { mkdirSync, writeFileSync } from "node:fs"
import { availableParallelism, tmpdir } from "node:os"
import { join } from "node:path"
import { parseArgs } from "node:util"
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads"
import { inputAt } from "../test/fuzz/frame/inputs.js"
import { type FuzzResult, fuzzRun, SLOWEST_READ_MS } from "../test/fuzz/frame/run.js"
import { targetNamed, targetNames } from "../test/fuzz/frame/targets.js"

/** A read that was not over after this is not slow but hung. */
const HUNG_MS = 10 * SLOWEST_READ_MS
const LARGEST_HEAP_MB = 1024
/** Formats that are read side by side. */
const MOST_THREADS = 4

/** A thread does not get the loader of TypeScript from its parent: it brings its own. */
const THREAD = `
  const { workerData } = require("node:worker_threads")
  import(workerData.tsx).then(({ register }) => {
    register()
    return import(workerData.script)
  })
`

interface Share {
  readonly format: string
  readonly seed: number
  readonly from: number
  readonly inputs: number
  /** The number of the input that is being read, for who watches. */
  readonly place: SharedArrayBuffer
}

if (isMainThread) process.exitCode = await main()
else await readShare(workerData as Share)

async function readShare({ format, seed, from, inputs, place }: Share): Promise<void> {
  const current = new Int32Array(place)
  const begin = (index: number) => Atomics.store(current, 0, index)
  parentPort?.postMessage(await fuzzRun({ target: await targetNamed(format), seed, from, inputs, begin }))
}

async function main(): Promise<number> {
  const { values } = parseArgs({
    options: {
      inputs: { type: "string", default: "100000" },
      format: { type: "string", multiple: true },
      seed: { type: "string", default: "1" },
      only: { type: "string" },
    },
  })
  const formats = values.format ?? targetNames()
  const unknown = formats.filter((format) => !targetNames().includes(format))
  if (unknown.length > 0) {
    console.error(`No such format: ${unknown.join(", ")}. There are ${targetNames().join(", ")}.`)
    return 2
  }
  const seed = Number(values.seed)
  const from = Number(values.only ?? 0)
  const all = Number(values.inputs)
  if (![seed, from, all].every((count) => Number.isSafeInteger(count) && count >= 0)) {
    console.error("--inputs, --seed and --only are whole numbers.")
    return 2
  }
  const shares = await sharesOf(formats, values.only === undefined ? { seed, from, all } : { seed, from })
  let failed = 0
  const next = async (): Promise<void> => {
    const share = shares.shift()
    if (!share) return
    failed += await told(share, await watched(share))
    return next()
  }
  await Promise.all(Array.from({ length: Math.min(MOST_THREADS, availableParallelism()) }, next))
  console.log(failed === 0 ? "\nNothing failed." : `\n${failed} inputs failed.`)
  return failed === 0 ? 0 : 1
}

/** What each format reads of a run: as much as its share, the longest first; one input each when no number is given. */
async function sharesOf(
  formats: readonly string[],
  { seed, from, all }: { readonly seed: number; readonly from: number; readonly all?: number },
): Promise<Share[]> {
  const weights = await Promise.all(
    formats.map(async (format) => ({ format, weight: (await targetNamed(format)).share ?? 1 })),
  )
  const sum = weights.reduce((total, { weight }) => total + weight, 0)
  return weights.map(({ format, weight }) => {
    const inputs = all === undefined ? 1 : Math.ceil((all * weight) / sum)
    return { format, seed, from, inputs, place: new SharedArrayBuffer(4) }
  })
}

/** Runs a share in a thread, and ends the thread when one input does not end. */
function watched(share: Share): Promise<Pick<FuzzResult, "failures"> & Partial<FuzzResult>> {
  return new Promise((resolve) => {
    const worker = new Worker(THREAD, {
      eval: true,
      workerData: { ...share, tsx: import.meta.resolve("tsx/esm/api"), script: import.meta.url },
      resourceLimits: { maxOldGenerationSizeMb: LARGEST_HEAP_MB },
    })
    const current = new Int32Array(share.place)
    let last = { index: -1, since: Date.now() }
    const failure = (why: string) => ({ failures: [{ index: Atomics.load(current, 0), why }] })
    const watch = setInterval(() => {
      const index = Atomics.load(current, 0)
      if (index !== last.index) last = { index, since: Date.now() }
      else if (Date.now() - last.since > HUNG_MS) end(failure(`not read after ${HUNG_MS / 1000} s`))
    }, 1000)
    const end = (result: Pick<FuzzResult, "failures">) => {
      clearInterval(watch)
      void worker.terminate()
      resolve(result)
    }
    worker.once("message", end)
    worker.once("error", (cause) => end(failure(String(cause))))
  })
}

async function told(share: Share, result: Awaited<ReturnType<typeof watched>>): Promise<number> {
  const { format, seed } = share
  const { inputs = 0, seconds = 0, slowestMs = 0, slowestIndex = 0, heapGrowthBytes = 0, failures } = result
  console.log(
    [
      format.padEnd(8),
      `${inputs} inputs in ${seconds.toFixed(1)} s`,
      `${Math.round(inputs / Math.max(seconds, 1e-3))} inputs/s`,
      `slowest ${slowestMs.toFixed(1)} ms (number ${slowestIndex})`,
      `heap grew by ${Math.round(heapGrowthBytes / 1e6)} MB at most`,
      failures.length === 0 ? "none failed" : `${failures.length} FAILED`,
    ].join("   "),
  )
  if (failures.length === 0) return 0
  const target = await targetNamed(format)
  const seeds = await target.seeds()
  const folder = join(tmpdir(), "lengthwise-fuzz")
  mkdirSync(folder, { recursive: true })
  for (const { index, why } of failures) {
    const file = join(folder, `${format}-${seed}-${index}`)
    writeFileSync(file, inputAt({ seeds, target }, { seed, index }))
    console.log(`  ${file}\n  npm run fuzz -- --format ${format} --seed ${seed} --only ${index}`)
    console.log(
      why
        .split("\n")
        .slice(0, 6)
        .map((line) => `    ${line}`)
        .join("\n"),
    )
  }
  return failures.length
}
