import { addPractice, migrate, openEmbedded, practiceRecord } from "../../src/record/index.js"

// A process of its own that records visits until it is killed, and names each on stdout once it is acknowledged.
const [folder = "", childId = ""] = process.argv.slice(2)
const database = openEmbedded(folder)
await migrate(database)
const practice = { id: "practice", name: "Practice", latitude: null, settings: {} }
const recordedAt = "2025-01-10T10:00:00.000Z"
const record = practiceRecord(database, practice)
if ((await record.people()).length === 0) {
  await addPractice(database.queries, { ...practice, createdAt: recordedAt })
  const person = { id: "author", name: "Author", logIn: "author", role: "clinician" } as const
  await record.addPerson({ ...person, passwordHash: null, createdAt: recordedAt })
}
const common = { child: childId, author: "author", recordedAt } as const
await record.append([
  { ...common, kind: "child", id: childId, body: { name: "Child", born: "1990-01-01", sex: "female" } },
])
for (let day = 0; ; day++) {
  const date = new Date(Date.UTC(2000, 0, 1 + day)).toISOString().slice(0, 10)
  const [first, second] = [crypto.randomUUID(), crypto.randomUUID()]
  const saved = await record.append([
    { ...common, kind: "visit", id: first, body: { date } },
    { ...common, kind: "supply", id: second, body: { dispensed: date } },
  ])
  if (saved.kind !== "saved") throw new Error(JSON.stringify(saved))
  process.stdout.write(`${first} ${second}\n`)
}
