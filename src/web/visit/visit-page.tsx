import { useNavigate } from "@tanstack/react-router"
import { useMemo, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import type { PracticeAnswer } from "../../server/contract/practice.js"
import { failureInWords } from "../client.js"
import { leaveMessage } from "../flash.js"
import { PageHeading } from "../parts/page-heading.js"
import { Waiting } from "../parts/waiting.js"
import { useChild, usePractice } from "../queries.js"
import { readCourse } from "../reading.js"
import { growthLine } from "../words.js"
import type { Correcting } from "./correcting.js"
import { dropDraft, keepInstruments, keptDraft, keptInstruments } from "./kept-draft.js"
import { draftOf, emptyDraft, instrumentsOf, type VisitDraft } from "./visit-draft.js"
import { VisitForm } from "./visit-form.js"

/** `corrects` is the entry of the visit that is corrected; without it a new visit is entered. */
export function VisitPage({
  childId,
  corrects,
}: {
  readonly childId: string
  readonly corrects?: string | undefined
}) {
  const child = useChild(childId)
  const practice = usePractice()
  const failure = child.error ?? practice.error
  if (failure) {
    return (
      <>
        <PageHeading title={say("This visit cannot be entered")} />
        <p className="form-fault">{failureInWords(failure)}</p>
      </>
    )
  }
  if (!child.data || !practice.data) return <Waiting for={say("the child’s record")} />
  return <VisitOf view={child.data} practice={practice.data} corrects={corrects} />
}

function VisitOf(props: {
  readonly view: ChildView
  readonly practice: PracticeAnswer
  readonly corrects: string | undefined
}) {
  const { view, practice, corrects } = props
  const navigate = useNavigate()
  const reading = useMemo(() => readCourse(view.course, practice), [view.course, practice])
  const correcting = correctedVisit(view, corrects)
  const draftName = corrects ?? view.child.id
  const [start] = useState((): VisitDraft => {
    const instruments = keptInstruments() ?? instrumentsOf(view.course)
    return (
      keptDraft(draftName) ??
      (correcting ? draftOf(correcting.visit, instruments) : emptyDraft(practice.today, instruments))
    )
  })
  if (corrects && !correcting) {
    return (
      <>
        <PageHeading title={say("This visit cannot be corrected")} />
        <p>{say("It is not in force any more: it was corrected or withdrawn before.")}</p>
      </>
    )
  }
  const onSaved = (saved: ChildView, draft: VisitDraft) => {
    dropDraft(draftName)
    keepInstruments(draft)
    const { assessment } = readCourse(saved.course, practice)
    const told = { day: dateWords(draft.date), growth: growthLine(assessment) }
    leaveMessage(
      correcting
        ? say("Visit of {day} corrected. Growth now: {growth}.", told)
        : say("Visit of {day} saved. Growth now: {growth}.", told),
    )
    navigate({ to: "/children/$childId", params: { childId: view.child.id } })
  }
  return (
    <VisitForm
      view={view}
      reading={reading}
      start={start}
      draftName={draftName}
      correcting={correcting}
      onSaved={onSaved}
    />
  )
}

function correctedVisit(view: ChildView, corrects: string | undefined): Correcting | null {
  const entry = view.entries.find(({ id, supersededBy }) => id === corrects && supersededBy === null)
  const visit = view.course.visits.find(({ date }) => date === entry?.date)
  return entry && visit ? { entryId: entry.id, visit } : null
}
