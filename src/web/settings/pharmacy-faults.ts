import { msg, say } from "../../engine/say.js"
import { Refused } from "../client.js"

const DEVICE_FIELDS: Readonly<Record<string, string>> = {
  name: msg("the name|of a device"),
  smallestVolumeMl: msg("from|a volume"),
  largestVolumeMl: msg("to|a volume"),
  graduationMl: msg("read to|a volume"),
  toleranceFraction: msg("within|a share"),
}

const IS_A_SHARE = /^body\.(stockTolerance|devices\[\d+\]\.toleranceFraction)$/

/**
 * The refusal of a pharmacy as its form says it: a fault inside a list belongs to the list's field and names the device, and
 * a share is asked for in per cent, as it is typed.
 */
export function pharmacyRefusal(error: unknown): unknown {
  if (!(error instanceof Refused)) return error
  const problems = error.problems.map((fault) => {
    const inside = /^(body\.\w+)\[(\d+)\](?:\.(\w+))?$/.exec(fault.path)
    const allowed = IS_A_SHARE.test(fault.path) ? say("a number from 0 to below 100") : fault.allowed
    if (!inside) return { ...fault, allowed }
    const [, path = "", index, name] = inside
    if (name === undefined) return { ...fault, path, allowed }
    const known = DEVICE_FIELDS[name]
    const field = known === undefined ? name : say(known)
    const number = Number(index) + 1
    return {
      ...fault,
      path,
      allowed: say("{allowed} (device {number}, {field})", { allowed, number, field }),
    }
  })
  return new Refused(error.status, error.title, problems)
}
