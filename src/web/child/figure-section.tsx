import { lazy, Suspense, useMemo, useState } from "react"
import { type CourseFigureInput, courseFigure } from "../../chart/index.js"
import { courseCurves } from "../../engine/course-curves.js"
import { say } from "../../engine/say.js"
import { evidence } from "../../evidence/index.js"
import type { ChildView } from "../../server/contract/child.js"
import { CourseFigure } from "../parts/course-figure.js"
import { Said } from "../parts/said.js"
import { Waiting } from "../parts/waiting.js"
import type { CourseReading } from "../reading.js"

// Loaded when it is asked for: the page is what must be quick.
const CourseTables = lazy(async () => ({ default: (await import("./course-tables.js")).CourseTables }))

/** Width of the figure that is copied and saved, px. */
const SAVED_WIDTH = 1000

/** The course on one age axis, and everything that can be done with the figure. */
export function FigureSection({
  view,
  reading,
}: {
  readonly view: ChildView
  readonly reading: CourseReading
}) {
  const input = useMemo<CourseFigureInput>(() => courseCurves({ ...reading, evidence }), [reading])
  const [toAge18, setToAge18] = useState(false)
  const [asTable, setAsTable] = useState(false)
  const [said, setSaid] = useState("")

  const plainSvg = () => {
    const { layout } = courseFigure(input, { width: SAVED_WIDTH })
    return courseFigure(input, {
      width: SAVED_WIDTH,
      colours: "plain",
      ...(toAge18 ? { ageDomain: [layout.age.domain[0], 18] as const } : {}),
    }).svg
  }
  const copy = () => {
    copySvg(plainSvg()).then(
      () => setSaid(say("The figure is copied as SVG.")),
      () => setSaid(say("The browser did not allow copying; save the figure instead.")),
    )
  }
  const save = () => {
    saveFile({
      name: `course-${view.child.number ?? view.child.id}.svg`,
      type: "image/svg+xml",
      text: plainSvg(),
    })
    setSaid(say("The figure is saved to your downloads."))
  }
  return (
    <section className="card course" aria-label={say("Course")}>
      <CourseFigure input={input} toAge18={toAge18} />
      <div className="links">
        <button type="button" className="link" aria-expanded={asTable} onClick={() => setAsTable(!asTable)}>
          {asTable ? say("without the table") : say("as a table")}
        </button>
        <button type="button" className="link" aria-pressed={toAge18} onClick={() => setToAge18(!toAge18)}>
          {toAge18 ? say("the coming years only") : say("to age 18")}
        </button>
        <button type="button" className="link" onClick={copy}>
          {say("copy figure")}
        </button>
        <button type="button" className="link" onClick={save}>
          {say("save figure")}
        </button>
        <button type="button" className="link" onClick={() => window.print()}>
          {say("print")}
        </button>
        <span className="soft small hint">
          <Said
            message="{left} {right} read the figure"
            values={{ left: <kbd>←</kbd>, right: <kbd>→</kbd> }}
          />
        </span>
        <span role="status" className="soft small">
          {said}
        </span>
      </div>
      {asTable && (
        <Suspense fallback={<Waiting for={say("the table")} />}>
          <CourseTables input={input} />
        </Suspense>
      )}
    </section>
  )
}

async function copySvg(svg: string): Promise<void> {
  // As a picture where the browser can, and as text in any case, so that a text editor takes it too.
  const types = ["text/plain", "image/svg+xml"].filter(
    (type) => ClipboardItem.supports?.(type) ?? type === "text/plain",
  )
  const items = Object.fromEntries(types.map((type) => [type, new Blob([svg], { type })]))
  await navigator.clipboard.write([new ClipboardItem(items)])
}

function saveFile({
  name,
  type,
  text,
}: {
  readonly name: string
  readonly type: string
  readonly text: string
}): void {
  const url = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement("a")
  link.href = url
  link.download = name
  link.click()
  URL.revokeObjectURL(url)
}
