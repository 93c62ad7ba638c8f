import type { Catalogue } from "../../engine/say.js"
import { archive } from "./archive.js"
import { beforeMyopia } from "./before-myopia.js"
import { calendar } from "./calendar.js"
import { chart } from "./chart.js"
import { child } from "./child.js"
import { choices } from "./choices.js"
import { consent } from "./consent.js"
import { cost } from "./cost.js"
import { dicom } from "./dicom.js"
import { documents } from "./documents.js"
import { enter } from "./enter.js"
import { estimate } from "./estimate.js"
import { family } from "./family.js"
import { familyLinks } from "./family-links.js"
import { fhir } from "./fhir.js"
import { imports } from "./imports.js"
import { inbox } from "./inbox.js"
import { instruments } from "./instruments.js"
import { messages } from "./messages.js"
import { order } from "./order.js"
import { pages } from "./pages.js"
import { protocol } from "./protocol.js"
import { recordVisits } from "./record-visits.js"
import { reference } from "./reference.js"
import { research } from "./research.js"
import { response } from "./response.js"
import { safety } from "./safety.js"
import { server } from "./server.js"
import { settings } from "./settings.js"
import { share } from "./share.js"
import { supply } from "./supply.js"
import { tables } from "./tables.js"
import { templates } from "./templates.js"
import { today } from "./today.js"
import { tokens } from "./tokens.js"
import { travel } from "./travel.js"
import { visit } from "./visit.js"
import { webConsent } from "./web-consent.js"
import { webCost } from "./web-cost.js"
import { webMessages } from "./web-messages.js"
import { webOrder } from "./web-order.js"
import { webPapers } from "./web-papers.js"
import { webSafety } from "./web-safety.js"
import { webSupply } from "./web-supply.js"
import { why } from "./why.js"

/** Everything said in Spanish. */
export const spanish: Catalogue = {
  ...dicom,
  ...instruments,
  ...inbox,
  ...tables,
  ...imports,
  ...fhir,
  ...archive,
  ...research,
  ...tokens,
  ...beforeMyopia,
  ...calendar,
  ...chart,
  ...child,
  ...choices,
  ...consent,
  ...cost,
  ...documents,
  ...enter,
  ...estimate,
  ...family,
  ...messages,
  ...order,
  ...pages,
  ...protocol,
  ...reference,
  ...response,
  ...recordVisits,
  ...safety,
  ...server,
  ...settings,
  ...supply,
  ...today,
  ...travel,
  ...visit,
  ...webConsent,
  ...webCost,
  ...webMessages,
  ...webOrder,
  ...webPapers,
  ...webSafety,
  ...webSupply,
  ...why,
  ...templates,
  ...familyLinks,
  ...share,
}
