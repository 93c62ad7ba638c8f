/** The Today list of a practice with 5,000 active children: the first reading, then 400 questions, p50 and p95. */
import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { demoCourses } from "../dist/engine/simulate/demo.js"
import { evidence } from "../dist/evidence/index.js"
import { addPractice, migrate, openEmbedded, practiceRecord } from "../dist/record/index.js"
import { buildApp } from "../dist/server/app.js"
import { loadDemo } from "../dist/server/demo.js"
import { passwordHash } from "../dist/server/passwords.js"

const CHILDREN = 5000
const QUESTIONS = 400
const TODAY = "2026-11-25"
const PASSWORD = "bench bench bench bench"

const folder = mkdtempSync(join(tmpdir(), "lengthwise-bench-"))
const database = openEmbedded(folder)
try {
  await migrate(database)
  const practice = { id: crypto.randomUUID(), name: "Bench", latitude: 51.5, settings: {} }
  const createdAt = `${TODAY}T08:00:00.000Z`
  await addPractice(database.queries, { ...practice, createdAt })
  const record = practiceRecord(database, practice)
  const person = { id: crypto.randomUUID(), name: "Bench", logIn: "bench", role: "clinician" }
  await record.addPerson({ ...person, passwordHash: await passwordHash(PASSWORD), createdAt })
  // The invented children over and over: what is measured is the load, not the stories.
  const invented = demoCourses({ today: TODAY, seed: 7, evidence })
  const children = Array.from({ length: CHILDREN }, (_, n) => ({
    ...invented[n % invented.length],
    number: `B-${n}`,
  }))
  await loadDemo({ record, children: () => children, nowMs: Date.parse(`${TODAY}T09:00:00Z`) })

  const clock = { nowMs: () => Date.parse(`${TODAY}T09:00:00Z`), today: () => TODAY }
  const app = await buildApp({ record, clock })
  const address = await app.listen({ port: 0 })
  const logIn = await fetch(`${address}/api/session`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ name: "bench", password: PASSWORD }),
  })
  const cookie = logIn.headers.get("set-cookie").split(";")[0]
  const ask = async (query) => {
    const started = performance.now()
    const answer = await (await fetch(`${address}/api/today${query}`, { headers: { cookie } })).json()
    return { ms: performance.now() - started, answer }
  }

  const started = performance.now()
  const waited = []
  for (;;) {
    const { ms, answer } = await ask("")
    waited.push(ms)
    if (answer.read === answer.total) break
    await new Promise((done) => setTimeout(done, 1000))
  }
  const firstReading = (performance.now() - started) / 1000
  console.log(
    `Today, ${CHILDREN} children: first reading of them all ${firstReading.toFixed(1)} s, meanwhile the list answers in at most ${Math.max(...waited).toFixed(0)} ms with what it has`,
  )

  const queries = [
    "",
    "?role=clinician",
    "?role=front-desk",
    "?search=brand",
    "?group=see",
    "?group=tell&page=3",
  ]
  const times = []
  for (let n = 0; n < QUESTIONS; n++) times.push((await ask(queries[n % queries.length])).ms)
  console.log(`Today, a question, one at a time: ${spread(times)}  (a person notices from about 100 ms)`)

  const together = []
  for (let n = 0; n < QUESTIONS / 8; n++)
    together.push(...(await Promise.all(queries.concat(queries.slice(0, 2)).map(ask))).map(({ ms }) => ms))
  console.log(`Today, eight people at once: ${spread(together)}`)

  // One child changes between two questions, as on a working day.
  const child = (await (await fetch(`${address}/api/children`, { headers: { cookie } })).json()).children[0]
  const afterChange = []
  for (let n = 0; n < 40; n++) {
    await fetch(`${address}/api/children/${child.id}/payments`, {
      method: "POST",
      headers: { cookie, "content-type": "application/json" },
      body: JSON.stringify({ date: TODAY, cents: 100 + n, currency: "EUR" }),
    })
    afterChange.push((await ask("")).ms)
  }
  console.log(
    `Today, right after something was recorded: ${spread(afterChange)}; bound by reading the list of children and sorting the rows anew`,
  )
  await app.close()
} finally {
  await database.close()
  rmSync(folder, { recursive: true })
}

function spread(times) {
  const sorted = times.toSorted((a, b) => a - b)
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))].toFixed(1)
  return `p50 ${at(0.5)} ms, p95 ${at(0.95)} ms, worst of ${sorted.length} ${sorted.at(-1).toFixed(1)} ms`
}
