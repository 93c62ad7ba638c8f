import type { ProtocolStep, Stage } from "./protocol.js"

/**
 * What a step is for: as the protocol says, else found from its anchor and its measures. A step counted from the stop is
 * the washout; one on treatment that measures no growth is a safety check. `discharge` is only ever said, never found.
 *
 * @example
 * stageOf({ ...step, anchor: "stop" }) // => "washout"
 */
export function stageOf({
  stage,
  anchor,
  kind,
  measures,
}: Pick<ProtocolStep, "stage" | "anchor" | "kind" | "measures">): Stage {
  if (stage !== undefined) return stage
  if (anchor === "before-start") return "baseline"
  if (anchor === "stop") return "washout"
  const isGrowthMeasured = measures.some((measure) => GROWTH.includes(measure))
  const isOnTreatment = anchor !== "last-visit-off-treatment"
  return kind === "examination" && isOnTreatment && !isGrowthMeasured ? "safety-check" : "review"
}

const GROWTH = ["axial-length", "refraction", "cycloplegic-refraction"]
