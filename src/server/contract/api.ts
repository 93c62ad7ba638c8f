import { assessmentAnswer, assessmentQuery } from "./assessment.js"
import { childCorrectionBody, childList, childView, listQuery, newChildBody } from "./child.js"
import { decideBody } from "./decide.js"
import { batchBody, documentAnswer, documentParams, documentQuery } from "./documents.js"
import {
  amendmentBody,
  childParams,
  concernBody,
  consentBody,
  decisionBody,
  entryParams,
  explanationBody,
  glassesBody,
  missedNightsBody,
  orderBody,
  paymentBody,
  supplyBody,
  treatmentBody,
  treatmentChangeBody,
  treatmentEndBody,
  visitBody,
  visitCorrectionBody,
  withdrawalBody,
} from "./entry.js"
import { familyContactBody } from "./family-contact.js"
import {
  linkParams,
  linksAnswer,
  newLinkBody,
  openLinkBody,
  sharedAnswer,
  sharedParams,
} from "./family-links.js"
import { fhirApi } from "./fhir.js"
import { fileAnswer, fileParams, fileQuery } from "./files.js"
import { importsApi } from "./imports.js"
import { inboxApi } from "./inbox.js"
import { instrumentsApi } from "./instruments.js"
import { leaveApi } from "./leave.js"
import { lotAnswer, lotParams } from "./lot.js"
import {
  listParams,
  listText,
  lookAnswer,
  messageAnswer,
  messageParams,
  messagesAnswer,
  messagesQuery,
  newListAnswer,
  newListBody,
  planAnswer,
  resolveBody,
  takenBackAnswer,
  testMailAnswer,
  testMailBody,
} from "./messages.js"
import { healthAnswer, practiceAnswer } from "./practice.js"
import { researchApi } from "./research.js"
import { paperBody, paperParams, rulesAnswer } from "./rules.js"
import { adverseEventsAnswer, adverseEventsQuery } from "./safety.js"
import { logInBody, passwordBody, sessionAnswer } from "./session.js"
import { templateNamesAnswer, templateTrialAnswer, templateTrialBody } from "./templates.js"
import { todayAnswer, todayQuery } from "./today.js"
import { tokensApi } from "./tokens.js"

/**
 * Everything the server can be asked. `:id` is a child, `:entryId` one of its entries. Whatever records something
 * answers with the child as it then stands. Refusals are `problemAnswer`.
 */
