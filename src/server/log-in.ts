import { say } from "../engine/say.js"
import type { Person, PracticeRecord } from "../record/index.js"
import type { Clock } from "./clock.js"
import { passwordFits } from "./passwords.js"
import { Refusal } from "./refusal.js"

/**
 * Guessing is slowed per name, never per practice: from the fifth wrong password on the name waits 30 seconds,
 * twice as long each further time, at most a quarter of an hour. Common practice, no source.
 */
const FREE_ATTEMPTS = 5
const FIRST_WAIT_MS = 30_000
const LONGEST_WAIT_MS = 15 * 60_000
const FORGOTTEN_AFTER_MS = 24 * 3_600_000

interface Attempt {
  readonly name: string
  readonly password: string
}

/** The person whose name and password these are; otherwise a refusal that does not say which of them is wrong. */
export function logInCheck({
  record,
  clock,
  oneAtATime,
}: {
  readonly record: PracticeRecord
  readonly clock: Clock
  readonly oneAtATime: <T>(task: () => Promise<T>) => Promise<T>
}): (attempt: Attempt) => Promise<Person> {
  return async ({ name, password }) => {
    // Counted before the password is looked at, so that many guesses at once are not one guess.
    await oneAtATime(() => countAttempt({ record, nowMs: clock.nowMs(), name }))
    const found = await record.personByLogIn(name)
    if (!(await passwordFits(password, found?.passwordHash ?? null)) || !found)
      throw new Refusal(401, [
        { path: "password", value: null, allowed: "", message: say("name or password is not right") },
      ])
    await record.clearLogInAttempts(name)
    return found
  }
}

async function countAttempt({
  record,
  nowMs,
  name,
}: {
  readonly record: PracticeRecord
  readonly nowMs: number
  readonly name: string
}): Promise<void> {
  const instant = (ms: number) => new Date(ms).toISOString()
  const earlier = await record.logInAttempts(name)
  const lockedMs = earlier?.lockedUntil ? Date.parse(earlier.lockedUntil) - nowMs : 0
  if (lockedMs > 0) {
    const seconds = Math.ceil(lockedMs / 1000)
    const message = say(
      "too many wrong passwords for this name; try again in {seconds, plural, one {# second} other {# seconds}}",
      { seconds },
    )
    throw new Refusal(429, [{ path: "name", value: name, allowed: "", message }], seconds)
  }
  const forgotten = !earlier || Date.parse(earlier.lastFailedAt) < nowMs - FORGOTTEN_AFTER_MS
  const failures = forgotten ? 1 : earlier.failures + 1
  const waitMs = Math.min(FIRST_WAIT_MS * 2 ** (failures - FREE_ATTEMPTS), LONGEST_WAIT_MS)
  await record.setLogInAttempts({
    logIn: name,
    attempts: {
      failures,
      lastFailedAt: instant(nowMs),
      lockedUntil: failures < FREE_ATTEMPTS ? null : instant(nowMs + waitMs),
    },
    forgetBefore: instant(nowMs - FORGOTTEN_AFTER_MS),
  })
}
