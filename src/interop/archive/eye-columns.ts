import type { EyeExamination } from "../../engine/course.js"
import type { Cell } from "./csv-row.js"

/** What stands of one eye in the table of visits: the heading with its unit, and the figure. */
export const EYE_COLUMNS: readonly (readonly [title: string, figure: (eye: EyeExamination) => Cell])[] = [
  ["Axial length (mm)", ({ axialLength }) => axialLength?.mm],
  ["Number of readings", ({ axialLength }) => axialLength?.readings],
  ["Standard deviation of the length (mm)", ({ axialLength }) => axialLength?.sdMm],
  ["Signal to noise", ({ axialLength }) => axialLength?.signalToNoise],
  ["Method of the length", ({ axialLength }) => axialLength?.method],
  ["Instrument of the length", ({ axialLength }) => axialLength?.device],
  ["Sphere (D)", ({ refraction }) => refraction?.sphere],
  ["Cylinder (D)", ({ refraction }) => refraction?.cylinder],
  ["Axis (degrees)", ({ refraction }) => refraction?.axis],
  ["Cycloplegic", ({ refraction }) => refraction?.cycloplegic],
  ["Method of the refraction", ({ refraction }) => refraction?.method],
  ["Vertex distance (mm)", ({ refraction }) => refraction?.vertexDistanceMm],
  ["Instrument of the refraction", ({ refraction }) => refraction?.device],
  ["Flat radius of the cornea (mm)", ({ corneaRadius }) => corneaRadius?.flat],
  ["Steep radius of the cornea (mm)", ({ corneaRadius }) => corneaRadius?.steep],
  ["Flat meridian (degrees)", ({ corneaRadius }) => corneaRadius?.flatAxis],
  ["Steep meridian (degrees)", ({ corneaRadius }) => corneaRadius?.steepAxis],
  ["Flat power (D)", ({ corneaRadius }) => corneaRadius?.flatD],
  ["Steep power (D)", ({ corneaRadius }) => corneaRadius?.steepD],
  ["Instrument of the cornea", ({ corneaRadius }) => corneaRadius?.device],
  ["Photopic pupil (mm)", ({ pupil }) => pupil?.photopic],
  ["Mesopic pupil (mm)", ({ pupil }) => pupil?.mesopic],
  ["Amplitude of accommodation (D)", ({ accommodation }) => accommodation?.dioptres],
  ["Method of accommodation", ({ accommodation }) => accommodation?.method],
  ["Distance acuity (logMAR)", ({ acuity }) => acuity?.distanceLogMAR],
  ["Correction for distance", ({ acuity }) => acuity?.distanceCorrection],
  ["Near acuity (logMAR)", ({ acuity }) => acuity?.nearLogMAR],
  ["Pressure of the eye (mmHg)", ({ intraocularPressure }) => intraocularPressure?.mmHg],
  ["Lens", ({ lensStatus }) => lensStatus],
  ["Dilated", ({ dilation }) => dilation?.dilated],
  ["Dilated pupil (mm)", ({ dilation }) => dilation?.pupilMm],
  [
    "Dilating drops",
    ({ dilation }) =>
      dilation?.drops
        ?.map(({ drop, concentrationPercent: percent }) =>
          percent === undefined ? drop : `${drop} ${percent} %`,
        )
        .join("; "),
  ],
]
