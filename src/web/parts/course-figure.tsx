import { type KeyboardEvent, type PointerEvent, useMemo, useRef, useState } from "react"
import { type CourseFigureInput, type CourseLayout, courseFigure } from "../../chart/index.js"
import { say } from "../../engine/say.js"
import { Drawing } from "./drawing.js"
import { nearestStop, stopAfterKey } from "./stops.js"
import { useWidth } from "./use-width.js"

/**
 * The course figure with a reading line over it. The drawing is laid out anew when the page changes width; while the
 * pointer or the arrow keys move, only the line and the read-out are drawn again.
 */
export function CourseFigure({
  input,
  toAge18,
}: {
  readonly input: CourseFigureInput
  readonly toAge18: boolean
}) {
  const box = useRef<HTMLDivElement>(null)
  const width = useWidth(box)
  const { svg, layout } = useMemo(() => {
    const opening = courseFigure(input, { width })
    if (!toAge18) return opening
    return courseFigure(input, { width, ageDomain: [opening.layout.age.domain[0], 18] })
  }, [input, width, toAge18])
  return (
    <div className="course-figure" ref={box}>
      <Drawing svg={svg} />
      <ReadingLine layout={layout} />
    </div>
  )
}

function ReadingLine({ layout }: { readonly layout: CourseLayout }) {
  const { stops, today } = layout
  const [at, setAt] = useState(() => nearestStop(stops, today?.x ?? layout.width))
  const [shown, setShown] = useState(false)
  const index = Math.min(at, stops.length - 1)
  const stop = stops[index]
  if (!stop) return null

  const onPointerMove = (event: PointerEvent<HTMLDivElement>) => {
    const frame = event.currentTarget.getBoundingClientRect()
    setAt(nearestStop(stops, ((event.clientX - frame.left) / frame.width) * layout.width))
    setShown(true)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape") return setShown(false)
    const next = stopAfterKey(event.key, { at: index, count: stops.length })
    if (next === null) return
    event.preventDefault()
    setAt(next)
    setShown(true)
  }
  const onLeft = stop.x < layout.width / 2
  return (
    <div
      className="reading"
      role="slider"
      tabIndex={0}
      aria-label={say("Read the figure date by date")}
      aria-valuemin={1}
      aria-valuemax={stops.length}
      aria-valuenow={index + 1}
      aria-valuetext={stop.lines.join(". ")}
      onPointerMove={onPointerMove}
      onPointerLeave={(event) => {
        if (document.activeElement !== event.currentTarget) setShown(false)
      }}
      onFocus={() => setShown(true)}
      onBlur={() => setShown(false)}
      onKeyDown={onKeyDown}
    >
      {shown && (
        <>
          <div className="reading-line" style={{ insetInlineStart: `${(stop.x / layout.width) * 100}%` }} />
          <div
            className="reading-text"
            style={
              onLeft
                ? { left: `calc(${(stop.x / layout.width) * 100}% + 12px)` }
                : { right: `calc(${(1 - stop.x / layout.width) * 100}% + 12px)` }
            }
          >
            {stop.lines.map((line, i) =>
              i === 0 ? <b key={line}>{line}</b> : <span key={line}>{line}</span>,
            )}
          </div>
        </>
      )}
    </div>
  )
}
