import { z } from "zod"
import { feeScheduleProblems } from "../engine/cost/fee-problems.js"
import type { FeeSchedule } from "../engine/practice-rules.js"
import type { Problem } from "../engine/problem.js"
import { pathText, problem, WHOLE_FILE } from "../interop/course/problem.js"
import { paperSchemas } from "../server/contract/rules.js"
import type { Io } from "./io.js"

/** Fee schedules from a file that holds one, or a list of several with the day from which each is in force. */
export async function feeFile(
  file: string,
  io: Io,
): Promise<{ readonly schedules: readonly FeeSchedule[] } | { readonly problems: readonly Problem[] }> {
  const source = await io.read(file)
  if ("problem" in source) return { problems: [inFees(source.problem)] }
  let held: unknown
  try {
    held = JSON.parse(source.text)
  } catch (cause) {
    const message = `The fees ${file} are not JSON: ${cause instanceof Error ? cause.message : String(cause)}.`
    return { problems: [{ path: WHOLE_FILE, value: null, allowed: "fee schedules in JSON", message }] }
  }
  const isList = Array.isArray(held)
  const all: readonly unknown[] = Array.isArray(held) ? held : [held]
  const read = all.map((one) => paperSchemas.fees.safeParse(one))
  const placed = (path: string, index: number) => (isList ? `[${index}]${path && `.${path}`}` : path)
  const fieldFaults = read.flatMap((result, index) =>
    (result.error?.issues ?? []).map(({ path, message }) =>
      problem({
        path: placed(pathText(path), index) || WHOLE_FILE,
        value: valueAt(all[index], path),
        allowed: message,
      }),
    ),
  )
  if (fieldFaults.length > 0) return { problems: fieldFaults.map(inFees) }
  const schedules = read.flatMap(({ data }) => (data ? [data as FeeSchedule] : []))
  const faults = schedules.flatMap((schedule, index) =>
    feeScheduleProblems({ schedule, others: schedules.slice(0, index), paidIn: [] }).map((fault) =>
      problem({ ...fault, path: placed(fault.path, index) }),
    ),
  )
  return faults.length > 0 ? { problems: faults.map(inFees) } : { schedules }
}

/** A file of fees as JSON Schema 2020-12; published at docs/fees.schema.json. */
export function feesJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...schedule } = z.toJSONSchema(paperSchemas.fees, {
    target: "draft-2020-12",
    io: "input",
    // The pattern of a date is a page long and says no more than its format does.
    override: ({ jsonSchema }) => {
      if (jsonSchema.format === "date") delete jsonSchema.pattern
    },
  })
  return {
    $schema,
    $id: "urn:lengthwise:fees:1",
    title: "Lengthwise fees, version 1",
    description:
      "One fee schedule of a practice, or several of them. Amounts are whole numbers in the smallest unit of the currency; on a day the schedule that began last is in force.",
    anyOf: [schedule, { type: "array", items: schedule }],
  }
}

// Two files are read, so the sentence of each fault says which of them it is in.
const inFees = (fault: Problem): Problem => ({ ...fault, message: `Fees: ${fault.message}` })

function valueAt(sent: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (inside, key) => (inside as Readonly<Record<PropertyKey, unknown>> | null | undefined)?.[key],
    sent,
  )
}
