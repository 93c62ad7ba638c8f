/**
 * The part of a carried-in document that was truly read. What its rows mark as coming from memory is left out here, so
 * that it cannot reach a screen or a default; the document as carried in stays whole in src/evidence/tables.
 */

const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value)
const saysMemory = (value) => typeof value === "string" && /\bmemory\b/i.test(value)
/** Rows of which one part was read and another was not: the fields that were not, by document and source. */
const unreadFields = [
  {
    document: "treatments/adverse-effects.json",
    when: (row) => row.how_obtained === "abstract (accommodation); from memory, unverified (pupil)",
    fields: ["photopic_pupil_increase_mm", "photopic_sd", "mesopic_pupil_increase_mm", "mesopic_sd"],
  },
  {
    document: "treatments/rebound.json",
    when: (row) => row.source === "tong2009",
    fields: ["dAL_total_36", "dAL_total_36_sd", "control_dAL_total_36", "control_dAL_total_36_sd", "reading"],
  },
  {
    document: "treatments/rebound.json",
    when: (row) => row.how_obtained?.startsWith("from memory, unverified for D and mm"),
    fields: ["dSER_off", "dSER_off_sd", "dAL_off", "dAL_off_sd"],
  },
  {
    document: "treatments/optical-treatments.json",
    when: (row) => Array.isArray(row.why) && row.how_obtained?.includes("0.44 mm"),
    fields: ["why", "sources"],
  },
  {
    document: "clinical/duties.json",
    when: (row) => row.evidence_status === "partly" && saysMemory(row.how_obtained),
    fields: ["computation_needed", "interval"],
  },
]

/** A trial known by a remembered author is called by the number under which it was read. */
const remembered = [{ document: "treatments/trials.json", source: "wei2020", trial: "PMC7530823" }]

/** A citation without an author that was remembered and not read. */
export const citationRead = (citation) => citation.replace(/^.*\(author from memory\)\.?\s*/, "")

export function readPart(document, contents) {
  const mixed = unreadFields.filter((entry) => entry.document === document)

  const dropped = (value) =>
    saysMemory(value) ||
    (isObject(value) &&
      (value.do_not_use_until_verified === true ||
        (/^from memory, unverified/.test(value.how_obtained ?? "") &&
          !mixed.some(({ when }) => when(value)))))

  const visit = (value) => {
    if (Array.isArray(value)) return value.filter((item) => !dropped(item)).map(visit)
    if (!isObject(value)) return value
    const renamed = remembered.find((one) => one.document === document && one.source === value.source)
    const unread = new Set(mixed.filter(({ when }) => when(value)).flatMap(({ fields }) => fields))
    return Object.fromEntries(
      Object.entries(value)
        .filter(
          ([key, inner]) =>
            key === "how_obtained" || !(unread.has(key) || dropped(inner) || saysMemory(value[`${key}_how`])),
        )
        .map(([key, inner]) => [key, renamed && key === "trial" ? renamed.trial : visit(inner)]),
    )
  }
  return visit(contents)
}
