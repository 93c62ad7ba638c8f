import type { Person, PracticeRecord } from "../../record/index.js"

/** Holds a blank, so that nobody types it at a log-in. */
const LOG_IN = "instruments (no log-in)"

/** Whose name stands beside what an instrument sent: a person of the practice that nobody can log in as, made once. */
export async function instrumentsPerson(record: PracticeRecord, at: string): Promise<Person> {
  const known = await record.personByLogIn(LOG_IN)
  if (known) return known
  const person = { id: crypto.randomUUID(), name: "Instruments", logIn: LOG_IN, role: "clinician" } as const
  await record.addPerson({ ...person, passwordHash: null, createdAt: at })
  return person
}
