/**
 * How long one DICOM object takes: ours per file in one warm process and as one cold command, against dcmdump on the same
 * files in the same run. Run: npm run bench
 */
import { spawnSync } from "node:child_process"
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { fileURLToPath } from "node:url"
import { readDicom } from "../dist/interop/dicom/read-dicom.js"

const root = fileURLToPath(new URL("..", import.meta.url))
const objects = join(root, "test/validation/dicom/objects")
const files = readdirSync(objects).map((name) => ({
  file: join(objects, name),
  bytes: readFileSync(join(objects, name)),
}))
const rows = []
const add = (what, value) => rows.push({ what, value })
const kilobytes = files.reduce((sum, { bytes }) => sum + bytes.length, 0) / files.length / 1000
add("objects", `${files.length} of ${kilobytes.toFixed(1)} kB on average`)

/** Least disturbed of ten rounds, ms a file: other work on the machine only ever adds. */
async function least(rounds, round) {
  const times = []
  for (let count = 0; count < rounds; count++) {
    const started = process.hrtime.bigint()
    await round()
    times.push(Number(process.hrtime.bigint() - started) / 1e6)
  }
  return Math.min(...times)
}

/** Many copies in a folder, so that starting a program is a small part of its time. */
const COPIES = 8
const folder = mkdtempSync(join(tmpdir(), "lengthwise-bench-"))
try {
  const copies = files.flatMap(({ bytes }, index) =>
    Array.from({ length: COPIES }, (_, copy) => {
      const file = join(folder, `${index}-${copy}`)
      writeFileSync(file, bytes)
      return file
    }),
  )
  const warm = async () => {
    for (let count = 0; count < COPIES; count++)
      for (const { file, bytes } of files) await readDicom({ file, bytes })
  }
  await warm()
  const ours = (await least(6, warm)) / copies.length
  const fromDisk =
    (await least(5, async () => {
      for (const file of copies) await readDicom({ file, bytes: readFileSync(file) })
    })) / copies.length
  add("ours, warm, parsed and taken as figures", `${ours.toFixed(3)} ms a file`)
  add("  the same with reading it from the disk", `${fromDisk.toFixed(3)} ms a file`)
  const command = (program, args) => () => {
    const { status, error } = spawnSync(program, args, { stdio: ["ignore", "ignore", "ignore"] })
    if (error) throw error
    return status
  }
  const one = join(objects, "axial-optical-both.dcm")
  const main = join(root, "dist/cli/main.js")
  const cold = await least(5, command(process.execPath, [main, "read", one, "--json"]))
  add("ours, one file, lengthwise read from a cold start", `${cold.toFixed(0)} ms`)
  const all = await least(3, command(process.execPath, [main, "read", folder, "--json"]))
  add(
    `ours, lengthwise read of ${copies.length} files, start included`,
    `${(all / copies.length).toFixed(3)} ms a file`,
  )
  if (spawnSync("dcmdump", ["--version"]).error) add("dcmdump", "not measured: dcmtk is not installed")
  else {
    const theirCold = await least(5, command("dcmdump", [one]))
    const theirs = await least(3, command("dcmdump", ["+sd", folder]))
    add("dcmdump, one file from a cold start", `${theirCold.toFixed(0)} ms`)
    add(
      `dcmdump of ${copies.length} files, start included`,
      `${(theirs / copies.length).toFixed(3)} ms a file`,
    )
    add("  ratio, dcmdump of many / ours warm from the disk", (theirs / copies.length / fromDisk).toFixed(2))
  }
} finally {
  rmSync(folder, { recursive: true })
}
const width = Math.max(...rows.map(({ what }) => what.length))
for (const { what, value } of rows) console.log(`${what.padEnd(width)}  ${value}`)
