import { type ComponentType, lazy } from "react"
import { msg } from "../../engine/say.js"
import type { SettingsPartProps } from "./settings-part-props.js"

export interface SettingsPart {
  readonly title: string
  readonly Page: ComponentType<SettingsPartProps>
}

/** The parts of the settings by their place in the address, in the order of the menu. */
export const SETTINGS_PARTS: Readonly<Record<string, SettingsPart>> = {
  protocols: settingsPart(msg("Protocols"), () =>
    import("./protocols-part.js").then((module) => module.ProtocolsPart),
  ),
  pharmacies: settingsPart(msg("Pharmacies"), () =>
    import("./pharmacies-part.js").then((module) => module.PharmaciesPart),
  ),
  examinations: settingsPart(msg("Examinations"), () =>
    import("./examinations-part.js").then((module) => module.ExaminationsPart),
  ),
  contacts: settingsPart(msg("Contacts"), () =>
    import("./contacts-part.js").then((module) => module.ContactsPart),
  ),
  messages: settingsPart(msg("Messages"), () =>
    import("./messages-part.js").then((module) => module.MessagesPart),
  ),
  wording: settingsPart(msg("Consent wording"), () =>
    import("./wording-part.js").then((module) => module.WordingPart),
  ),
  letterhead: settingsPart(msg("Letterhead"), () =>
    import("../templates/letterhead-part.js").then((module) => module.LetterheadPart),
  ),
  templates: settingsPart(msg("Templates"), () =>
    import("../templates/templates-part.js").then((module) => module.TemplatesPart),
  ),
  instruments: settingsPart(msg("Instruments"), () =>
    import("./instruments-part.js").then((module) => module.InstrumentsPart),
  ),
  fees: settingsPart(msg("Fees"), () => import("./fees-part.js").then((module) => module.FeesPart)),
  connections: settingsPart(msg("Connections"), () =>
    import("./connections-part.js").then((module) => module.ConnectionsPart),
  ),
  research: settingsPart(msg("Research"), () =>
    import("./research-part.js").then((module) => module.ResearchPart),
  ),
  leave: settingsPart(msg("Archive"), () => import("./leave-part.js").then((module) => module.LeavePart)),
}

/** A part that is loaded when it is first opened: `() => import("./consent-part.js").then((module) => module.ConsentPart)`. */
function settingsPart(title: string, load: () => Promise<ComponentType<SettingsPartProps>>): SettingsPart {
  return { title, Page: lazy(async () => ({ default: await load() })) }
}
