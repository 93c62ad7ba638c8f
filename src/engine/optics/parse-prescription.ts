import type { Problem } from "../problem.js"
import { say } from "../say.js"
import { type SpheroCylinder, spheroCylinder } from "./sphero-cylinder.js"

export type ParsedPrescription =
  | { readonly refraction: SpheroCylinder }
  | { readonly problems: readonly Problem[] }

// Limits against slips of the pen such as -225, not statements about eyes (common practice, no source).
const STRONGEST_SPHERE_D = 30
const STRONGEST_CYLINDER_D = 15

// Longer than anyone writes one; keeps the search for its parts short on junk.
const LONGEST_TEXT = 80

const NUMBER = String.raw`[+-]?\s*(?:\d+\.?\d*|\.\d+)`
const PRESCRIPTION = new RegExp(
  String.raw`^(?<sphere>plano|plan|pl\.?|${NUMBER})\s*(?:ds|sph|d)?` +
    String.raw`(?:(?:\s*/\s*|\s+|(?=[+-]))(?<cylinder>${NUMBER})\s*(?:dc|cyl|d)?)?` +
    String.raw`(?:\s*(?:x|@|axis|ax)\s*(?<axis>${NUMBER})?|(?:\s*/\s*|\s+)(?<bareAxis>\d+))?$`,
)

/**
 * Reads one prescription: "-2.25 -0.50 x 180", "-2.25/-0.50x180", "+1.00 DS", "-3.00", "plano", "pl -0.50 x 90";
 * also with a typographic minus, a decimal comma, a degree sign, "@" or no sign before the axis. Either sign of
 * cylinder is read and kept. Axis 0 is read as 180. A power that is not 0 must have its sign, because a forgotten
 * minus is the costliest slip there is. The answer is the refraction or every fault found; `path` goes before the
 * path of each fault.
 *
 * @example
 * parsePrescription("pl -0.50 x 90") // => { refraction: { sphere: 0, cylinder: -0.5, axis: 90 } }
 */
export function parsePrescription(text: string, path = ""): ParsedPrescription {
  const parts = text.length > LONGEST_TEXT ? undefined : PRESCRIPTION.exec(plainText(text))?.groups
  const problem = problemAt(path)
  if (parts === undefined) {
    const allowed = say('sphere, or sphere cylinder x axis, such as "-3.00" or "-2.25 -0.50 x 180"')
    return { problems: [problem({ part: "prescription", value: text.slice(0, LONGEST_TEXT), allowed })] }
  }
  const axisText = parts.axis ?? parts.bareAxis
  const sphere = powerOf(parts.sphere!)
  const cylinder = powerOf(parts.cylinder ?? "0")
  const problems = [
    ...powerFaults(parts.sphere!, STRONGEST_SPHERE_D).map((allowed) =>
      problem({ part: "sphere", value: parts.sphere!, allowed }),
    ),
    ...powerFaults(parts.cylinder ?? "0", STRONGEST_CYLINDER_D).map((allowed) =>
      problem({ part: "cylinder", value: parts.cylinder!, allowed }),
    ),
    ...(axisText !== undefined && !isAxis(axisText)
      ? [
          problem({
            part: "axis",
            value: axisText,
            allowed: say("a whole degree from 1 to 180, or 0 for 180"),
          }),
        ]
      : []),
    ...(cylinder !== 0 && axisText === undefined
      ? [
          problem({
            part: "axis",
            value: null,
            allowed: say("an axis from 1 to 180 after the cylinder {cylinder}", {
              cylinder: parts.cylinder ?? "",
            }),
          }),
        ]
      : []),
    ...(parts.cylinder === undefined && axisText !== undefined
      ? [
          problem({
            part: "cylinder",
            value: null,
            allowed: say("a cylinder before the axis {axis}", { axis: axisText }),
          }),
        ]
      : []),
  ]
  if (problems.length > 0) return { problems }
  return { refraction: spheroCylinder({ sphere, cylinder, axis: Number(axisText ?? 180) }) }
}

function plainText(text: string): string {
  return text
    .replace(/[\u2010-\u2014\u2212\uFE63\uFF0D]/g, "-")
    .replace(/\uFF0B/g, "+")
    .replace(/[\u00D7\u2715\u2A2F]/g, "x")
    .replace(/[\u00B0\u00BA\u02DA]/g, " ")
    .replace(/(\d),(?=\d)/g, "$1.")
    .replace(/,/g, " ")
    .toLowerCase()
    .trim()
}

function powerOf(part: string): number {
  return part.startsWith("p") ? 0 : Number(part.replace(/\s/g, ""))
}

function powerFaults(part: string, strongest: number): readonly string[] {
  const power = powerOf(part)
  const allowed = say("a power with its sign from -{strongest} to +{strongest} D", { strongest })
  const hasSign = power === 0 || /^[+-]/.test(part)
  return hasSign && Math.abs(power) <= strongest ? [] : [allowed]
}

function isAxis(part: string): boolean {
  return /^\d+$/.test(part) && Number(part) <= 180
}

function problemAt(path: string) {
  return ({
    part,
    value,
    allowed,
  }: {
    part: "sphere" | "cylinder" | "axis" | "prescription"
    value: string | null
    allowed: string
  }): Problem => {
    const at = part === "prescription" ? path || part : path === "" ? part : `${path}.${part}`
    const message =
      value === null
        ? say("{path} is missing: {allowed} is needed", { path: at, allowed })
        : say('{path} must be {allowed}, not "{value}"', { path: at, allowed, value })
    return { path: at, value, allowed, message }
  }
}
