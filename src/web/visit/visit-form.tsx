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
import { myopiaOf } from "../../engine/growth/myopia.js"
import { missingFrom } from "../../engine/protocol/examination-plan.js"
import { QUESTIONS } from "../../engine/protocol/questions.js"
import { msg, say } from "../../engine/say.js"
import { evidence } from "../../evidence/index.js"
import type { ChildView } from "../../server/contract/child.js"
import type { VisitBody, VisitCorrectionBody } from "../../server/contract/entry.js"
import { failureInWords, Refused } from "../client.js"
import { newEntryId } from "../entry-id.js"
import { PageHeading } from "../parts/page-heading.js"
import { Said } from "../parts/said.js"
import { useRecord } from "../queries.js"
import type { CourseReading } from "../reading.js"
import type { Correcting } from "./correcting.js"
import { dateFault, OtherVisit } from "./date-fault.js"
import { limitFaults, serverFaults, withoutFields } from "./draft-faults.js"
import { focusEntry, focusNextEntry } from "./entry-walk.js"
import { readDraft } from "./examination.js"
import { ExaminationTable } from "./examination-table.js"
import { fieldNotes } from "./field-notes.js"
import { ifSaved } from "./if-saved.js"
import { dropDraft, keepDraft } from "./kept-draft.js"
import { yesKey } from "./question-row.js"
import { signsIn } from "./red-flag-notice.js"
import { VisitAside } from "./visit-aside.js"
import { isEmpty, type VisitDraft } from "./visit-draft.js"
import { VisitHead } from "./visit-head.js"
import { visitPlan } from "./visit-plan.js"
import { WhyOwed } from "./why-owed.js"

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
  // Saving was tried with something owed missing: it is named, and the next word is the person's.
  const [asking, setAsking] = useState(false)
  const add = useRecord<VisitBody>(view.child.id, "visits")
  const correct = useRecord<VisitCorrectionBody>(view.child.id, `visits/${correcting?.entryId}/correction`)
  const request = correcting ? correct : add
  const fromServer = serverFaults(request.error instanceof Refused ? request.error.problems : [])

  useEffect(() => {
    if (draft !== start && !isEmpty(draft)) keepDraft(draftName, draft)
  }, [draft, start, draftName])
  useEffect(() => {
    form.current?.querySelector<HTMLElement>("[data-entry]")?.focus({ preventScroll: true })
  }, [])

  const read = useMemo(() => readDraft(draft, correcting?.visit), [draft, correcting])
  const beyond = useMemo(() => limitFaults(read.visit), [read])
  const ownFaults = [...read.faults, ...beyond]
  const shownFaults = ownFaults.filter(({ eye, field }) => tried || left.has(`${eye} ${field}`))
  // The engine follows a moment behind the typing, so that no key ever waits for it.
  const sound = useDeferredValue(useMemo(() => withoutFields(read.visit, beyond), [read, beyond]))
  const sane = dateFault(sound.date, reading, correcting) === undefined
  const shownAnswerFaults = read.answerFaults.filter(({ question }) => tried || left.has(question))
  const day = dateFault(draft.date, reading, correcting) === undefined ? draft.date : reading.today
  const { found, plan, title } = useMemo(() => {
    const cutOffD = evidence.growth.values.myopiaCutOffD.value
    const isBeforeMyopia = myopiaOf(reading.course, day, cutOffD) === "not-myopic"
    const without = correcting?.visit.date
    return visitPlan({ reading, date: day, choice: draft.stage, isBeforeMyopia, without })
  }, [reading, day, draft.stage, correcting])
  const missing = useMemo(
    () => missingFrom(plan, read.visit, plan.stage === found.stage ? found.owed?.visits : []),
    [plan, found, read],
  )
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
    setAsking(false)
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
    if (ownFaults.length + read.answerFaults.length > 0 || !sane) return focusFirstFault()
    // A correction mends what was entered; it is not the time to complete what was not.
    if (missing.length > 0 && !asking && !correcting) {
      setAsking(true)
      return focusFirstFault()
    }
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
      focusNextEntry(target)
    }
  }
  const failure = request.error && !(request.error instanceof Refused) ? failureInWords(request.error) : null
  const general = [
    ...(failure ? [failure] : []),
    ...(request.error instanceof Refused && request.error.problems.length === 0 ? [request.error.title] : []),
    ...fromServer.general,
    ...(empty ? [say("Nothing is entered yet.")] : []),
  ]
  const heading = correcting ? msg("{child}, correct a visit") : msg("{child}, visit")
  const dateProblem = fromServer.date ?? dateFault(draft.date, reading, correcting)
  return (
    <form ref={form} onSubmit={save} onKeyDown={onKeyDown} noValidate>
      <div className="page-head">
        <PageHeading title={say(heading, { child: view.child.name })}>
          <Said message={heading} values={{ child: <bdi>{view.child.name}</bdi> }} />
        </PageHeading>
        <p className="soft small">
          <Said
            message="{yes} {no} answer, {dash} leave out · {enter} next · {tab} every field · {ctrl} {enter} save"
            values={{
              yes: <kbd>{yesKey()}</kbd>,
              no: <kbd>n</kbd>,
              dash: <kbd>-</kbd>,
              enter: <kbd>Enter</kbd>,
              tab: <kbd>Tab</kbd>,
              ctrl: <kbd>Ctrl</kbd>,
            }}
          />
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
        <section className="card" aria-label={say("Measurements")}>
          <VisitHead
            draft={draft}
            onChange={change}
            today={reading.today}
            found={found}
            dateProblem={dateProblem}
            wayOut={<OtherVisit view={view} date={draft.date} correcting={correcting} />}
            reason={correcting && { text: reason, fault: fromServer.reason }}
            onReason={(text) => {
              setReason(text)
              if (request.error) request.reset()
            }}
          />
          <ExaminationTable
            plan={plan}
            urgent={reading.rules.contacts.urgent}
            draft={draft}
            onChange={change}
            faults={[...shownFaults, ...fromServer.fields]}
            answerFaults={shownAnswerFaults}
            notes={notes}
            checks={consequence?.checks ?? []}
            devices={devicesOf(reading)}
            onLeave={(field) => setLeft(new Set(left).add(field))}
          />
          <WhyOwed plan={plan} />
        </section>
        <VisitAside
          reading={reading}
          consequence={isEmpty(draft) ? null : consequence}
          waitsFor={
            isEmpty(draft) ? say("Nothing is entered yet.") : say("The day of the visit must be right first.")
          }
          faults={shownFaults}
          answerFaults={shownAnswerFaults}
          signs={signsIn(draft.answers)}
          cautions={cautionsIn(draft)}
          title={title}
          missing={missing}
          asking={asking}
          onGo={(id) => focusEntry(form.current, id)}
          onSaveAnyway={() => save()}
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

function exchanged(draft: VisitDraft): VisitDraft {
  return {
    ...draft,
    right: { ...draft.right, length: draft.left.length },
    left: { ...draft.left, length: draft.right.length },
  }
}

/** Cautions answered with yes, by name. */
function cautionsIn({ answers }: VisitDraft): readonly string[] {
  const given = QUESTIONS.filter(({ id, kind }) => kind === "caution" && answers[id]?.answer === "yes")
  return given.map(({ name }) => say(name))
}

function devicesOf({ course }: CourseReading): readonly string[] {
  const names = course.visits.flatMap((visit) => EYES.map((eye) => visit[eye]?.axialLength?.device))
  return [...new Set(names.filter((name) => name !== undefined))]
}
