import { type FormEvent, useMemo, useRef, useState } from "react"
import { consentPlainText, consentText } from "../../engine/consent/consent-text.js"
import { wordingsFor } from "../../engine/consent/default-wording.js"
import type { ASSENTS, TreatmentChoice } from "../../engine/course.js"
import { treatmentName } from "../../engine/treatment-name.js"
import { consentEvidence } from "../../evidence/consent.js"
import type { ConsentBody } from "../../server/contract/entry.js"
import type { ChildPartProps } from "../child/child-parts.js"
import { treatmentBody } from "../enter/treatment-fields.js"
import { newEntryId } from "../entry-id.js"
import { faultsOf } from "../faults.js"
import { Choices, Field } from "../parts/field.js"
import { askedTreatments } from "./asked-treatments.js"
import { ConsentSheet, PaperLines } from "./consent-sheet.js"
import { costLines } from "./cost-lines.js"
import { ScanField, scanFault, typeOfScan } from "./scan-field.js"
import { type DrawnSignature, SignatureField } from "./signature-pad.js"
import { type Asked, TreatmentAsked } from "./treatment-asked.js"
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

/** The text for one treatment with its figures, and the signature under it. */
export function NewConsent(props: ChildPartProps & { readonly onClose: () => void }) {
  const { view, reading, practice, onDone, onClose } = props
  const likely = useMemo(() => askedTreatments(reading), [reading])
  const [id] = useState(newEntryId)
  const [asked, setAsked] = useState<Asked>(
    likely.length > 0 ? { at: 0 } : { typed: { kind: "atropine", strength: "" } },
  )
  const [language, setLanguage] = useState<string | null>(null)
  const [way, setWay] = useState<Way>("drawn")
  const [date, setDate] = useState(reading.today)
  const [name, setName] = useState("")
  const [relation, setRelation] = useState("")
  const [assent, setAssent] = useState<Assent | null>(null)
  const [typedName, setTypedName] = useState("")
  const [scan, setScan] = useState<File | null>(null)
  const [isThisText, setIsThisText] = useState(true)
  const [isTried, setIsTried] = useState(false)
  const drawn = useRef<DrawnSignature | null>(null)
  const record = useRecordConsent(view.child.id)

  const covers: TreatmentChoice =
    "at" in asked ? (likely[asked.at]?.treatment ?? { kind: "atropine" }) : treatmentBody(asked.typed)
  const hasText = covers.kind !== "atropine" || typeof covers.concentrationPercent === "number"
  const wordings = wordingsFor({
    kind: covers.kind,
    on: reading.today,
    wordings: reading.rules.consentWordings,
  })
  const wording = wordings.find((each) => each.language === language) ?? wordings[0]
  const { kind, concentrationPercent } = covers
  const text = useMemo(() => {
    if (!wording || !hasText) return null
    const treatment = { kind, ...(concentrationPercent === undefined ? {} : { concentrationPercent }) }
    const { pharmacies, contacts } = reading.rules
    return consentText({
      wording,
      treatment,
      evidence: consentEvidence,
      cost: costLines(treatment, reading),
      contacts,
      ...(pharmacies.length > 0 ? { bottlesMl: pharmacies.map(({ bottleMl }) => bottleMl) } : {}),
    })
  }, [wording, hasText, kind, concentrationPercent, reading])

  const isOnScreen = way === "drawn" || way === "typed"
  const server = faultsOf(record.error, [
    "covers.kind",
    "covers.concentrationPercent",
    "date",
    "by.name",
    "by.relation",
    "file",
  ])
  const own = {
    name: name.trim() === "" ? "must be the name of who signs" : undefined,
    relation: relation.trim() === "" ? "must say how who signs is related to the child" : undefined,
    assent: assent === null ? "must be chosen" : undefined,
    typed: way === "typed" && typedName.trim() === "" ? "must be the name, typed by who signs" : undefined,
    scan: way === "scan" ? (scanFault(scan) ?? undefined) : undefined,
  }
  const [isUnsigned, setIsUnsigned] = useState(false)
  const shown = (fault: string | undefined) => (isTried ? fault : undefined)

  const signatureOf = (): ConsentToRecord["signature"] => {
    if (way === "typed") return { kind: "typed", name: typedName.trim() }
    if (way === "scan" && scan) return { kind: "scan", file: scan, mediaType: typeOfScan(scan) }
    const svg = drawn.current?.svg() ?? null
    return way === "drawn" && svg !== null ? { kind: "drawn", svg } : null
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setIsTried(true)
    const signature = signatureOf()
    const unsigned = way === "drawn" && signature === null
    setIsUnsigned(unsigned)
    if (unsigned || Object.values(own).some((fault) => fault !== undefined)) return
    const isRead = text !== null && (isOnScreen || isThisText)
    const consent: ConsentBody = {
      ...id,
      date: isOnScreen ? reading.today : date,
      covers,
      by: { name: name.trim(), relation: relation.trim() },
      form: isOnScreen ? "screen" : "paper",
      ...(assent ? { assent } : {}),
      ...(isRead && wording ? { wording: { id: wording.id, version: wording.version } } : {}),
    }
    record.mutate(
      { consent, text: isRead && text ? consentPlainText(text) : null, signature },
      { onSuccess: () => onDone(`Recorded: consent to ${treatmentName(covers)}.`) },
    )
  }

  return (
    <div className="consent-new">
      <form className="form card consent-form" onSubmit={submit} noValidate aria-labelledby="new-consent">
        <div className="consent-head">
          <h2 id="new-consent">New consent</h2>
          <button type="button" onClick={onClose}>
            Close without recording
          </button>
        </div>
        <div role="alert">
          {server.general && <p className="form-fault">{server.general}</p>}
          {isTried && (isUnsigned || Object.values(own).some(Boolean)) && (
            <p className="form-fault">Something is still missing; see below.</p>
          )}
        </div>
        <TreatmentAsked
          likely={likely}
          value={asked}
          onChange={setAsked}
          kindFault={server.at("covers.kind")}
          strengthFault={server.at("covers.concentrationPercent")}
        />
        {wordings.length > 1 && (
          <Choices
            legend="Language of the text"
            options={wordings.map((each) => [each.language, each.language] as const)}
            value={wording?.language ?? null}
            onChange={setLanguage}
          />
        )}
        <Choices legend="Signed" options={WAYS} value={way} onChange={setWay} />
        {!isOnScreen && (
          <>
            <p>
              <button type="button" onClick={() => window.print()} disabled={text === null}>
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
      {text === null ? (
        <p className="card soft">The text is shown once the strength is entered.</p>
      ) : (
        <div className="card">
          <ConsentSheet text={text}>
            <PaperLines practice={practice.name} childName={view.child.name} born={view.child.born} />
          </ConsentSheet>
        </div>
      )}
    </div>
  )
}
