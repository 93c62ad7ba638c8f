import { Link } from "@tanstack/react-router"
import { lazy, Suspense, useMemo, useState } from "react"
import { dateWords } from "../../chart/words.js"
import { myopiaOf } from "../../engine/growth/myopia.js"
import { say } from "../../engine/say.js"
import { evidence } from "../../evidence/index.js"
import type { ChildView } from "../../server/contract/child.js"
import type { PracticeAnswer } from "../../server/contract/practice.js"
import { ByEighteenCard } from "../child/by-eighteen-card.js"
import { CheckList, ConcernList } from "../child/checks.js"
import { ChildHeading } from "../child/child-heading.js"
import { ChildTabs } from "../child/child-tabs.js"
import { DutyCard } from "../child/duty-card.js"
import { Explained } from "../child/explained.js"
import { FigureSection } from "../child/figure-section.js"
import { GrowthCard } from "../child/growth-card.js"
import { RecordList } from "../child/record-list.js"
import { ToDecide } from "../child/to-decide.js"
import { TreatmentCard } from "../child/treatment-card.js"
import { failureInWords } from "../client.js"
import { EnterMenu } from "../enter/enter-menu.js"
import { takeMessage } from "../flash.js"
import { Notice } from "../parts/notice.js"
import { PageHeading } from "../parts/page-heading.js"
import { Waiting } from "../parts/waiting.js"
import { useChild, usePractice } from "../queries.js"
import { type CourseReading, readCourse } from "../reading.js"

// Few children need it, and the page is what must be quick.
const BeforeMyopiaCard = lazy(async () => ({
  default: (await import("../child/before-myopia-card.js")).BeforeMyopiaCard,
}))

export function ChildPage({ childId }: { readonly childId: string }) {
  const child = useChild(childId)
  const practice = usePractice()
  const failure = child.error ?? practice.error
  if (failure) {
    return (
      <>
        <PageHeading title={say("This child cannot be shown")} />
        <p className="form-fault">{failureInWords(failure)}</p>
      </>
    )
  }
  if (!child.data || !practice.data) return <Waiting for={say("the child’s record")} />
  return <ChildOf view={child.data} practice={practice.data} />
}

function ChildOf({ view, practice }: { readonly view: ChildView; readonly practice: PracticeAnswer }) {
  const reading = useMemo(() => readCourse(view.course, practice), [view.course, practice])
  const [message, setMessage] = useState(takeMessage)
  return (
    <>
      <div className="page-head">
        <ChildHeading view={view} reading={reading} />
        <div className="actions">
          <EnterMenu view={view} reading={reading} onDone={setMessage} />
          <Link
            className="button primary"
            to="/children/$childId/visit"
            params={{ childId: view.child.id }}
            search={{}}
          >
            {say("Enter visit")}
          </Link>
        </div>
      </div>
      <ChildTabs childId={view.child.id} />
      <p className="print-only soft small">
        {say("{practice}, as of {day}", { practice: practice.name, day: dateWords(reading.today) })}
      </p>
      <Notice message={message} />
      <ConcernList childId={view.child.id} reading={reading} />
      <CheckList view={view} checks={reading.assessment.checks} show="doubts" />
      <div className="with-aside">
        <FigureSection view={view} reading={reading} />
        <aside className="aside" aria-label={say("What the figures say")}>
          <GrowthCard reading={reading} toDecide={<ToDecide reading={reading} childId={view.child.id} />}>
            <Explained view={view} reading={reading} onDone={setMessage} />
          </GrowthCard>
          <TreatmentCard reading={reading} />
          <DutyCard reading={reading} childId={view.child.id} />
        </aside>
        <div className="under">
          {isBeforeMyopia(reading) && (
            <Suspense>
              <BeforeMyopiaCard reading={reading} />
            </Suspense>
          )}
          <ByEighteenCard reading={reading} />
          <CheckList view={view} checks={reading.assessment.checks} show="notes" />
          <RecordList view={view} onDone={setMessage} />
        </div>
      </div>
    </>
  )
}

function isBeforeMyopia({ course, today }: CourseReading): boolean {
  return myopiaOf(course, today, evidence.growth.values.myopiaCutOffD.value) === "not-myopic"
}
