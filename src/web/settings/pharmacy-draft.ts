import type { MeasuringDevice } from "../../engine/compounding/devices.js"
import type { Pharmacy } from "../../engine/practice-rules.js"
import { withDecimalSign } from "../../engine/say.js"
import { parseNumber } from "../visit/readings.js"

/** A pharmacy as it is typed. Tolerances are typed in per cent and kept as shares. */
export interface PharmacyDraft {
  readonly name: string
  readonly contact: string
  readonly stocks: string
  readonly smallestVolumeMl: string
  readonly bottleMl: string
  readonly isPreserved: boolean
  readonly daysAfterOpening: string
  readonly leadDays: string
  readonly stockTolerance: string
  readonly devices: readonly DeviceDraft[]
}

export interface DeviceDraft {
  readonly name: string
  readonly smallestVolumeMl: string
  readonly largestVolumeMl: string
  readonly graduationMl: string
  readonly tolerance: string
}

export const newDevice: DeviceDraft = {
  name: "",
  smallestVolumeMl: "",
  largestVolumeMl: "",
  graduationMl: "",
  tolerance: "",
}

export function draftOf(pharmacy: Pharmacy): PharmacyDraft {
  return {
    name: pharmacy.name,
    contact: pharmacy.contact ?? "",
    stocks: pharmacy.stockPercents.map(shown).join(" "),
    smallestVolumeMl: shown(pharmacy.smallestVolumeMl),
    bottleMl: shown(pharmacy.bottleMl),
    isPreserved: pharmacy.isPreserved,
    daysAfterOpening: String(pharmacy.daysAfterOpening),
    leadDays: String(pharmacy.leadDays),
    stockTolerance: inPercent(pharmacy.stockTolerance),
    devices: (pharmacy.devices ?? []).map((device) => ({
      name: device.name ?? "",
      smallestVolumeMl: shown(device.smallestVolumeMl),
      largestVolumeMl: device.largestVolumeMl == null ? "" : shown(device.largestVolumeMl),
      graduationMl: shown(device.graduationMl),
      tolerance: inPercent(device.toleranceFraction),
    })),
  }
}

/** What is sent. What is no number is sent as typed, so that the server refuses it at its field. */
export function pharmacyOfDraft(id: string, draft: PharmacyDraft): Pharmacy {
  const { name, contact, stocks, isPreserved, stockTolerance, devices } = draft
  return {
    id,
    name: name.trim(),
    leadDays: typed(draft.leadDays),
    stockPercents: stocks
      .split(/[\s;]+/)
      .filter(Boolean)
      .map(typed),
    smallestVolumeMl: typed(draft.smallestVolumeMl),
    bottleMl: typed(draft.bottleMl),
    isPreserved,
    daysAfterOpening: typed(draft.daysAfterOpening),
    ...(devices.length > 0 ? { devices: devices.map(deviceOf) } : {}),
    ...(stockTolerance.trim() === "" ? {} : { stockTolerance: asShare(stockTolerance) }),
    ...(contact.trim() === "" ? {} : { contact: contact.trim() }),
  }
}

function deviceOf(draft: DeviceDraft): MeasuringDevice {
  return {
    name: draft.name.trim(),
    smallestVolumeMl: typed(draft.smallestVolumeMl),
    ...(draft.largestVolumeMl.trim() === "" ? {} : { largestVolumeMl: typed(draft.largestVolumeMl) }),
    graduationMl: typed(draft.graduationMl),
    toleranceFraction: asShare(draft.tolerance),
  }
}

/** Whether every figure is one, so that an example can be worked. */
export function isWorkable({ stockPercents, devices = [], ...rest }: Pharmacy): boolean {
  const figures = [
    ...stockPercents,
    rest.smallestVolumeMl,
    rest.bottleMl,
    ...(rest.stockTolerance === undefined ? [] : [rest.stockTolerance]),
    ...devices.flatMap((device) => [device.smallestVolumeMl, device.graduationMl, device.toleranceFraction]),
  ]
  return stockPercents.length > 0 && figures.every((figure) => Number.isFinite(figure))
}

/** A figure in its field, as it would be typed in the language of the page. */
const shown = (figure: number): string => withDecimalSign(String(figure))

const typed = (text: string): number => parseNumber(text) ?? (text.trim() as unknown as number)

function asShare(text: string): number {
  const percent = parseNumber(text)
  return percent === null ? (text.trim() as unknown as number) : Number((percent / 100).toPrecision(12))
}

const inPercent = (share: number | null | undefined): string =>
  share == null ? "" : shown(Number((share * 100).toPrecision(12)))
