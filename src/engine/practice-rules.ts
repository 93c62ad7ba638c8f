import type { MeasuringDevice } from "./compounding/devices.js"
import type { CalendarDate, TreatmentKind } from "./course.js"
import type { Measure, Protocol, Stage } from "./protocol/protocol.js"

/**
 * What a practice has set for itself, each part a dated, versioned paper of its own in the record. Empty lists mean
 * that what ships is in force. Nothing here is a published figure.
 */
export interface PracticeRules {
  /** The practice's own protocols, beside those that ship; one with the id of a shipped one takes its place. */
  readonly protocols: readonly Protocol[]
  /** In any order; the one in force on a day is the last that began by then. */
  readonly feeSchedules: readonly FeeSchedule[]
  /** Every version ever in force; the default wording where a practice has none. */
  readonly consentWordings: readonly ConsentWording[]
  readonly pharmacies: readonly Pharmacy[]
  /** Duties of the evidence (such as CD-028) switched on or off by the practice; absent ones keep their default. */
  readonly examinationSwitches: Readonly<Record<string, boolean>>
  readonly contacts: Contacts
  /** What stands at the head of every paper; the practice's name alone when there is none. */
  readonly letterhead?: PracticeLetterhead | undefined
  /** The practice's own order and words of a document, one for each document and language. */
  readonly templates?: readonly DocumentTemplate[] | undefined
  /** How families are written to; nobody is until a practice has set it. */
  readonly messages?: MessageRules | undefined
  /** How instruments of the practice send what they measured; nothing is received until a practice has set it. */
  readonly instruments?: InstrumentRules | undefined
  /** How tables of other programs were read, to be used again. */
  readonly mappings?: readonly TableMapping[] | undefined
}

/** The DICOM receiver. Certificates stand on the machine and are named where the server is started. */
export interface InstrumentRules {
  readonly isOn: boolean
  readonly port: number
  /** The title instruments call this practice by. */
  readonly title: string
  /** Titles of the instruments that may send; nobody else is answered. */
  readonly allowed: readonly string[]
}

export const DATE_ORDERS = ["year-month-day", "day-month-year", "month-day-year"] as const
export type DateOrder = (typeof DATE_ORDERS)[number]

/** How the columns of a table are read. */
export interface TableMapping {
  readonly id: string
  readonly title: string
  /** Whether a row holds both eyes of a visit, or one eye and says which. */
  readonly rowIs: "visit" | "eye"
  readonly dateOrder: DateOrder
  readonly decimalSign: "." | ","
  readonly columns: readonly MappedColumn[]
}

export interface MappedColumn {
  /** The heading of the column, as it stands in the file. */
  readonly heading: string
  /** A field of `TABLE_FIELDS` in interop/table; a column without one is left out. */
  readonly field: string
  /** UCUM code where the column's unit is not the field's own. */
  readonly unit?: string | undefined
}

export interface PracticeLetterhead {
  /** Address, telephone and what else stands there, each a line. */
  readonly lines: readonly string[]
  /** SHA-256 of the stored picture. */
  readonly logo?: string | undefined
}

export interface DocumentTemplate {
  /** Kind of the document, such as "letter". */
  readonly document: string
  /** BCP 47. */
  readonly language: string
  /** The text a person edits; empty for the order that ships. */
  readonly text: string
}

export const COVERAGES = ["covered", "uncertain", "not-covered"] as const
export type Coverage = (typeof COVERAGES)[number]

export interface FeeSchedule {
  readonly title: string
  /** ISO 4217, one for the whole schedule. */
  readonly currency: string
  /** First day it is in force. */
  readonly from: CalendarDate
  readonly fees: readonly Fee[]
}

export interface Fee {
  readonly id: string
  readonly title: string
  /** In the smallest unit of the currency. */
  readonly cents: number
  readonly coverage: Coverage
  readonly charged: FeeOccasion
}

/** When a fee falls due. */
export type FeeOccasion =
  | { readonly kind: "examination"; readonly stages: readonly Stage[] }
  | { readonly kind: "measure"; readonly measure: Measure }
  /** One bottle; of any strength when none is named. */
  | { readonly kind: "bottle"; readonly concentrationPercent?: number | undefined }
  /** Spectacles, lenses: at the start and then again after so many months. */
  | { readonly kind: "device"; readonly treatment: TreatmentKind; readonly everyMonths: number }

export interface ConsentWording {
  readonly id: string
  readonly version: string
  readonly from: CalendarDate
  /** BCP 47. */
  readonly language: string
  readonly title: string
  readonly sections: readonly { readonly heading: string; readonly text: string }[]
  /** Whether families who consented to the version before are asked again. */
  readonly isMaterial: boolean
}

export interface Pharmacy {
  readonly id: string
  readonly name: string
  /** Days from order to bottle in the family's hands. */
  readonly leadDays: number
  readonly stockPercents: readonly number[]
  readonly smallestVolumeMl: number
  readonly bottleMl: number
  readonly isPreserved: boolean
  /** Days of use after opening, as this pharmacy states them. */
  readonly daysAfterOpening: number
  /** What it measures with, in place of `smallestVolumeMl` and the usual tolerance. */
  readonly devices?: readonly MeasuringDevice[] | undefined
  /** How far its stock may be off its label, as a share of it (95 %); unknown when absent. */
  readonly stockTolerance?: number | undefined
  readonly contact?: string | undefined
}

export interface Contacts {
  /** Telephone of the poison centre of the practice's country. */
  readonly poisonCentre?: string | undefined
  /** Where a family calls for same-day care. */
  readonly urgent?: string | undefined
  /** ISO 3166-1 alpha-2. */
  readonly country?: string | undefined
}

export interface MessageRules {
  /** Off until a practice turns it on: then nothing is planned and nothing sent. */
  readonly isOn: boolean
  /** The practice as families know it. */
  readonly sender: string
  /** E-mail address that messages come from. */
  readonly from: string
  /** Where answers go; to `from` when absent. */
  readonly replyTo?: string | undefined
  readonly telephone: string
  /** IANA, such as Europe/Dublin. */
  readonly timeZone: string
  /** By the clock on the wall, "HH:MM"; may reach over midnight. Nothing is sent in these hours. */
  readonly quietFrom: string
  readonly quietTo: string
  /** How many days before a visit's window opens, and before it is due, a family is reminded. */
  readonly daysBefore: number
}

/** What is in force until a practice sets anything. */
export const noRules: PracticeRules = {
  protocols: [],
  feeSchedules: [],
  consentWordings: [],
  pharmacies: [],
  examinationSwitches: {},
  contacts: {},
}
