import type { Catalogue } from "../../engine/say.js"
import { calendar } from "./calendar.js"
import { consent } from "./consent.js"
import { cost } from "./cost.js"
import { documents } from "./documents.js"
import { estimate } from "./estimate.js"
import { family } from "./family.js"
import { messages } from "./messages.js"
import { order } from "./order.js"
import { recordFigure } from "./record-figure.js"
import { recordVisits } from "./record-visits.js"
import { safety } from "./safety.js"
import { share } from "./share.js"
import { travel } from "./travel.js"
import { webPapers } from "./web-papers.js"

/** Everything said in Simplified Chinese: what families read. */
export const simplifiedChinese: Catalogue = {
  ...calendar,
  ...consent,
  ...cost,
  ...documents,
  ...estimate,
  ...family,
  ...messages,
  ...order,
  ...recordFigure,
  ...recordVisits,
  ...safety,
  ...share,
  ...travel,
  ...webPapers,
}
