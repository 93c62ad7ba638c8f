/** How long one assessment takes, warm, and how many children a second all cores assess. Run: npm run bench */
import { execFileSync, spawnSync } from "node:child_process"
import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { availableParallelism, tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { Worker } from "node:worker_threads"
import { posterior, withheldPrior } from "../dist/engine/growth/posterior.js"
import { study } from "../dist/engine/growth/study.js"
import { assess, forecast } from "../dist/engine/index.js"
import { defaultSettings } from "../dist/engine/settings.js"
import { benchCourse, evidence, lastVisit } from "./child.mjs"
import { denseChild } from "./dense-child.mjs"

const rows = []
const add = (what, value, asked = "") => rows.push({ what, value, asked })

/** Least disturbed of ten warm rounds, ms a call: other work on the machine only ever adds. */
function warmMs(call, calls) {
  const rounds = Array.from({ length: 11 }, () => {
    const started = process.hrtime.bigint()
    for (let i = 0; i < calls; i++) call(i)
    return Number(process.hrtime.bigint() - started) / 1e6 / calls
  })
  return Math.min(...rounds.slice(1))
}

for (const [treatments, oldGlasses, asked] of [
  [1, false, "under 0.5 ms"],
  [1, true, ""],
  [3, false, "under 5 ms"],
]) {
  const courses = Array.from({ length: 40 }, (_, seed) => benchCourse({ seed, treatments, oldGlasses }))
  const inputs = courses.map((course) => ({
    course,
    asOf: lastVisit(course),
    evidence,
    settings: defaultSettings,
  }))
  const name = `two eyes, 12 visits, ${treatments === 1 ? "one treatment" : "three treatments"}${oldGlasses ? ", old glasses" : ""}`
  add(`assess, ${name}: everything`, `${warmMs((i) => assess(inputs[i % 40]), 400).toFixed(3)} ms`, asked)
  add(
    `  of it model, posterior of pace and effects`,
    `${warmMs((i) => study(inputs[i % 40]), 400).toFixed(3)} ms`,
  )
  if (treatments === 1 && !oldGlasses) {
    const ms = warmMs((i) => forecast({ ...inputs[i % 40], toAgeYears: 18 }), 100)
    add("forecast of both eyes to 18, two fans", `${ms.toFixed(2)} ms`)
  }
}

add(...(await allCores(10_000)))
peer()
print()

async function allCores(children) {
  const cores = availableParallelism()
  const file = fileURLToPath(new URL("./assess-worker.mjs", import.meta.url))
  const share = Math.ceil(children / cores)
  const times = await Promise.all(
    Array.from(
      { length: cores },
      (_, core) =>
        new Promise((resolve, reject) => {
          const worker = new Worker(file, { workerData: { from: core * share, count: share } })
          worker.once("message", resolve)
          worker.once("error", reject)
        }),
    ),
  )
  const seconds = Math.max(...times)
  return [
    `${children} children re-assessed on ${cores} cores`,
    `${Math.round((share * cores) / seconds)} children/s (${seconds.toFixed(1)} s; bound by arithmetic in the engine, no I/O)`,
  ]
}

/** The same posterior, same nodes, by dense linear algebra in base R. */
function peer() {
  if (spawnSync("Rscript", ["--version"]).status !== 0) {
    add("same posterior in base R", "not measured: R is not installed")
    return
  }
  const course = benchCourse({ seed: 4, treatments: 1, oldGlasses: true })
  const child = study({ course, asOf: lastVisit(course), evidence, settings: defaultSettings })
  const folder = mkdtempSync(join(tmpdir(), "lengthwise-bench-"))
  try {
    writeFileSync(join(folder, "child.csv"), denseChild(child))
    const script = fileURLToPath(new URL("./posterior.R", import.meta.url))
    const [logEvidence, rMs] = execFileSync("Rscript", ["--vanilla", script, join(folder, "child.csv")], {
      encoding: "utf8",
    })
      .trim()
      .split(" ")
      .map(Number)
    const ours = warmMs(() => posterior(child.factored, withheldPrior(child.model)), 400)
    const whole = warmMs(() => study({ ...child }), 400)
    const gap = Math.abs(logEvidence - child.posterior.logEvidence)
    add(
      "same posterior in base R, factor and nodes",
      `${rMs.toFixed(1)} ms (log evidence differs by ${gap.toExponential(1)})`,
    )
    add("  ours, nodes alone / figures, factor and nodes", `${ours.toFixed(3)} / ${whole.toFixed(3)} ms`)
    add("  ratio, figures, factor and nodes", `${(rMs / whole).toFixed(0)} times faster`)
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function print() {
  const width = Math.max(...rows.map((row) => row.what.length))
  for (const { what, value, asked } of rows) {
    console.log(`${what.padEnd(width)}  ${value}${asked ? `  (asked: ${asked})` : ""}`)
  }
}
