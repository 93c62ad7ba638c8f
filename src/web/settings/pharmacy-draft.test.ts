import { describe, expect, it } from "vitest"
import { usualPharmacy } from "../../engine/compounding/usual-pharmacy.js"
import { Refused } from "../client.js"
import { draftOf, isWorkable, newDevice, pharmacyOfDraft } from "./pharmacy-draft.js"
import { pharmacyRefusal } from "./pharmacy-faults.js"

const full = {
  ...usualPharmacy,
  stockPercents: [0.1, 1],
  devices: [
    {
      name: "syringe 1 mL",
      smallestVolumeMl: 0.1,
      largestVolumeMl: 1,
      graduationMl: 0.01,
      toleranceFraction: 0.02,
    },
    { name: "cylinder", smallestVolumeMl: 5, graduationMl: 0.5, toleranceFraction: 0.01 },
  ],
  stockTolerance: 0.035,
  contact: "01 234",
}

describe("a pharmacy as typed", () => {
  it("comes back as it was, with and without what is optional", () => {
    for (const pharmacy of [usualPharmacy, full])
      expect(pharmacyOfDraft(pharmacy.id, draftOf(pharmacy))).toEqual(pharmacy)
  })

  it("shows tolerances in per cent and takes a comma for the point", () => {
    expect(draftOf(full).stockTolerance).toBe("3.5")
    expect(pharmacyOfDraft("a", { ...draftOf(full), stockTolerance: "2,5" }).stockTolerance).toBe(0.025)
  })

  it("sends what is no number as typed, and works no example with it", () => {
    const pharmacy = pharmacyOfDraft("a", { ...draftOf(usualPharmacy), bottleMl: "five" })
    expect(pharmacy.bottleMl).toBe("five")
    expect(isWorkable(pharmacy)).toBe(false)
    expect(isWorkable(pharmacyOfDraft("a", { ...draftOf(full), devices: [newDevice] }))).toBe(false)
    expect(isWorkable(full)).toBe(true)
  })
})

describe("a refusal of a pharmacy", () => {
  const at = (path: string, allowed: string) => ({ path, value: null, allowed, message: "" })
  const told = (path: string, allowed: string) =>
    (pharmacyRefusal(new Refused(422, "no", [at(path, allowed)])) as Refused).problems[0]

  it("belongs to the field of its list, and names the device", () => {
    expect(told("body.devices[1].graduationMl", "a number")).toMatchObject({
      path: "body.devices",
      allowed: "a number (device 2, read to)",
    })
    expect(told("body.stockPercents[0]", "a number")?.path).toBe("body.stockPercents")
  })

  it("asks for a share in per cent, as it is typed", () => {
    expect(told("body.stockTolerance", "a share from 0 to below 1")?.allowed).toBe(
      "a number from 0 to below 100",
    )
  })

  it("leaves any other failure as it is", () => {
    const failure = new Error("no network")
    expect(pharmacyRefusal(failure)).toBe(failure)
  })
})
