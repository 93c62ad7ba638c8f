/** The resources this server answers with. A Patient is found by who it is, everything else by whose it is. */
export const SERVED_TYPES = [
  "Patient",
  "AdverseEvent",
  "Appointment",
  "Basic",
  "CarePlan",
  "ClinicalImpression",
  "Communication",
  "Condition",
  "Consent",
  "Device",
  "DeviceUseStatement",
  "DiagnosticReport",
  "Encounter",
  "Medication",
  "MedicationDispense",
  "MedicationRequest",
  "Observation",
  "Organization",
  "PlanDefinition",
  "Practitioner",
  "Provenance",
  "VisionPrescription",
] as const
export type ServedType = (typeof SERVED_TYPES)[number]

export const isServed = (type: string): type is ServedType =>
  (SERVED_TYPES as readonly string[]).includes(type)

interface SearchParameter {
  readonly name: string
  /** R4's search-param-type. */
  readonly type: "token" | "string" | "date" | "reference" | "number"
  readonly documentation: string
}

const OF_PATIENT: readonly SearchParameter[] = [
  { name: "_id", type: "token", documentation: "Logical id; several separated by commas." },
  {
    name: "identifier",
    type: "token",
    documentation: "The practice's number for the child, or the child's id.",
  },
  { name: "name", type: "string", documentation: "Words of the name, without regard to case and accents." },
  { name: "birthdate", type: "date", documentation: "A day written YYYY-MM-DD." },
  { name: "gender", type: "token", documentation: "female or male." },
]
const OF_OTHERS: readonly SearchParameter[] = [
  { name: "_id", type: "token", documentation: "Logical id; several separated by commas." },
  { name: "patient", type: "reference", documentation: "Patient/ID, or the id alone." },
]
const OF_OBSERVATION: readonly SearchParameter[] = [
  ...OF_OTHERS,
  { name: "code", type: "token", documentation: "code, or system|code." },
  {
    name: "date",
    type: "date",
    documentation: "A day written YYYY-MM-DD, with eq, ge, gt, le or lt before it.",
  },
]

/** What each type is searched by, beside `_count` and where a page begins. */
export const searchParameters = (type: ServedType): readonly SearchParameter[] =>
  type === "Patient" ? OF_PATIENT : type === "Observation" ? OF_OBSERVATION : OF_OTHERS
