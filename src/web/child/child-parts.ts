import { type ComponentType, lazy } from "react"
import type { ChildPartProps } from "./child-part-props.js"

export interface ChildPart {
  readonly title: string
  readonly Page: ComponentType<ChildPartProps>
}

/** The parts of a child's page beside the course itself, by their place in the address, in the order of the menu. Each is loaded when it is opened. */
export const CHILD_PARTS: Readonly<Record<string, ChildPart>> = {
  safety: part("Safety", () => import("../safety/safety-part.js").then((module) => module.SafetyPart)),
  choices: part("Choices", () => import("../choices/choices-part.js").then((module) => module.ChoicesPart)),
  consent: part("Consent", () => import("../consent/consent-part.js").then((module) => module.ConsentPart)),
  supply: part("Supply", () => import("../supply/supply-part.js").then((module) => module.SupplyPart)),
  cost: part("Cost", () => import("../cost/cost-part.js").then((module) => module.CostPart)),
}

/** A part that is loaded when it is first opened: `() => import("./consent-part.js").then((module) => module.ConsentPart)`. */
function part(title: string, load: () => Promise<ComponentType<ChildPartProps>>): ChildPart {
  return { title, Page: lazy(async () => ({ default: await load() })) }
}
