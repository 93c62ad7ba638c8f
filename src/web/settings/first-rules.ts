import type { InstrumentRules } from "../../engine/practice-rules.js"

/** The port that IANA has registered for DICOM and that needs no privilege. */
const REGISTERED_PORT = 11112

/** What a practice begins with. */
export const firstRules = (port: number | null): InstrumentRules => ({
  isOn: true,
  port: port ?? REGISTERED_PORT,
  title: "LENGTHWISE",
  allowed: [],
})
