import { ageYears } from "../engine/calendar.js"
import { say } from "../engine/say.js"
import type {
  CourseFigure,
  CourseFigureInput,
  CourseFigureOptions,
  CourseLayout,
} from "./course-figure-input.js"
import { courseMessage, courseTitle } from "./course-message.js"
import { courseStops } from "./course-stops.js"
import { dutiesTrack } from "./duties-track.js"
import { type Frame, frame as frameOf, type Track, within } from "./frame.js"
import { growthTrack } from "./growth-track.js"
import { forecastEye, lengthTrack } from "./length-track.js"
import { label, line } from "./marks.js"
import { refractionTrack } from "./refraction-track.js"
import { safetyTrack } from "./safety-track.js"
import { el, type Rectangle, type SvgElement } from "./svg.js"
import { svgDocument } from "./svg-document.js"
import { LINE_HEIGHT, TEXT, textWidth, wrapped } from "./text-size.js"
import { treatmentTrack } from "./treatment-track.js"
import { ageWords } from "./words.js"

const HEAD = 44
const BETWEEN = 26
/** Height of the line that carries the title of a track when it stands above the track. */
const TITLE_LINE = 22

/**
 * One child's course on one age axis: length, growth, refraction, treatment, safety and duties under each other, so
 * that everything stands under the age at which it happened.
 *
 * @example
 * const { svg, layout } = courseFigure(input, { width: 560 })
 * layout.stops[0]?.lines // => ["8 y 3 m · 14 Jun 2025", "Length: right 23.62 mm ± 0.05, ..."]
 */
export function courseFigure(input: CourseFigureInput, options: CourseFigureOptions = {}): CourseFigure {
  const { width = 880, ageDomain = openingWindow(input), colours: kind = "themed" } = options
  if (!(width >= 320)) throw new RangeError(`width must be at least 320: ${width}`)
  if (!(ageDomain[1] > ageDomain[0])) throw new RangeError(`ageDomain must rise: ${ageDomain.join(" to ")}`)
  const { born } = input.course.child
  const todayAge = ageYears({ born, on: input.today })
  const frame = frameOf({ width, domain: ageDomain, todayAge, kind })
  const tracks = stacked(
    [lengthTrack, growthTrack, refractionTrack, treatmentTrack, safetyTrack, dutiesTrack].map((track) =>
      track(input, frame),
    ),
    frame,
  )
  const last = tracks.at(-1) as PlacedTrack
  const bottom = last.plot.y + last.plot.height + 8
  const notes = wrapped(note(input, frame), { width: width - 4, size: TEXT.small }).filter(
    (text) => text !== "",
  )
  const height = Math.ceil(bottom + 10 + notes.length * LINE_HEIGHT)

  const svg = svgDocument({
    width,
    height,
    title: courseTitle(input, ageDomain),
    description: courseMessage(input, ageDomain),
    content: [
      ...tracks.flatMap(({ track, plot }) => track.behind?.(plot) ?? []),
      ...ageAxis(frame, bottom),
      ...todayLine(frame, { bottom, age: ageWords({ born, on: input.today }) }),
      ...tracks.map(({ track, plot }) =>
        el("g", { "data-track": track.name }, [...heading(track, plot, frame), ...track.marks(plot)]),
      ),
      ...notes.map((text, i) =>
        label(
          text,
          { x: 0, y: bottom + 18 + i * LINE_HEIGHT },
          { fill: frame.colours.soft, size: TEXT.small },
        ),
      ),
    ],
  })
  return { svg, layout: layoutOf(input, { frame, tracks, height, todayAge }) }
}

/** From one year before the first data to about three years after the last, in whole years, not beyond 18. */
export function openingWindow({ course, today }: CourseFigureInput): readonly [number, number] {
  const dates = [
    ...course.visits.map(({ date }) => date),
    ...(course.treatments ?? []).flatMap(({ from, to }) => [from, to ?? from]),
  ]
  const ages = (dates.length === 0 ? [today] : dates).map((on) => ageYears({ born: course.child.born, on }))
  const [first, last] = [Math.min(...ages), Math.max(...ages)]
  const from = Math.max(0, Math.floor(first - 1))
  const expected = Math.max(Math.round(last + 3), Math.ceil(ageYears({ born: course.child.born, on: today })))
  // What was measured after 18 is still shown: the limit holds for what is only expected.
  const to = Math.max(Math.min(18, expected), Math.ceil(last))
  return [Math.min(from, to - 2), to]
}

interface PlacedTrack {
  readonly track: Track
  readonly plot: Rectangle
}

