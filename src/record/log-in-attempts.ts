import type { Kysely } from "kysely"
import { logInKey } from "./people.js"
import type { Tables } from "./tables.js"

export interface LogInAttempts {
  readonly failures: number
  readonly lastFailedAt: string
  readonly lockedUntil: string | null
}

export async function logInAttempts(
  queries: Kysely<Tables>,
  practice: string,
  logIn: string,
): Promise<LogInAttempts | null> {
  const row = await queries
    .selectFrom("log_in_attempts")
    .selectAll()
    .where("practice", "=", practice)
    .where("log_in", "=", logInKey(logIn))
    .executeTakeFirst()
  return row
    ? { failures: row.failures, lastFailedAt: row.last_failed_at, lockedUntil: row.locked_until }
    : null
}

/** Stores the count for a name and forgets the names last tried before `forgetBefore`. */
export async function setLogInAttempts(
  queries: Kysely<Tables>,
  practice: string,
  {
    logIn,
    attempts,
    forgetBefore,
  }: {
    readonly logIn: string
    readonly attempts: LogInAttempts
    readonly forgetBefore: string
  },
): Promise<void> {
  const values = {
    failures: attempts.failures,
    last_failed_at: attempts.lastFailedAt,
    locked_until: attempts.lockedUntil,
  }
  await queries.transaction().execute(async (transaction) => {
    await transaction
      .deleteFrom("log_in_attempts")
      .where("practice", "=", practice)
      .where("last_failed_at", "<", forgetBefore)
      .execute()
    await transaction
      .insertInto("log_in_attempts")
      .values({ practice, log_in: logInKey(logIn), ...values })
      .onConflict((row) => row.columns(["practice", "log_in"]).doUpdateSet(values))
      .execute()
  })
}

export async function clearLogInAttempts(
  queries: Kysely<Tables>,
  practice: string,
  logIn: string,
): Promise<void> {
  await queries
    .deleteFrom("log_in_attempts")
    .where("practice", "=", practice)
    .where("log_in", "=", logInKey(logIn))
    .execute()
}
