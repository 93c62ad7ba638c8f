import { describe, expect, it } from "vitest"
import { Refused, Unreachable } from "./client.js"
import { faultsOf } from "./faults.js"

const problem = (path: string) => ({ path, value: null, allowed: "right", message: `${path} must be right` })

describe("problems sorted to the fields of a form", () => {
  it("puts a problem at its field, also one inside it", () => {
    const faults = faultsOf(new Refused(400, "Not recorded", [problem("born"), problem("covers.kind")]), [
      "born",
      "covers",
    ])
    expect(faults.at("born")).toBe("must be right")
    expect(faults.at("covers")).toBe("must be right")
    expect(faults.general).toBeNull()
  })
  it("says above the form what has no field", () => {
    const faults = faultsOf(new Refused(400, "Not recorded", [problem("visits")]), ["born"])
    expect(faults.general).toBe("visits must be right")
  })
  it("says the title when no problem is named", () => {
    expect(faultsOf(new Refused(404, "No such child", []), ["born"]).general).toBe("No such child")
  })
  it("says that nothing was saved when the server is away", () => {
    expect(faultsOf(new Unreachable(new Error("refused")), []).general).toContain("Nothing was saved")
  })
  it("is empty without an error", () => {
    expect(faultsOf(null, ["born"]).general).toBeNull()
  })
})