function stacked(tracks: readonly Track[], frame: Frame): readonly PlacedTrack[] {
  let top = HEAD
  return tracks.map((track) => {
    const y = frame.narrow ? top + TITLE_LINE : top
    const height = frame.narrow ? track.height : Math.max(track.height, gutterHeight(track, frame))
    top = y + height + (frame.narrow ? BETWEEN - 8 : BETWEEN)
    return { track, plot: { x: frame.left, y, width: frame.right - frame.left, height: track.height } }
  })
}

/** Lines of the unit in the gutter left of a wide figure. */
function unitLines(track: Track, frame: Frame): readonly string[] {
  return track.unit === "" ? [] : wrapped(track.unit, { width: frame.left - 40, size: TEXT.small })
}

function gutterHeight(track: Track, frame: Frame): number {
  return (1 + unitLines(track, frame).length + (track.key ? 1 : 0)) * LINE_HEIGHT + 4
}

function heading(track: Track, plot: Rectangle, frame: Frame): readonly SvgElement[] {
  const { ink, soft } = frame.colours
  const title = { fill: ink, size: TEXT.title, bold: true }
  const unit = { fill: soft, size: TEXT.small }
  const keyAt = (x: number, y: number) =>
    track.key ? [el("g", { transform: `translate(${x},${y})` }, track.key.marks)] : []
  if (frame.narrow) {
    const y = plot.y - 9
    return [
      label(track.title, { x: 0, y }, title),
      ...(track.unit === "" ? [] : [label(track.unit, { x: textWidth(track.title, title) + 8, y }, unit)]),
      ...keyAt(Math.round(frame.width - (track.key?.width ?? 0) - 2), y),
    ]
  }
  const lines = unitLines(track, frame)
  const y = plot.y + 12
  return [
    label(track.title, { x: 0, y }, title),
    ...lines.map((text, i) => label(text, { x: 0, y: y + (i + 1) * LINE_HEIGHT }, unit)),
    ...keyAt(0, y + (lines.length + 1) * LINE_HEIGHT + 2),
  ]
}

function ageAxis(frame: Frame, bottom: number): readonly SvgElement[] {
  const { colours, x, domain } = frame
  const style = { fill: colours.soft, size: TEXT.small, anchor: "middle" } as const
  const room = Math.floor((frame.right - frame.left) / 28)
  const ages = x.ticks(Math.min(room, Math.ceil(domain[1] - domain[0]))).filter(Number.isInteger)
  return [
    label(
      frame.narrow ? say("age|axis") : say("age, years"),
      { x: 0, y: 14 },
      { fill: colours.soft, size: TEXT.small },
    ),
    ...ages.flatMap((age) => [
      line({ x: x(age), y: HEAD - 20 }, { x: x(age), y: bottom }, { stroke: colours.faint }),
      label(String(age), { x: x(age), y: 14 }, style),
    ]),
  ]
}

function todayLine(frame: Frame, { bottom, age }: { readonly bottom: number; readonly age: string }) {
  const { todayX, colours, width } = frame
  if (todayX === null) return []
  const text = say("today, {age}", { age })
  const room = todayX + 5 + textWidth(text, { size: TEXT.small }) <= width
  const at = { x: todayX + (room ? 5 : -5), y: 31 }
  return [
    line({ x: todayX, y: 20 }, { x: todayX, y: bottom }, { stroke: colours.soft, dash: "2 3" }),
    label(text, at, { fill: colours.ink, size: TEXT.small, anchor: room ? "start" : "end" }),
  ]
}

/** What whiskers and shading mean, said on the figure itself since a print has no page around it. */
function note(input: CourseFigureInput, frame: Frame): string {
  const eye = forecastEye(input, frame.domain)
  const whiskers =
    input.lengthSd.length === 0 && input.growthIntervals.length === 0
      ? ""
      : `${say("Whiskers: 95 % interval of the measurement.")} `
  const shading =
    eye === null
      ? ""
      : say(
          "{eye, select, right {Forecast of the right eye} other {Forecast of the left eye}}: median, with shading from 5 to 95 % and, darker, from 25 to 75 %.",
          { eye },
        )
  return (whiskers + shading).trim()
}

function layoutOf(
  input: CourseFigureInput,
  {
    frame,
    tracks,
    height,
    todayAge,
  }: {
    readonly frame: Frame
    readonly tracks: readonly PlacedTrack[]
    readonly height: number
    readonly todayAge: number
  },
): CourseLayout {
  const { width, domain, left, right, x } = frame
  return {
    width,
    height,
    age: { domain, range: [left, right] },
    tracks: tracks.map(({ track, plot }) => ({ name: track.name, title: track.title, ...plot })),
    today: within(domain, todayAge) ? { ageYears: todayAge, x: x(todayAge) } : null,
    stops: courseStops(input, { domain, x }),
  }
}
