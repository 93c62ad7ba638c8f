import { type ComponentType, lazy } from "react"
import type { PracticeAnswer } from "../../server/contract/practice.js"
import type { RulesAnswer } from "../../server/contract/rules.js"

/** What every part of the settings is given. */
export interface SettingsPartProps {
  readonly practice: PracticeAnswer
  readonly rules: RulesAnswer
  /** Called with what to say once something is recorded; the part stays open. */
  readonly onDone: (message: string) => void
}

export interface SettingsPart {
  readonly title: string
  readonly Page: ComponentType<SettingsPartProps>
}

/** The parts of the settings by their place in the address, in the order of the menu. */
export const SETTINGS_PARTS: Readonly<Record<string, SettingsPart>> = {
  pharmacies: settingsPart("Pharmacies", () =>
    import("./pharmacies-part.js").then((module) => module.PharmaciesPart),
  ),
  examinations: settingsPart("Examinations", () =>
    import("./examinations-part.js").then((module) => module.ExaminationsPart),
  ),
  contacts: settingsPart("Contacts", () =>
    import("./contacts-part.js").then((module) => module.ContactsPart),
  ),
  wording: settingsPart("Consent wording", () =>
    import("./wording-part.js").then((module) => module.WordingPart),
  ),
  fees: settingsPart("Fees", () => import("./fees-part.js").then((module) => module.FeesPart)),
}

/** A part that is loaded when it is first opened: `() => import("./consent-part.js").then((module) => module.ConsentPart)`. */
export function settingsPart(
  title: string,
  load: () => Promise<ComponentType<SettingsPartProps>>,
): SettingsPart {
  return { title, Page: lazy(async () => ({ default: await load() })) }
}
