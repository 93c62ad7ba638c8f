import { protocolFor } from "../../engine/protocol/choose-protocol.js"
import type { FhirContext } from "../../interop/fhir/context.js"
import { patientKey } from "../../interop/fhir/logical-id.js"
import { type FhirResource, fhirResources } from "../../interop/fhir/write-fhir.js"
import type { ListedChild } from "../../record/index.js"
import type { Context } from "../context.js"

/** Courses read at once: enough to be quick, few enough to stay small. */
const BATCH = 50

/** The children of the practice in an order that new children do not disturb. */
export async function childrenInOrder({ record }: Pick<Context, "record">): Promise<readonly ListedChild[]> {
  return (await record.everyChild()).toSorted((a, b) => (a.id < b.id ? -1 : 1))
}

export interface ChildResources {
  readonly child: ListedChild
  readonly resources: readonly FhirResource[]
}

/** The resources of each child, one after another: never more than a few children are in memory. */
export async function* resourcesOf(
  { record, clock, rules }: Pick<Context, "record" | "clock" | "rules">,
  children: readonly ListedChild[],
): AsyncGenerator<ChildResources> {
  const inForce = await rules.now()
  const people = Object.fromEntries((await record.people()).map(({ id, name }) => [id, name]))
  const { id, name } = record.practice
  const today = clock.today()
  for (let from = 0; from < children.length; from += BATCH) {
    const batch = children.slice(from, from + BATCH)
    const courses = await record.coursesOf(batch.map((child) => child.id))
    for (const child of batch) {
      const course = courses.get(child.id)
      if (!course) continue
      const about: FhirContext = {
        id: child.id,
        identity: { name: child.name, ...(child.number === null ? {} : { number: child.number }) },
        practice: { id, name },
        people,
        protocol: protocolFor({ course, today, rules: inForce }),
        asOf: today,
      }
      yield { child, resources: fhirResources(course, about) }
    }
    // Others are answered in between.
    await new Promise(setImmediate)
  }
}

/** Whether a logical id is that of a child's own resource, and not of an instrument or a person. */
export const isOfChild = (child: string, logicalId: string): boolean =>
  logicalId === child || logicalId.startsWith(`${patientKey(child)}-`)

/** The child whose resource has this logical id, undefined when it is no child's own. */
export const childOfId = (children: readonly ListedChild[], logicalId: string): ListedChild | undefined =>
  children.find(({ id }) => isOfChild(id, logicalId))
