import { expect, it } from "vitest"
import { CHAIN_START, entryHash } from "./chain.js"

const row = {
  practice: "practice",
  position: 1,
  id: "id",
  child: "child",
  kind: "visit",
  body: '{"date":"2025-01-10"}',
  author: "author",
  recorded_at: "2025-01-10T10:00:00.000Z",
  supersedes: null,
  reason: null,
  previous_hash: CHAIN_START,
}

it("the hash of an entry is the one Python's hashlib gives for the same JSON", () => {
  // hashlib.sha256(json.dumps([...], separators=(",", ":")).encode()).hexdigest()
  expect(entryHash(row)).toBe("4f65406cb20c77b7df9addc3d53903e8e90ab42645c79eed9642334990b3b2dc")
})

it.each(Object.keys(row))("a change of %s changes the hash", (field) => {
  expect(entryHash({ ...row, [field]: field === "position" ? 2 : "another" })).not.toBe(entryHash(row))
})
