import { Link } from "@tanstack/react-router"
import {
  type FormEvent,
  type KeyboardEvent,
  useDeferredValue,
  useEffect,
  useMemo,
  useRef,
  useState,
} from "react"
import { EYES, type Eye } from "../../engine/course.js"
import type { ChildView } from "../../server/contract/child.js"
import type { VisitBody, VisitCorrectionBody } from "../../server/contract/entry.js"
import { failureInWords, Refused } from "../client.js"
import { newEntryId } from "../entry-id.js"
import { Field } from "../parts/field.js"
import { PageHeading } from "../parts/page-heading.js"
import { useRecord } from "../queries.js"
import type { CourseReading } from "../reading.js"
import type { Correcting } from "./correcting.js"
import { limitFaults, serverFaults, withoutFields } from "./draft-faults.js"
import { readDraft } from "./examination.js"
import { ExaminationTable } from "./examination-table.js"
import { fieldNotes } from "./field-notes.js"
import { ifSaved } from "./if-saved.js"
import { dropDraft, keepDraft } from "./kept-draft.js"
import { VisitAside } from "./visit-aside.js"
import { isEmpty, type VisitDraft } from "./visit-draft.js"

interface VisitFormProps {
  readonly view: ChildView
  readonly reading: CourseReading
  readonly start: VisitDraft
  readonly draftName: string
  readonly correcting: Correcting | null
  readonly onSaved: (saved: ChildView, draft: VisitDraft) => void
}

/** Entry of one visit, both eyes side by side, by keyboard alone. */
export function VisitForm({ view, reading, start, draftName, correcting, onSaved }: VisitFormProps) {
  const form = useRef<HTMLFormElement>(null)
  const [id] = useState(newEntryId)
  const [draft, setDraft] = useState(start)
  const [reason, setReason] = useState("")
  const [empty, setEmpty] = useState(false)
  // A field half typed is not at fault: it is told of only once it was left, or when saving was tried.
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set())
  const [tried, setTried] = useState(false)
  const add = useRecord<VisitBody>(view.child.id, "visits")
  const correct = useRecord<VisitCorrectionBody>(view.child.id, `visits/${correcting?.entryId}/correction`)
  const request = correcting ? correct : add
  const fromServer = serverFaults(request.error instanceof Refused ? request.error.problems : [])

  useEffect(() => {
    if (draft !== start && !isEmpty(draft)) keepDraft(draftName, draft)
  }, [draft, start, draftName])
  useEffect(() => {
    form.current?.querySelector<HTMLInputElement>("[data-entry]")?.focus({ preventScroll: true })
  }, [])

  const read = useMemo(() => readDraft(draft, correcting?.visit), [draft, correcting])
  const beyond = useMemo(() => limitFaults(read.visit), [read])
  const ownFaults = [...read.faults, ...beyond]
  const shownFaults = ownFaults.filter(({ eye, field }) => tried || left.has(`${eye} ${field}`))
  // The engine follows a moment behind the typing, so that no key ever waits for it.
  const sound = useDeferredValue(useMemo(() => withoutFields(read.visit, beyond), [read, beyond]))
  const sane = dateFault(sound.date, reading, correcting) === undefined
  const consequence = useMemo(
    () => (sane ? ifSaved(reading, sound, correcting?.visit.date) : null),
    [sane, reading, sound, correcting],
  )
  const notes = useMemo(() => {
    const notesOf = (eye: Eye) => (sane ? fieldNotes({ draft, visit: sound, eye, reading }) : {})
    return { right: notesOf("right"), left: notesOf("left") }
  }, [sane, draft, sound, reading])

  const change = (next: VisitDraft) => {
    setDraft(next)
    setEmpty(false)
    if (request.error) request.reset()
  }
  const focusFirstFault = () =>
    requestAnimationFrame(() => {
      const find = (selector: string) => form.current?.querySelector<HTMLElement>(selector)
      ;(find('[aria-invalid="true"]') ?? find("button.primary"))?.focus()
    })

  const save = (event?: FormEvent) => {
    event?.preventDefault()
    if (isEmpty(draft)) return setEmpty(true)
    setTried(true)
    if (ownFaults.length > 0 || !sane) return focusFirstFault()
    const settle = { onSuccess: (saved: ChildView) => onSaved(saved, draft), onError: focusFirstFault }
    if (correcting) correct.mutate({ visit: read.visit as VisitBody, reason, ...id }, settle)
    else add.mutate({ ...(read.visit as VisitBody), ...id }, settle)
  }
  const onKeyDown = (event: KeyboardEvent<HTMLFormElement>) => {
    if (event.key !== "Enter") return
    const target = event.target as HTMLElement
    if (event.ctrlKey || event.metaKey) {
      event.preventDefault()
      save()
    } else if (target instanceof HTMLInputElement || target instanceof HTMLSelectElement) {
      // Enter goes on to the next measurement; only the button or Ctrl with Enter saves.
      event.preventDefault()
      const entries = [...event.currentTarget.querySelectorAll<HTMLElement>("[data-entry]")]
      const next = entries.find(
        (entry) => target.compareDocumentPosition(entry) & Node.DOCUMENT_POSITION_FOLLOWING,
      )
      ;(next ?? event.currentTarget.querySelector<HTMLElement>("button.primary"))?.focus()
    }
  }
  const failure = request.error && !(request.error instanceof Refused) ? failureInWords(request.error) : null
  const general = [
    ...(failure ? [failure] : []),
    ...(request.error instanceof Refused && request.error.problems.length === 0 ? [request.error.title] : []),
    ...fromServer.general,
    ...(empty ? ["Nothing is entered yet."] : []),
  ]
  const what = correcting ? "correct a visit" : "visit"
  const dateProblem = fromServer.date ?? dateFault(draft.date, reading, correcting)
  return (
    <form ref={form} onSubmit={save} onKeyDown={onKeyDown} noValidate>
      <div className="page-head">
        <PageHeading title={`${view.child.name}, ${what}`}>
          <bdi>{view.child.name}</bdi>, {what}
        </PageHeading>
        <p className="soft small">
          <kbd>Enter</kbd> next measurement · <kbd>Tab</kbd> every field · <kbd>Ctrl</kbd> <kbd>Enter</kbd>{" "}
          save
        </p>
      </div>
      <div role="alert">
        {general.map((text) => (
          <p className="form-fault" key={text}>
            {text}
          </p>
        ))}
      </div>
      <div className="with-aside visit">
        <section className="card" aria-label="Measurements">
          <div className="form-row visit-head">
            <Field
              label="Day of the visit"
              fault={dateProblem}
              note={dateProblem && <OtherVisit view={view} date={draft.date} correcting={correcting} />}
            >
              {(control) => (
                <input
                  {...control}
                  type="date"
                  max={reading.today}
                  value={draft.date}
                  onChange={(event) => change({ ...draft, date: event.target.value })}
                />
              )}
            </Field>
            {correcting && (
              <Field label="Why is it corrected?" fault={fromServer.reason}>
                {(control) => (
                  <input
                    {...control}
                    value={reason}
                    onChange={(event) => {
                      setReason(event.target.value)
                      if (request.error) request.reset()
                    }}
                  />
                )}
              </Field>
            )}
          </div>
          <ExaminationTable
            draft={draft}
            onChange={change}
            faults={[...shownFaults, ...fromServer.fields]}
            notes={notes}
            checks={consequence?.checks ?? []}
            devices={devicesOf(reading)}
            onLeave={(eye, field) => setLeft(new Set(left).add(`${eye} ${field}`))}
          />
        </section>
        <VisitAside
          reading={reading}
          consequence={isEmpty(draft) ? null : consequence}
          waitsFor={isEmpty(draft) ? "Nothing is entered yet." : "The day of the visit must be right first."}
          faults={shownFaults}
          saving={request.isPending}
          onExchangeLengths={() => change(exchanged(draft))}
          onDiscard={() => {
            dropDraft(draftName)
            change(start)
          }}
        />
      </div>
    </form>
  )
}

