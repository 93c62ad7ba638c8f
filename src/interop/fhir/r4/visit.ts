import type { Basic, Encounter, FhirResource, Observation, Provenance } from "fhir/r4.js"
import {
  ANSWERS,
  type Answer,
  EYES,
  SOURCE_KINDS,
  SYMPTOM_KINDS,
  type Symptom,
  type Visit,
  type VisitSource,
} from "../../../engine/course.js"
import { type Loose, record, records } from "../../course/loose.js"
import { isCode, plain } from "../plain-text.js"
import { extensionsOf, withoutLoss, withRemainder } from "../remainder.js"
import { OWN, own, ownConcept, referenceTo } from "./codes.js"
import { eyeParts, eyeReader } from "./eye.js"
import { glassesOf, isOldGlasses } from "./glasses.js"
import { lookAmong } from "./look.js"
import { codings, components, draft, ownOneOf, present, type Where } from "./observation.js"
import { deviceOf, itemMark, type Scope } from "./scope.js"

/** One visit: an Encounter (or, for figures from elsewhere, a Basic), Observations, glasses, and where from. */

export const VISIT = own("visit", "Visit")
export const SYMPTOMS = own("symptoms", "What the child notices, 0 none to 3 severe")
export const ANSWERED = own("answers", "What was asked about or looked at")
const QUESTION = "urn:lengthwise:fhir:question"
const AMBULATORY = {
  system: "http://terminology.hl7.org/CodeSystem/v3-ActCode",
  code: "AMB",
  display: "ambulatory",
}

export function visitResources(visit: Visit, scope: Scope): readonly FhirResource[] {
  const base = baseOf(visit, scope)
  const where: Where = {
    patient: scope.patient,
    encounter: base.resourceType === "Encounter" ? referenceTo("Encounter", base.id ?? "") : undefined,
    date: visit.date,
    deviceOf: (name) => deviceOf(name, scope),
  }
  const covered: { date: string; right?: object; left?: object; [field: string]: unknown } = {
    date: visit.date,
  }
  const isOld = isOldGlasses(visit)
  const measured = EYES.flatMap((eye) => {
    const examination = visit[eye] ?? {}
    const parts = eyeParts(examination, { ...where, eye }).filter(
      ({ field }) => !(isOld && field === "refraction"),
    )
    const fields: Record<string, unknown> = {}
    for (const { field, whole } of parts) {
      const known = fields[field]
      if (field === "otherRefractions") fields[field] = [...((known as unknown[]) ?? []), whole]
      else fields[field] = field === "acuity" ? { ...(known as object), ...(whole as object) } : whole
    }
    for (const field of ["spectaclesWorn", ...(isOld ? (["refraction"] as const) : [])] as const)
      if (examination[field]) fields[field] = examination[field]
    if (Object.keys(fields).length > 0) covered[eye] = fields
    return parts.map(({ word, whole, draft: observation, field }, place) => {
      const made: Observation = { ...observation, id: scope.newId(word, eye, visit.date) }
      const native = eyeReader(record(made))?.read(record(made), lookAmong([]))
      const kept = withRemainder(made, { whole, native })
      return field === "otherRefractions"
        ? { ...kept, extension: [itemMark(field, place), ...extensionsOf(kept)] }
        : kept
    })
  })
  const glasses = [
    glassesOf(visit, { field: "spectaclesWorn", where, id: () => scope.newId("glasses", visit.date) }),
    isOld
      ? glassesOf(visit, { field: "refraction", where, id: () => scope.newId("old-glasses", visit.date) })
      : undefined,
  ].filter((resource) => resource !== undefined)
  const asked = [symptomsOf(visit, where, scope), answersOf(visit, where, scope)].filter(
    (resource) => resource !== undefined,
  )
  const figures = [...measured, ...glasses, ...asked]
  const sources = (visit.sources ?? []).map((each, place) =>
    sourceOf(each, { visit, place, about: [base, ...figures], scope }),
  )
  if (visit.symptoms?.length) covered.symptoms = visit.symptoms
  if (visit.answers?.length) covered.answers = visit.answers
  if (visit.sources?.length) covered.sources = visit.sources
  return [withRemainder(base, { whole: visit, native: covered }), ...figures, ...sources]
}

