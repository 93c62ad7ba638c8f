import type { DiagnosticReport, DocumentReference, FhirResource } from "fhir/r4.js"
import type { Assessment } from "../../../engine/assessment.js"
import { sentence } from "../../../engine/words.js"
import { type Loose, record, records } from "../../course/loose.js"
import type { ReceivedDocument } from "../../intake/fragment.js"
import type { FhirContext, FhirDocument } from "../context.js"
import { plain } from "../plain-text.js"
import { AXIAL_LENGTH, ownConcept, referenceTo } from "./codes.js"
import { dayIn } from "./days.js"
import { hasCode, present } from "./observation.js"
import { DERIVED } from "./plan.js"
import type { Scope } from "./scope.js"

/** What the engine says in a DiagnosticReport, and the papers that were received. */

export function paperResources(
  { assessment, report, documents = [] }: FhirContext,
  { written, scope }: { readonly written: readonly FhirResource[]; readonly scope: Scope },
): readonly FhirResource[] {
  return [
    ...(assessment === undefined ? [] : [diagnosticReport(assessment, { report, written, scope })]),
    ...documents.map((paper) => documentReference(paper, scope)),
  ]
}

function diagnosticReport(
  assessment: Assessment,
  {
    report,
    written,
    scope,
  }: { report: FhirContext["report"]; written: readonly FhirResource[]; scope: Scope },
): DiagnosticReport {
  const { asOf, refused, growth, finding } = assessment
  const said = refused === undefined ? [...growth.reasons, ...finding.reasons] : [refused]
  const lengths = written.filter(
    (resource) =>
      resource.resourceType === "Observation" &&
      [AXIAL_LENGTH.right, AXIAL_LENGTH.left].some((code) => hasCode(resource.code, code)),
  )
  return {
    resourceType: "DiagnosticReport",
    id: scope.newId("assessment", asOf),
    meta: { tag: [DERIVED] },
    status: "final",
    code: ownConcept("eye-growth-assessment", "Assessment of eye growth"),
    subject: scope.patient,
    effectiveDateTime: asOf,
    ...(lengths.length === 0
      ? {}
      : { result: lengths.map(({ id }) => referenceTo("Observation", id ?? "")) }),
    ...present({ conclusion: plain(said.map(sentence).join(" ")) }),
    ...(report === undefined ? {} : { presentedForm: [attachment(report)] }),
  }
}

function documentReference(paper: FhirDocument, { patient, newId }: Scope): DocumentReference {
  const title = plain(paper.title)
  return {
    resourceType: "DocumentReference",
    id: newId("paper", paper.date),
    status: "current",
    subject: patient,
    ...(title === undefined ? {} : { description: title }),
    content: [{ attachment: { ...attachment(paper), creation: paper.date } }],
  }
}

const attachment = ({ title, pdf }: { readonly title: string; readonly pdf: Uint8Array }) => ({
  contentType: "application/pdf",
  data: Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString("base64"),
  ...present({ title: plain(title) }),
})

/** Papers inside a resource; one that lies elsewhere is not fetched. */
export function papersIn(resource: Loose): readonly ReceivedDocument[] {
  const attachments = [
    ...records(resource.presentedForm),
    ...records(resource.content).map(({ attachment: each }) => record(each)),
  ]
  return attachments.flatMap(({ contentType, data, title, creation }) => {
    const date = dayIn(creation) ?? dayIn(resource.effectiveDateTime) ?? dayIn(resource.date)
    if (contentType !== "application/pdf" || typeof data !== "string" || date === undefined) return []
    const bytes = new Uint8Array(Buffer.from(data, "base64"))
    const names = [title, resource.description, record(resource.code).text, record(resource.type).text]
    const named = names.find((name): name is string => typeof name === "string" && name.trim() !== "")
    if (!isPdf(bytes)) return []
    return [{ date, title: named ?? "PDF", mediaType: "application/pdf" as const, bytes }]
  })
}

const isPdf = (bytes: Uint8Array): boolean => Buffer.from(bytes.subarray(0, 5)).toString("latin1") === "%PDF-"
