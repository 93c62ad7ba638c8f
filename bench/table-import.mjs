/**
 * A table imported whole: 100,000 rows, 10,000 children of 10 visits, read, checked, hashed and recorded, in rows a second,
 * beside a bare bulk insert of the same rows into SQLite, in one run. Each runs in a process of its own, so that the most
 * memory each one took can be told. Run: npm run bench
 */
import { spawnSync } from "node:child_process"
import { createHash } from "node:crypto"
import { createReadStream, createWriteStream, mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { createInterface } from "node:readline"
import { pipeline } from "node:stream/promises"
import { fileURLToPath } from "node:url"
import Database from "better-sqlite3"

const CHILDREN = Number(process.env.BENCH_CHILDREN ?? 10_000)
const VISITS = 10
const ROWS = CHILDREN * VISITS
const TODAY = "2026-11-25"
const COLUMNS = [
  ["Number", "number"],
  ["Name", "name"],
  ["Date of birth", "born"],
  ["Sex", "sex"],
  ["Date", "date"],
  ["AL OD mm", "right.axialLengthMm"],
  ["AL OS mm", "left.axialLengthMm"],
  ["SPH OD", "right.sphere"],
  ["SPH OS", "left.sphere"],
]

const [task, file, folder] = process.argv.slice(2)
if (task === "import") console.log(JSON.stringify(await imported(file, folder)))
else if (task === "insert") console.log(JSON.stringify(await inserted(file, folder)))
else await compared()

async function compared() {
  const place = mkdtempSync(join(tmpdir(), "lengthwise-bench-table-"))
  try {
    const table = join(place, "table.csv")
    await pipeline(lines, createWriteStream(table))
    const bare = apart("insert", table, place)
    const whole = apart("import", table, place)
    if (whole.visits !== ROWS) throw new Error(`${whole.visits} visits of ${ROWS} rows were recorded`)
    const rate = (seconds) => `${Math.round(ROWS / seconds).toLocaleString("en-GB")} rows/s`
    const mb = (bytes) => `${Math.round(bytes / 1e6)} MB`
    const s = (seconds) => `${seconds.toFixed(1)} s`
    console.log(
      `Table of ${ROWS.toLocaleString("en-GB")} rows imported: ${whole.seconds.toFixed(1)} s, ${rate(whole.seconds)}, at most ${mb(whole.memory)} of memory (${mb(whole.memoryAtStart)} before the first row)`,
    )
    console.log(
      `  of processor time ${s(whole.processor)}: reading rows and sorting them by child ${s(whole.reading)}, finding whose they are and checking each child's course ${s(whole.planning)}, recording ${whole.entries.toLocaleString("en-GB")} entries ${s(whole.recording)}`,
    )
    console.log(
      `  done once more by themselves: the schema and the rules over every course ${s(whole.schema)}, one spelling and SHA-256 of every entry ${s(whole.hashing)}`,
    )
    console.log(
      `  bare insert of the same rows, one transaction, flushed: ${s(bare.seconds)}, ${rate(bare.seconds)}, ${s(bare.processor)} of processor time, at most ${mb(bare.memory)}; the import takes ${(whole.processor / bare.processor).toFixed(0)} times the processor time`,
    )
  } finally {
    rmSync(place, { recursive: true })
  }
}

/** Runs one of the two by itself; the last line it says is what it measured. */
function apart(task, table, place) {
  const args = [...(process.env.BENCH_NODE ?? "").split(" ").filter(Boolean), fileURLToPath(import.meta.url)]
  const { status, stdout } = spawnSync(process.execPath, [...args, task, table, place], {
    stdio: ["ignore", "pipe", "inherit"],
  })
  if (status !== 0) throw new Error(`${task} ended with ${status}`)
  return JSON.parse(stdout.toString().trim().split("\n").at(-1))
}

function* lines() {
  yield `${COLUMNS.map(([heading]) => heading).join(",")}\n`
  for (let child = 0; child < CHILDREN; child++) {
    const two = (number) => String(number).padStart(2, "0")
    // Spread over ten years, as the births of a practice are.
    const day = child % (10 * 12 * 28)
    const born = `${2008 + Math.floor(day / 336)}-${two(1 + (Math.floor(day / 28) % 12))}-${two(1 + (day % 28))}`
    const name = `Xa${child.toString(36)}q Wu${((child * 7919) % 99991).toString(36)}v`
    const sex = child % 2 ? "female" : "male"
    for (let n = 0; n < VISITS; n++) {
      const date = `${2020 + (n >> 1)}-${n % 2 ? "09" : "03"}-${two(1 + (child % 28))}`
      const mm = (23 + (child % 150) / 100 + n * 0.08).toFixed(2)
      const sphere = (-0.25 * (n + (child % 9))).toFixed(2)
      yield `K-${child},${name},${born},${sex},${date},${mm},${mm},${sphere},${sphere}\n`
    }
  }
}

async function imported(table, place) {
  const [{ addPractice, migrate, openEmbedded, practiceRecord }, { TableImport }, { received }] =
    await Promise.all([
      import("../dist/record/index.js"),
      import("../dist/server/imports/table-import.js"),
      import("../dist/server/imports/scratch.js"),
    ])
  const folder = mkdtempSync(join(place, "data-"))
  const database = openEmbedded(folder)
  await migrate(database)
  const practice = { id: crypto.randomUUID(), name: "Bench", latitude: 51.5, settings: {} }
  const createdAt = `${TODAY}T08:00:00.000Z`
  await addPractice(database.queries, { ...practice, createdAt })
  const record = practiceRecord(database, practice)
  const person = { id: crypto.randomUUID(), name: "Bench", logIn: "bench", role: "clinician" }
  await record.addPerson({ ...person, passwordHash: "none", createdAt })
  const memoryAtStart = process.memoryUsage().rss

  const id = crypto.randomUUID()
  const clock = { today: () => TODAY, nowMs: () => Date.now() }
  const at = { record, oneAtATime: (task) => task(), ...clock }
  const started = performance.now()
  const begun = processorSeconds()
  const kept = { folder: record.scratchFolder, id, most: 200_000_000 }
  const file = await received(createReadStream(table), kept)
  const work = await TableImport.of({ id, name: "table.csv", file }, at)
  const columns = COLUMNS.map(([heading, field]) => ({ heading, field }))
  const mapping = {
    id,
    title: "Bench",
    rowIs: "visit",
    dateOrder: "year-month-day",
    decimalSign: ".",
    columns,
  }
  let read = 0
  const onProgress = ({ total }) => {
    // Rows are counted by bytes while they are read, children after that.
    if (total !== file.bytes && read === 0) read = processorSeconds()
  }
  await work.check(mapping, { isStopped: () => false, onProgress })
  const checked = processorSeconds()
  const { counts } = await work.run(person.id, { isStopped: () => false, onProgress: () => {} })
  const ended = processorSeconds()
  const seconds = (performance.now() - started) / 1000
  const memory = process.resourceUsage().maxRSS * 1024
  await work.dispose()
  const { count } = await database.queries
    .selectFrom("entries")
    .select(({ fn }) => fn.countAll().as("count"))
    .executeTakeFirstOrThrow()
  const again = await partsAgain(record)
  await database.close()
  return {
    seconds,
    processor: ended - begun,
    reading: read - begun,
    planning: checked - read,
    recording: ended - checked,
    ...again,
    visits: counts.visitsNew,
    entries: Number(count),
    memory,
    memoryAtStart,
  }
}

/** What each entry and each course cost by themselves, to tell where the time of the whole went. */
async function partsAgain(record) {
  const [{ canonicalJson }, { courseFrom }] = await Promise.all([
    import("../dist/record/canonical-json.js"),
    import("../dist/interop/course/read-course.js"),
  ])
  const times = { schema: 0, hashing: 0 }
  const children = await record.everyChild()
  for (let start = 0; start < children.length; start += 100) {
    const some = children.slice(start, start + 100)
    const entries = await record.currentEntries(some.map(({ id }) => id))
    const begun = processorSeconds()
    for (const all of entries.values())
      for (const { body } of all) createHash("sha256").update(canonicalJson(body)).digest("hex")
    const hashed = processorSeconds()
    for (const { id, born, sex } of some) {
      const visits = entries.get(id).flatMap(({ kind, body }) => (kind === "visit" ? [body] : []))
      courseFrom({ lengthwise: 1, child: { born, sex }, visits, treatments: [] }, { today: TODAY })
    }
    times.hashing += hashed - begun
    times.schema += processorSeconds() - hashed
  }
  return times
}

function processorSeconds() {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

async function inserted(table, place) {
  const database = new Database(join(place, "bare.sqlite"))
  database.pragma("journal_mode = WAL")
  database.pragma("synchronous = FULL")
  database.exec(`CREATE TABLE rows (${COLUMNS.map(([, field]) => `"${field}" TEXT`).join(", ")})`)
  const insert = database.prepare(`INSERT INTO rows VALUES (${COLUMNS.map(() => "?").join(", ")})`)
  const started = performance.now()
  const begun = processorSeconds()
  database.exec("BEGIN")
  let isHeading = true
  for await (const line of createInterface({ input: createReadStream(table) })) {
    if (!isHeading) insert.run(line.split(","))
    isHeading = false
  }
  database.exec("COMMIT")
  const seconds = (performance.now() - started) / 1000
  const processor = processorSeconds() - begun
  database.close()
  return { seconds, processor, memory: process.resourceUsage().maxRSS * 1024 }
}
