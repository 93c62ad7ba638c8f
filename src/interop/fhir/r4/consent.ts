import { type Consent, TREATMENT_KINDS } from "../../../engine/course.js"
import { record, records } from "../../course/loose.js"
import { plain } from "../plain-text.js"
import { hl7, own, ownConcept } from "./codes.js"
import { dayIn, periodBefore, spanIn } from "./days.js"
import { ownOneOf, present } from "./observation.js"
import { codec } from "./scope.js"

/** A consent to a treatment of a minor. */
export const consent = codec<Consent>({
  write: ({ date, covers, by, wording, until }, { patient, newId }) => {
    const name = plain(by?.name)
    const version = plain(wording && `${wording.id} ${wording.version}`)
    return {
      resource: {
        resourceType: "Consent",
        id: newId("consent", date),
        status: until === undefined ? "active" : "inactive",
        scope: { coding: [hl7("consentscope", "treatment")] },
        category: [{ coding: [own("consent-to-treatment", "Consent to a treatment of a minor")] }],
        patient,
        dateTime: date,
        ...(name === undefined ? {} : { performer: [{ display: name }] }),
        policyRule: { text: version === undefined ? "Wording not stated" : version },
        provision: {
          type: "permit",
          period: periodBefore(date, until),
          code: [ownConcept(covers.kind, covers.kind.replaceAll("-", " "))],
        },
      },
    }
  },
  read: (resource) => {
    const provision = record(resource.provision)
    const kind = ownOneOf(records(provision.code)[0], TREATMENT_KINDS)
    const name = records(resource.performer)[0]?.display
    return present({
      date: dayIn(resource.dateTime),
      covers: kind === undefined ? undefined : { kind },
      by: typeof name === "string" ? { name } : undefined,
      until: spanIn(provision.period).to,
    })
  },
})
