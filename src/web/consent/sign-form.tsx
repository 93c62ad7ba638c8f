import { type FormEvent, useCallback, useRef, useState } from "react"
import { type ConsentText, consentPlainText } from "../../engine/consent/consent-text.js"
import type { ASSENTS } from "../../engine/course.js"
import type { ConsentWording } from "../../engine/practice-rules.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { ConsentBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Choices, Field } from "../parts/field.js"
import { ScanField, scanFault, typeOfScan } from "./scan-field.js"
import { type DrawnSignature, SignatureField } from "./signature-pad.js"
import { type ConsentToRecord, useRecordConsent } from "./use-record-consent.js"

type Way = "drawn" | "typed" | "scan" | "elsewhere"
type Assent = (typeof ASSENTS)[number]

const WAYS: readonly (readonly [Way, string])[] = [
  ["drawn", "drawn on this screen"],
  ["typed", "name typed"],
  ["scan", "on paper, scanned"],
  ["elsewhere", "on paper, kept elsewhere"],
]
const ASSENT_CHOICES: readonly (readonly [Assent, string])[] = [
  ["given", "agrees"],
  ["declined", "does not agree"],
  ["not-asked", "was not asked"],
]
const RELATIONS = ["mother", "father", "legal guardian", "the young person"]

/** Who consents to the text beside it, what the child says, and the signature. */
export function SignForm(props: {
  readonly childId: string
  readonly today: string
  readonly text: ConsentText
  readonly wording: ConsentWording
  readonly onDone: (message: string) => void
}) {
  const { childId, today, text, wording, onDone } = props
  const [id] = useState(newEntryId)
  const [way, setWay] = useState<Way>("drawn")
  const [date, setDate] = useState(today)
  const [name, setName] = useState("")
  const [relation, setRelation] = useState("")
  const [assent, setAssent] = useState<Assent | null>(null)
  const [typedName, setTypedName] = useState("")
  const [scan, setScan] = useState<File | null>(null)
  const [isThisText, setIsThisText] = useState(true)
  const [isTried, setIsTried] = useState(false)
  const [isUnsigned, setIsUnsigned] = useState(false)
  const onSigned = useCallback(() => setIsUnsigned(false), [])
  const drawn = useRef<DrawnSignature | null>(null)
  const form = useRef<HTMLFormElement>(null)
  const record = useRecordConsent(childId)

  const isOnScreen = way === "drawn" || way === "typed"
  const server = faultsOf(record.error, ["date", "by.name", "by.relation", "file"])
  const own = {
    name: name.trim() === "" ? "must be the name of who signs" : undefined,
    relation: relation.trim() === "" ? "must say how who signs is related to the child" : undefined,
    assent: assent === null ? "must be chosen" : undefined,
    typed: way === "typed" && typedName.trim() === "" ? "must be the name, typed by who signs" : undefined,
    scan: way === "scan" ? (scanFault(scan) ?? undefined) : undefined,
  }
  const shown = (fault: string | undefined) => (isTried ? fault : undefined)
  const isMissing = isUnsigned || Object.values(own).some((fault) => fault !== undefined)

  const signatureOf = (): ConsentToRecord["signature"] => {
    if (way === "typed") return { kind: "typed", name: typedName.trim() }
    if (way === "scan" && scan) return { kind: "scan", file: scan, mediaType: typeOfScan(scan) }
    const svg = drawn.current?.svg() ?? null
    return way === "drawn" && svg !== null ? { kind: "drawn", svg } : null
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    const signature = signatureOf()
    const unsigned = way === "drawn" && signature === null
    setIsTried(true)
    setIsUnsigned(unsigned)
    if (unsigned || Object.values(own).some((fault) => fault !== undefined)) {
      // Once the faults are drawn: the first field that has one takes the focus.
      requestAnimationFrame(() =>
        form.current?.querySelector<HTMLElement>('input[aria-invalid="true"]')?.focus(),
      )
      return
    }
    const isRead = isOnScreen || isThisText
    const consent: ConsentBody = {
      ...id,
      date: isOnScreen ? today : date,
      covers: text.treatment,
      by: { name: name.trim(), relation: relation.trim() },
      form: isOnScreen ? "screen" : "paper",
      ...(assent ? { assent } : {}),
      ...(isRead ? { wording: { id: wording.id, version: wording.version } } : {}),
    }
    record.mutate(
      { consent, text: isRead ? consentPlainText(text) : null, signature },
      { onSuccess: () => onDone(`Recorded: consent to ${treatmentName(text.treatment)}.`) },
    )
  }

  return (
    <form ref={form} className="form card consent-form" onSubmit={submit} noValidate aria-labelledby="sign">
      <h2 id="sign">Who consents</h2>
      <div role="alert">
        {server.general && <p className="form-fault">{server.general}</p>}
        {isTried && isMissing && <p className="form-fault">Something is still missing; see below.</p>}
      </div>
      <Choices legend="Signed" options={WAYS} value={way} onChange={setWay} />
      {!isOnScreen && (
        <>
          <p>
            <button type="button" onClick={() => window.print()}>
              Print the text to sign on paper
            </button>
          </p>
          <Field label="Given on" fault={server.at("date")}>
            {(control) => (
              <input
                {...control}
                type="date"
                value={date}
                onChange={(event) => setDate(event.target.value)}
              />
            )}
          </Field>
          <label className="consent-check">
            <input
              type="checkbox"
              checked={isThisText}
              onChange={(event) => setIsThisText(event.target.checked)}
            />
            What was signed is the text shown here
          </label>
        </>
      )}
      <div className="form-row">
        <Field label="Who signs" fault={shown(own.name) ?? server.at("by.name")}>
          {(control) => (
            <input
              {...control}
              autoComplete="off"
              value={name}
              onChange={(event) => setName(event.target.value)}
            />
          )}
        </Field>
        <Field label="Relation to the child" fault={shown(own.relation) ?? server.at("by.relation")}>
          {(control) => (
            <>
              <input
                {...control}
                autoComplete="off"
                list="relations"
                value={relation}
                onChange={(event) => setRelation(event.target.value)}
              />
              <datalist id="relations">
                {RELATIONS.map((each) => (
                  <option key={each} value={each} />
                ))}
              </datalist>
            </>
          )}
        </Field>
      </div>
      <Choices
        legend="The child, asked in the four steps of the text"
        options={ASSENT_CHOICES}
        value={assent}
        onChange={setAssent}
        fault={shown(own.assent)}
      />
      {assent === "declined" && (
        <p className="field-caution">
          The child says no. That is recorded with the consent; talk it over before anything is started.
        </p>
      )}
      {way === "drawn" && (
        <SignatureField
          drawn={drawn}
          onSigned={onSigned}
          fault={isUnsigned ? "must be signed; with a keyboard choose “name typed”" : undefined}
        />
      )}
      {way === "typed" && (
        <Field label="Name, typed by who signs in place of a signature" fault={shown(own.typed)}>
          {(control) => (
            <input
              {...control}
              autoComplete="off"
              value={typedName}
              onChange={(event) => setTypedName(event.target.value)}
            />
          )}
        </Field>
      )}
      {way === "scan" && <ScanField fault={shown(own.scan) ?? server.at("file")} onChange={setScan} />}
      <div className="form-actions">
        <button type="submit" className="primary" disabled={record.isPending}>
          Record consent
        </button>
      </div>
    </form>
  )
}
