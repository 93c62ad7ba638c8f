import { EYES } from "../engine/course.js"
import { say } from "../engine/say.js"
import type { CourseFigureInput } from "./course-figure-input.js"
import { type EyePoint, refractionPoints } from "./course-points.js"
import { earlierKey, eyeMark, eyeShift } from "./eye-mark.js"
import { EMPTY_HEIGHT, emptyNote, type Frame, type Track, valueAxis, within } from "./frame.js"
import { linearScale } from "./linear-scale.js"
import { el, polygon } from "./svg.js"
import { fixed } from "./words.js"

/** Spherical equivalent of both eyes; more nearsighted is lower. */
export function refractionTrack(input: CourseFigureInput, frame: Frame): Track {
  const { colours, domain } = frame
  const shared = {
    name: "refraction",
    title: say("Refraction"),
    unit: say("D, spherical equivalent"),
  } as const
  const all = refractionPoints(input)
  const points = all.filter(({ age }) => within(domain, age))
  if (points.length === 0) {
    const why = all.length === 0 ? say("no refraction recorded yet") : say("no refraction at these ages")
    return { ...shared, height: EMPTY_HEIGHT, marks: (plot) => [emptyNote(frame, plot, why)] }
  }
  const values = points.map(({ value }) => value)
  const [low, high] = [Math.min(...values), Math.max(...values)]
  // Half a dioptre at least, so that the error of measurement does not look like a course.
  const slack = Math.max(0.15, (0.5 - (high - low)) / 2)
  const earlier = points.filter(({ from }) => from !== null)

  return {
    ...shared,
    height: 76,
    key:
      earlier.length === 0
        ? undefined
        : earlierKey(
            say("old glasses|key"),
            EYES.filter((eye) => earlier.some((point) => point.eye === eye)),
            colours,
          ),
    marks: (plot) => {
      const y = linearScale([low - slack, high + slack], [plot.y + plot.height, plot.y])
      const along = (line: readonly EyePoint[]) =>
        polygon(
          line.map(({ age, eye, value }) => ({ x: frame.x(age) + eyeShift(eye), y: y(value) })),
          { closed: false },
        )
      const ticks = dioptreTicks([low - slack, high + slack])
      const digits = ticks.every(Number.isInteger) ? 0 : 1
      return [
        ...valueAxis({ frame, ticks, y, words: (dioptres) => fixed(dioptres, digits) }),
        ...EYES.flatMap((eye) => {
          const ofEye = points.filter((point) => point.eye === eye)
          if (ofEye.length < 2) return []
          const dash = eye === "left" ? "3 3" : undefined
          const stroke = {
            fill: "none",
            stroke: colours.shadeDark,
            "stroke-width": 1.1,
            "stroke-dasharray": dash,
          }
          return [el("path", { d: along(ofEye), ...stroke })]
        }),
        ...points.map(({ age, eye, value, from }) =>
          eyeMark({ eye, x: frame.x(age) + eyeShift(eye), y: y(value), earlier: from !== null }, colours),
        ),
      ]
    },
  }
}

/** Whole or half dioptres, as prescriptions are thought of, in the finest step that gives at most four of them. */
function dioptreTicks([low, high]: readonly [number, number]): readonly number[] {
  const ticksBy = (step: number) => {
    const first = Math.ceil(low / step)
    return Array.from({ length: Math.floor(high / step) - first + 1 }, (_, i) => (first + i) * step)
  }
  return [0.5, 1, 2, 5].map(ticksBy).find((ticks) => ticks.length <= 4) ?? ticksBy(10)
}