export const api = {
  health: { method: "GET", url: "/api/health", answer: healthAnswer },

  logIn: { method: "POST", url: "/api/session", body: logInBody, answer: sessionAnswer },
  session: { method: "GET", url: "/api/session", answer: sessionAnswer },
  logOut: { method: "DELETE", url: "/api/session" },
  changePassword: { method: "POST", url: "/api/password", body: passwordBody },

  practice: { method: "GET", url: "/api/practice", answer: practiceAnswer },

  rules: { method: "GET", url: "/api/rules", answer: rulesAnswer },
  recordPaper: {
    method: "POST",
    url: "/api/rules/:kind",
    params: paperParams,
    body: paperBody,
    answer: rulesAnswer,
  },

  templateNames: { method: "GET", url: "/api/templates/names", answer: templateNamesAnswer },
  tryTemplate: {
    method: "POST",
    url: "/api/templates/trial",
    body: templateTrialBody,
    answer: templateTrialAnswer,
  },

  ...inboxApi,
  ...importsApi,
  ...instrumentsApi,
  ...fhirApi,
  ...leaveApi,
  ...tokensApi,
  ...researchApi,

  today: { method: "GET", url: "/api/today", query: todayQuery, answer: todayAnswer },

  /** What was written to families, what waits, and whether the mail server takes it. */
  messages: { method: "GET", url: "/api/messages", query: messagesQuery, answer: messagesAnswer },
  /** What families are to be told in the coming days, as things stand. */
  messagePlan: { method: "GET", url: "/api/messages/plan", answer: planAnswer },
  message: {
    method: "GET",
    url: "/api/messages/:messageId",
    params: messageParams,
    answer: messageAnswer,
  },
  cancelMessage: {
    method: "POST",
    url: "/api/messages/:messageId/cancel",
    params: messageParams,
    answer: messageAnswer,
  },
  retryMessage: {
    method: "POST",
    url: "/api/messages/:messageId/retry",
    params: messageParams,
    answer: messageAnswer,
  },
  /** Says of a message whose sending was cut short whether it arrived. */
  resolveMessage: {
    method: "POST",
    url: "/api/messages/:messageId/resolution",
    params: messageParams,
    body: resolveBody,
    answer: messageAnswer,
  },
  lookForMessages: { method: "POST", url: "/api/messages/look", answer: lookAnswer },
  testMail: { method: "POST", url: "/api/messages/test", body: testMailBody, answer: testMailAnswer },
  /** Hands over everything that waits as SMS or post, as one list. */
  handOverMessages: {
    method: "POST",
    url: "/api/messages/lists",
    body: newListBody,
    answer: newListAnswer,
  },
  /** The list as a table to download: RFC 4180, UTF-8. */
  messageList: { method: "GET", url: "/api/messages/lists/:list", params: listParams, answer: listText },
  takeListBack: {
    method: "POST",
    url: "/api/messages/lists/:list/return",
    params: listParams,
    answer: takenBackAnswer,
  },

  /** Unwanted effects of the whole practice; with format=csv a table to download. */
  adverseEvents: {
    method: "GET",
    url: "/api/adverse-events",
    query: adverseEventsQuery,
    answer: adverseEventsAnswer,
  },

  lot: { method: "GET", url: "/api/lots/:lot", params: lotParams, answer: lotAnswer },

  children: { method: "GET", url: "/api/children", query: listQuery, answer: childList },
  addChild: { method: "POST", url: "/api/children", body: newChildBody, answer: childView },
  child: { method: "GET", url: "/api/children/:id", params: childParams, answer: childView },
  correctChild: {
    method: "POST",
    url: "/api/children/:id/correction",
    params: childParams,
    body: childCorrectionBody,
    answer: childView,
  },
  recordFamilyContact: {
    method: "POST",
    url: "/api/children/:id/family",
    params: childParams,
    body: familyContactBody,
    answer: childView,
  },
  familyLinks: {
    method: "GET",
    url: "/api/children/:id/links",
    params: childParams,
    answer: linksAnswer,
  },
  addFamilyLink: {
    method: "POST",
    url: "/api/children/:id/links",
    params: childParams,
    body: newLinkBody,
    answer: linksAnswer,
  },
  /** The link opens no more; what was read before stays read. */
  revokeFamilyLink: {
    method: "DELETE",
    url: "/api/children/:id/links/:linkId",
    params: linkParams,
    answer: linksAnswer,
  },
  /** Open to whoever has the link and knows the child's birth date. */
  openShared: {
    method: "POST",
    url: "/api/shared/:token",
    params: sharedParams,
    body: openLinkBody,
    answer: sharedAnswer,
  },
  /** What is to be done, as iCalendar. */
  sharedCalendar: {
    method: "POST",
    url: "/api/shared/:token/calendar",
    params: sharedParams,
    body: openLinkBody,
  },
  /** The same as a PDF. */
  sharedPdf: { method: "POST", url: "/api/shared/:token/pdf", params: sharedParams, body: openLinkBody },

  assessment: {
    method: "GET",
    url: "/api/children/:id/assessment",
    params: childParams,
    query: assessmentQuery,
    answer: assessmentAnswer,
  },

  /** A paper of a child: its content, or with as=pdf the bytes of a PDF. */
  document: {
    method: "GET",
    url: "/api/children/:id/documents/:kind",
    params: documentParams,
    query: documentQuery,
    answer: documentAnswer,
  },
  /** What the family has to do, as iCalendar. */
  calendar: { method: "GET", url: "/api/children/:id/calendar", params: childParams },
  /** The same paper of many children, answered as one PDF. */
  documentBatch: { method: "POST", url: "/api/documents/batch", body: batchBody },

  addVisit: {
    method: "POST",
    url: "/api/children/:id/visits",
    params: childParams,
    body: visitBody,
    answer: childView,
  },
  correctVisit: {
    method: "POST",
    url: "/api/children/:id/visits/:entryId/correction",
    params: entryParams,
    body: visitCorrectionBody,
    answer: childView,
  },
  addGlasses: {
    method: "POST",
    url: "/api/children/:id/glasses",
    params: childParams,
    body: glassesBody,
    answer: childView,
  },
  startTreatment: {
    method: "POST",
    url: "/api/children/:id/treatments",
    params: childParams,
    body: treatmentBody,
    answer: childView,
  },
  endTreatment: {
    method: "POST",
    url: "/api/children/:id/treatments/:entryId/end",
    params: entryParams,
    body: treatmentEndBody,
    answer: childView,
  },
  changeTreatment: {
    method: "POST",
    url: "/api/children/:id/treatments/:entryId/change",
    params: entryParams,
    body: treatmentChangeBody,
    answer: childView,
  },
  addSupply: {
    method: "POST",
    url: "/api/children/:id/supplies",
    params: childParams,
    body: supplyBody,
    answer: childView,
  },
  addConsent: {
    method: "POST",
    url: "/api/children/:id/consents",
    params: childParams,
    body: consentBody,
    answer: childView,
  },
  addMissedNights: {
    method: "POST",
    url: "/api/children/:id/missed-nights",
    params: childParams,
    body: missedNightsBody,
    answer: childView,
  },
  addDecision: {
    method: "POST",
    url: "/api/children/:id/decisions",
    params: childParams,
    body: decisionBody,
    answer: childView,
  },
  /** A decision with the treatment entries it implies: recorded together or not at all. */
  decide: {
    method: "POST",
    url: "/api/children/:id/decide",
    params: childParams,
    body: decideBody,
    answer: childView,
  },
  addConcern: {
    method: "POST",
    url: "/api/children/:id/concerns",
    params: childParams,
    body: concernBody,
    answer: childView,
  },
  addOrder: {
    method: "POST",
    url: "/api/children/:id/orders",
    params: childParams,
    body: orderBody,
    answer: childView,
  },
  addExplanation: {
    method: "POST",
    url: "/api/children/:id/explanations",
    params: childParams,
    body: explanationBody,
    answer: childView,
  },
  addPayment: {
    method: "POST",
    url: "/api/children/:id/payments",
    params: childParams,
    body: paymentBody,
    answer: childView,
  },
  /** The body is the file itself, as application/octet-stream. */
  addFile: { method: "POST", url: "/api/files", query: fileQuery, answer: fileAnswer },
  file: { method: "GET", url: "/api/files/:sha256", params: fileParams },
  /** Puts an entry right, or takes it further: a concern closed, an order received, a consent withdrawn. */
  amendEntry: {
    method: "POST",
    url: "/api/children/:id/entries/:entryId/amendment",
    params: entryParams,
    body: amendmentBody,
    answer: childView,
  },
  withdrawEntry: {
    method: "POST",
    url: "/api/children/:id/entries/:entryId/withdrawal",
    params: entryParams,
    body: withdrawalBody,
    answer: childView,
  },
} as const
