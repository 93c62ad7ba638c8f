import { type Loose, record, records } from "../../course/loose.js"

/** Finds what a resource refers to. One step only, so that references in a circle lead nowhere. */
export interface Look {
  readonly follow: (reference: unknown) => Loose | undefined
  readonly deviceName: (reference: unknown) => string | undefined
}

export function lookBy(follow: Look["follow"]): Look {
  return {
    follow,
    deviceName: (reference) => {
      if (reference === undefined) return undefined
      const { display } = record(reference)
      if (typeof display === "string") return display
      const device = follow(reference)
      return device && nameOf(device)
    },
  }
}

/** Sees only the resources given; for reading back what was just written. */
export const lookAmong = (resources: readonly object[]): Look =>
  lookBy((reference) => {
    const address = record(reference).reference
    return resources.map(record).find(({ resourceType, id }) => address === `${resourceType}/${id}`)
  })

function nameOf({ deviceName, type, manufacturer, modelNumber, serialNumber }: Loose): string | undefined {
  const named = records(deviceName).find(({ name }) => typeof name === "string")?.name
  const text = record(type).text
  const made = [manufacturer, modelNumber, serialNumber].filter((part) => typeof part === "string").join(" ")
  return [named, text, made].find((name): name is string => typeof name === "string" && name !== "")
}
