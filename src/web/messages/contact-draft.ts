import type { FamilyContact, MessageTopic } from "../../engine/messages/family-contact.js"
import type { FamilyContactBody } from "../../server/contract/family-contact.js"

/** What the form of a family's contact holds while it is typed. */
export interface ContactDraft {
  readonly name: string
  readonly relation: string
  readonly language: FamilyContact["language"]
  readonly email: string
  readonly telephone: string
  readonly address: string
  readonly reachedBy: FamilyContact["reachedBy"]
  readonly childCalled: string
  readonly agreedTo: readonly MessageTopic[]
  readonly agreedOn: string
}

/** A contact as a draft; an agreement that was withdrawn is not offered again by itself. */
export function contactDraft(contact: FamilyContact | null, today: string): ContactDraft {
  const agreed = contact?.agreed?.until === undefined ? contact?.agreed : undefined
  return {
    name: contact?.name ?? "",
    relation: contact?.relation ?? "",
    language: contact?.language ?? "en",
    email: contact?.email ?? "",
    telephone: contact?.telephone ?? "",
    address: contact?.address ?? "",
    reachedBy: contact?.reachedBy ?? "none",
    childCalled: contact?.childCalled ?? "",
    agreedTo: agreed?.to ?? [],
    agreedOn: agreed?.on ?? today,
  }
}

/** The draft as it is sent: what was left empty is absent, and without a topic nothing was agreed to. */
export function contactOf(draft: ContactDraft): FamilyContactBody["contact"] {
  const { agreedTo, agreedOn, name, relation, language, reachedBy, ...optional } = draft
  const filled = Object.fromEntries(
    Object.entries(optional)
      .map(([field, typed]) => [field, typed.trim()])
      .filter(([, typed]) => typed !== ""),
  )
  return {
    name,
    relation,
    language,
    reachedBy,
    ...filled,
    ...(agreedTo.length > 0 ? { agreed: { on: agreedOn, to: [...agreedTo] } } : {}),
  }
}
