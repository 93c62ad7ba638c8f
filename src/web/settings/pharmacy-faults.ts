import { Refused } from "../client.js"

const DEVICE_FIELDS: Readonly<Record<string, string>> = {
  name: "the name",
  smallestVolumeMl: "from",
  largestVolumeMl: "to",
  graduationMl: "read to",
  toleranceFraction: "within",
}

/**
 * The refusal of a pharmacy as its form says it: a fault inside a list belongs to the list's field and names the device, and
 * a share is asked for in per cent, as it is typed.
 */
export function pharmacyRefusal(error: unknown): unknown {
  if (!(error instanceof Refused)) return error
  const problems = error.problems.map((fault) => {
    const inside = /^(body\.\w+)\[(\d+)\](?:\.(\w+))?$/.exec(fault.path)
    const allowed = fault.allowed.replace("a share from 0 to below 1", "a number from 0 to below 100")
    if (!inside) return { ...fault, allowed }
    const [, path = "", index, field] = inside
    const which =
      field === undefined ? "" : ` (device ${Number(index) + 1}, ${DEVICE_FIELDS[field] ?? field})`
    return { ...fault, path, allowed: allowed + which }
  })
  return new Refused(error.status, error.title, problems)
}
