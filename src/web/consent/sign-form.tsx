import { type FormEvent, useCallback, useRef, useState } from "react"
import { type ConsentText, consentPlainText } from "../../engine/consent/consent-text.js"
import { SIGNING, saidIn } from "../../engine/consent/signing-words.js"
import type { ConsentWording } from "../../engine/practice-rules.js"
import { msg, say } from "../../engine/say.js"
import { treatmentName } from "../../engine/treatment-name.js"
import type { ConsentBody } from "../../server/contract/entry.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Choices, Field } from "../parts/field.js"
import { type Assent, AssentField, RelationField } from "./asked-of-family.js"
import { ScanField, scanFault, typeOfScan } from "./scan-field.js"
import { type DrawnSignature, SignatureField } from "./signature-pad.js"
import { type ConsentToRecord, useRecordConsent } from "./use-record-consent.js"

type Way = "drawn" | "typed" | "scan" | "elsewhere"

const WAYS: readonly (readonly [Way, string])[] = [
  ["drawn", msg("drawn on this screen")],
  ["typed", msg("name typed")],
  ["scan", msg("on paper, scanned")],
  ["elsewhere", msg("on paper, kept elsewhere")],
]

/**
 * Who consents to the text beside it, what the child says, and the signature. What the family fills in is asked in the
 * language of its text; the rest is the practice's.
 */
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

  const told = (message: string) => saidIn(text.spoken, message)
  const isOnScreen = way === "drawn" || way === "typed"
  const server = faultsOf(record.error, ["date", "by.name", "by.relation", "file"])
  const own = {
    name: name.trim() === "" ? told(SIGNING.needsName) : undefined,
    relation: relation.trim() === "" ? told(SIGNING.needsRelation) : undefined,
    assent: assent === null ? told(SIGNING.needsAssent) : undefined,
    typed: way === "typed" && typedName.trim() === "" ? told(SIGNING.needsTypedName) : undefined,
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
      ...(isRead
        ? { wording: { id: wording.id, version: wording.version, language: wording.language } }
        : {}),
    }
    record.mutate(
      { consent, text: isRead ? consentPlainText(text) : null, signature },
      {
        onSuccess: () =>
          onDone(say("Recorded: consent to {treatment}.", { treatment: treatmentName(text.treatment) })),
      },
    )
  }

  return (
    <form ref={form} className="form card consent-form" onSubmit={submit} noValidate aria-labelledby="sign">
      <h2 id="sign" lang={text.spoken}>
        {told(SIGNING.whoConsents)}
      </h2>
      <div role="alert">
        {server.general && <p className="form-fault">{server.general}</p>}
        {isTried && isMissing && (
          <p className="form-fault" lang={text.spoken}>
            {told(SIGNING.isMissing)}
          </p>
        )}
      </div>
      <Choices
        legend={say("Signed")}
        options={WAYS.map(([value, words]) => [value, say(words)] as const)}
        value={way}
        onChange={setWay}
      />
      {!isOnScreen && (
        <>
          <p>
            <button type="button" onClick={() => window.print()}>
              {say("Print the text to sign on paper")}
            </button>
          </p>
          <Field label={say("Given on")} fault={server.at("date")}>
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
            {say("What was signed is the text shown here")}
          </label>
        </>
      )}
      <div className="consent-family" lang={text.spoken}>
        <div className="form-row">
          <Field label={told(SIGNING.whoSigns)} fault={shown(own.name) ?? server.at("by.name")}>
            {(control) => (
              <input
                {...control}
                autoComplete="off"
                value={name}
                onChange={(event) => setName(event.target.value)}
              />
            )}
          </Field>
          <RelationField
            spoken={text.spoken}
            value={relation}
            fault={shown(own.relation) ?? server.at("by.relation")}
            onChange={setRelation}
          />
        </div>
        <AssentField spoken={text.spoken} value={assent} fault={shown(own.assent)} onChange={setAssent} />
        {way === "drawn" && (
          <SignatureField
            spoken={text.spoken}
            drawn={drawn}
            onSigned={onSigned}
            fault={
              isUnsigned ? saidIn(text.spoken, SIGNING.needsSignature, { way: say("name typed") }) : undefined
            }
          />
        )}
        {way === "typed" && (
          <Field label={told(SIGNING.typedName)} fault={shown(own.typed)}>
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
      </div>
      {way === "scan" && <ScanField fault={shown(own.scan) ?? server.at("file")} onChange={setScan} />}
      <div className="form-actions">
        <button type="submit" className="primary" disabled={record.isPending}>
          {say("Record consent")}
        </button>
      </div>
    </form>
  )
}