function dateFault(
  date: string,
  { today, course }: CourseReading,
  correcting: Correcting | null,
): string | undefined {
  if (date === "") return "the day of the visit is needed"
  if (date > today) return "must not lie in the future"
  if (date < course.child.born) return "must not lie before birth"
  const other = course.visits.find((visit) => visit.date === date && date !== correcting?.visit.date)
  if (!other) return undefined
  return other.from ? `figures from ${other.from} stand on this day already` : "this day has a visit already"
}

/** The way out when the day is taken; what is typed here is kept meanwhile. */
function OtherVisit(props: {
  readonly view: ChildView
  readonly date: string
  readonly correcting: Correcting | null
}) {
  const { view, date, correcting } = props
  const entry = view.entries.find(
    (candidate) => candidate.kind === "visit" && candidate.date === date && candidate.supersededBy === null,
  )
  if (!entry || entry.id === correcting?.entryId) return null
  return (
    <Link to="/children/$childId/visit" params={{ childId: view.child.id }} search={{ corrects: entry.id }}>
      correct that entry instead
    </Link>
  )
}

function exchanged(draft: VisitDraft): VisitDraft {
  return {
    ...draft,
    right: { ...draft.right, length: draft.left.length },
    left: { ...draft.left, length: draft.right.length },
  }
}

function devicesOf({ course }: CourseReading): readonly string[] {
  const names = course.visits.flatMap((visit) => EYES.map((eye) => visit[eye]?.axialLength?.device))
  return [...new Set(names.filter((name) => name !== undefined))]
}