function baseOf({ date, from }: Visit, { patient, organization, newId }: Scope): Encounter | Basic {
  if (from !== undefined) {
    const code = { coding: [VISIT], text: "Figures from elsewhere" }
    return { resourceType: "Basic", id: newId("visit", date), code, subject: patient, created: date }
  }
  return {
    resourceType: "Encounter",
    id: newId("visit", date),
    status: "finished",
    class: AMBULATORY,
    type: [{ coding: [VISIT] }],
    subject: patient,
    period: { start: date, end: date },
    ...(organization === undefined ? {} : { serviceProvider: organization }),
  }
}

function symptomsOf({ symptoms = [] }: Visit, where: Where, { newId }: Scope): Observation | undefined {
  if (symptoms.length === 0) return undefined
  return {
    ...draft(where, { code: [SYMPTOMS], text: "Symptoms", category: "survey" }),
    id: newId("symptoms", where.date),
    ...components(
      ...symptoms.map((symptom) => {
        const part = { code: ownConcept(symptom.kind, symptom.kind), valueInteger: symptom.grade }
        return withRemainder(part, { whole: symptom, native: nativeSymptom(part) })
      }),
    ),
  }
}
const nativeSymptom = (part: object) => {
  const { code, valueInteger } = record(part)
  return present({ kind: ownOneOf(code, SYMPTOM_KINDS), grade: valueInteger })
}
export const symptomsRead = (observation: Loose) =>
  records(observation.component).map((part) => withoutLoss(part, nativeSymptom(part)) as Symptom)

function answersOf({ answers = [] }: Visit, where: Where, { newId }: Scope): Observation | undefined {
  if (answers.length === 0) return undefined
  return {
    ...draft(where, { code: [ANSWERED], text: "Answers", category: "survey" }),
    id: newId("answers", where.date),
    ...components(...answers.map(answerPart)),
  }
}
function answerPart(answer: Answer) {
  const { question } = answer
  const coding = isCode(question) ? [{ system: QUESTION, code: question }] : []
  const part = {
    code: coding.length > 0 ? { coding } : { text: "Question" },
    valueCodeableConcept: ownConcept(answer.answer, answer.answer),
  }
  return withRemainder(part, { whole: answer, native: nativeAnswer(part) })
}
const nativeAnswer = (part: object) => {
  const { code, valueCodeableConcept } = record(part)
  const question = codings(code).find(({ system }) => system === QUESTION)?.code
  return present({
    question: typeof question === "string" ? question : undefined,
    answer: ownOneOf(valueCodeableConcept, ANSWERS),
  })
}
export const answersRead = (observation: Loose) =>
  records(observation.component).map((part) => withoutLoss(part, nativeAnswer(part)) as Answer)

function sourceOf(
  source: VisitSource,
  {
    visit,
    place,
    about,
    scope,
  }: { visit: Visit; place: number; about: readonly FhirResource[]; scope: Scope },
): Provenance {
  const device = source.device === undefined ? undefined : deviceOf(source.device, scope)
  const value = plain(source.id)
  const made: Provenance = {
    resourceType: "Provenance",
    id: scope.newId("source", visit.date),
    extension: [itemMark("sources", place)],
    target: about.map((each) => referenceTo(each.resourceType, each.id ?? "")),
    occurredDateTime: visit.date,
    // R4 asks for the moment; a course file knows the day of the visit only.
    recorded: `${visit.date}T00:00:00Z`,
    agent: [{ who: device ?? { display: "Instrument not named" } }],
    entity: [
      {
        role: "source",
        what: {
          identifier: {
            type: ownConcept(source.kind, source.kind),
            ...(value === undefined ? {} : { value }),
          },
        },
      },
    ],
  }
  return withRemainder(made, { whole: source, native: sourceRead(record(made)) })
}

export function sourceRead({ entity, agent }: Loose): Partial<VisitSource> {
  const { type, value } = record(record(records(entity)[0]?.what).identifier)
  const { reference, display } = record(records(agent)[0]?.who)
  return present({
    kind: ownOneOf(type, SOURCE_KINDS),
    id: typeof value === "string" ? value : undefined,
    device: reference === undefined || typeof display !== "string" ? undefined : display,
  })
}

export const isVisitOfOurs = ({ type, code }: Loose): boolean =>
  [...records(type), record(code)].some((concept) =>
    codings(concept).some(({ system, code: value }) => system === OWN && value === VISIT.code),
  )
