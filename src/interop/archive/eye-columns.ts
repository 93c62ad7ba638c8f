import type { EyeExamination } from "../../engine/course.js"
import type { Cell } from "./csv-row.js"

/**
 * What stands of one eye in the table of visits: the heading with its unit, and the figure. The headings are those that
 * the reader of tables knows by itself (interop/table); axes are in degrees.
 */
export const EYE_COLUMNS: readonly (readonly [title: string, figure: (eye: EyeExamination) => Cell])[] = [
  ["Axial length (mm)", ({ axialLength }) => axialLength?.mm],
  ["Number of readings", ({ axialLength }) => axialLength?.readings],
  ["Axial length SD (mm)", ({ axialLength }) => axialLength?.sdMm],
  ["Signal to noise", ({ axialLength }) => axialLength?.signalToNoise],
  ["Axial length method", ({ axialLength }) => axialLength?.method],
  ["Length device", ({ axialLength }) => axialLength?.device],
  ["Sphere (D)", ({ refraction }) => refraction?.sphere],
  ["Cylinder (D)", ({ refraction }) => refraction?.cylinder],
  ["Axis", ({ refraction }) => refraction?.axis],
  ["Cycloplegic", ({ refraction }) => refraction?.cycloplegic],
  ["Refraction method", ({ refraction }) => refraction?.method],
  ["Vertex distance (mm)", ({ refraction }) => refraction?.vertexDistanceMm],
  ["Refraction device", ({ refraction }) => refraction?.device],
  ["Flat radius (mm)", ({ corneaRadius }) => corneaRadius?.flat],
  ["Steep radius (mm)", ({ corneaRadius }) => corneaRadius?.steep],
  ["Flat meridian (degrees)", ({ corneaRadius }) => corneaRadius?.flatAxis],
  ["Steep meridian (degrees)", ({ corneaRadius }) => corneaRadius?.steepAxis],
  ["Flat power (D)", ({ corneaRadius }) => corneaRadius?.flatD],
  ["Steep power (D)", ({ corneaRadius }) => corneaRadius?.steepD],
  ["Cornea device", ({ corneaRadius }) => corneaRadius?.device],
  ["Photopic pupil (mm)", ({ pupil }) => pupil?.photopic],
  ["Mesopic pupil (mm)", ({ pupil }) => pupil?.mesopic],
  ["Amplitude of accommodation (D)", ({ accommodation }) => accommodation?.dioptres],
  ["Accommodation method", ({ accommodation }) => accommodation?.method],
  ["Distance logMAR", ({ acuity }) => acuity?.distanceLogMAR],
  ["Correction for distance", ({ acuity }) => acuity?.distanceCorrection],
  ["Near logMAR", ({ acuity }) => acuity?.nearLogMAR],
  ["Intraocular pressure (mmHg)", ({ intraocularPressure }) => intraocularPressure?.mmHg],
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
