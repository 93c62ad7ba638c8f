import { Suspense, useMemo, useState } from "react"
import { say } from "../../engine/say.js"
import type { ChildView } from "../../server/contract/child.js"
import type { PracticeAnswer } from "../../server/contract/practice.js"
import { ChildHeading } from "../child/child-heading.js"
import { CHILD_PARTS, type ChildPart } from "../child/child-parts.js"
import { ChildTabs } from "../child/child-tabs.js"
import { failureInWords } from "../client.js"
import { takeMessage } from "../flash.js"
import { Notice } from "../parts/notice.js"
import { PageHeading } from "../parts/page-heading.js"
import { Waiting } from "../parts/waiting.js"
import { useChild, usePractice } from "../queries.js"
import { readCourse } from "../reading.js"
import { NotFoundPage } from "./not-found-page.js"

/** One part of a child's page: consent, supply, safety, cost, choices. */
export function ChildPartPage({ childId, name }: { readonly childId: string; readonly name: string }) {
  const child = useChild(childId)
  const practice = usePractice()
  const failure = child.error ?? practice.error
  const shown = Object.hasOwn(CHILD_PARTS, name) ? CHILD_PARTS[name] : undefined
  if (!shown) return <NotFoundPage />
  if (failure) {
    return (
      <>
        <PageHeading title={say("This child cannot be shown")} />
        <p className="form-fault">{failureInWords(failure)}</p>
      </>
    )
  }
  if (!child.data || !practice.data) return <Waiting for={say("the child’s record")} />
  return <PartOf view={child.data} practice={practice.data} part={shown} />
}

function PartOf(props: {
  readonly view: ChildView
  readonly practice: PracticeAnswer
  readonly part: ChildPart
}) {
  const { view, practice, part } = props
  const reading = useMemo(() => readCourse(view.course, practice), [view.course, practice])
  const [message, setMessage] = useState(takeMessage)
  return (
    <>
      <div className="page-head">
        <ChildHeading view={view} reading={reading} />
      </div>
      <ChildTabs childId={view.child.id} />
      <Notice message={message} />
      <Suspense fallback={<Waiting for={say("this part")} />}>
        <part.Page view={view} reading={reading} practice={practice} onDone={setMessage} />
      </Suspense>
    </>
  )
}
