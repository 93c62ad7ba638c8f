import { type ComponentType, lazy } from "react"
import { msg } from "../../engine/say.js"
import type { ChildPartProps } from "./child-part-props.js"

export interface ChildPart {
  readonly title: string
  readonly Page: ComponentType<ChildPartProps>
}

/** The parts of a child's page beside the course itself, by their place in the address, in the order of the menu. Each is loaded when it is opened. */
export const CHILD_PARTS: Readonly<Record<string, ChildPart>> = {
  safety: part(msg("Safety"), () => import("../safety/safety-part.js").then((module) => module.SafetyPart)),
  choices: part(msg("Choices"), () =>
    import("../choices/choices-part.js").then((module) => module.ChoicesPart),
  ),
  consent: part(msg("Consent"), () =>
    import("../consent/consent-part.js").then((module) => module.ConsentPart),
  ),
  supply: part(msg("Supply"), () => import("../supply/supply-part.js").then((module) => module.SupplyPart)),
  "family-links": part(msg("Family page"), () =>
    import("../family/links-part.js").then((module) => module.LinksPart),
  ),
  papers: part(msg("Papers"), () => import("../papers/papers-part.js").then((module) => module.PapersPart)),
  "family-contact": part(msg("Contact"), () =>
    import("../messages/family-contact-part.js").then((module) => module.FamilyContactPart),
  ),
  cost: part(msg("Cost"), () => import("../cost/cost-part.js").then((module) => module.CostPart)),
}

/** A part that is loaded when it is first opened: `() => import("./consent-part.js").then((module) => module.ConsentPart)`. */
function part(title: string, load: () => Promise<ComponentType<ChildPartProps>>): ChildPart {
  return { title, Page: lazy(async () => ({ default: await load() })) }
}
