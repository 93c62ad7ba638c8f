import type { Fragment } from "../../src/interop/intake/fragment.js"
import { inTurn } from "../../src/server/in-turn.js"
import { takeRead } from "../../src/server/intake/take-file.js"
import { PASSWORD, type TestApp, TODAY } from "./test-app.js"

/** What one line of the contract is asked as its example. */
export interface ExampleCall {
  readonly params?: Readonly<Record<string, string>>
  readonly query?: Readonly<Record<string, string>>
  readonly body?: unknown
  readonly headers?: Readonly<Record<string, string>>
  /** What it answers depends on something outside, such as a mail server, or on time: only what is asked is shown. */
  readonly isAskedOnly?: true
}

/** Answers so far by the line's name, bodies of JSON only. */
// biome-ignore lint/suspicious/noExplicitAny: answers of every shape, read by whoever wrote the call
export type Answers = Readonly<Record<string, any>>

type Ask = (seen: Answers, t: TestApp) => ExampleCall | Promise<ExampleCall>

const FIRST = "2025-11-03"
const covers = { kind: "atropine", concentrationPercent: 0.05 }
const refraction = { sphere: -2.25, cylinder: -0.5, axis: 180, cycloplegic: true, method: "autorefraction" }
const eye = (mm: number) => ({
  axialLength: { mm, readings: 5, method: "optical-biometry", device: "A" },
  refraction,
})
const order = { date: "2025-11-20", concentrationPercent: 0.05, bottles: 3, volumeMl: 5 }

const child = (seen: Answers) => ({ id: seen.addChild.child.id as string })
const lastOf = (kind: string, view: { entries: { id: string; kind: string; supersededBy: unknown }[] }) =>
  view.entries.findLast((entry) => entry.kind === kind && entry.supersededBy === null)?.id ?? ""
const of = (body: unknown): Ask => {
  return (seen) => ({ params: child(seen), body })
}

const ofImport: Ask = (seen) => ({ params: { id: seen.newImport.id }, isAskedOnly: true })

/**
 * A call for each line of the contract, in the order in which they are made. A line that reads without any parameter needs
 * none: it is called by itself.
 */
export const EXAMPLE_CALLS: Readonly<Record<string, Ask>> = {
  health: () => ({}),
  logIn: () => ({ body: { name: "ada", password: PASSWORD } }),
  recordPaper: () => ({
    params: { kind: "contacts" },
    body: {
      body: { practice: "+353 1 555 0100", emergency: "112", poisonCentre: "+353 1 555 0199" },
    },
  }),
  addChild: () => ({ body: { name: "Mira Solberg", born: "2017-03-14", sex: "female", number: "17" } }),
  addVisit: of({ date: FIRST, right: eye(24.12), left: eye(24.2) }),
  addGlasses: of([
    { date: "2023-09-01", right: { sphere: -1 }, left: { sphere: -1.25 } },
    { date: "2024-09-02", right: { sphere: -1.5 }, left: { sphere: -1.75 } },
  ]),
  correctVisit: (seen) => ({
    params: { ...child(seen), entryId: lastOf("visit", seen.addVisit) },
    body: { visit: { date: FIRST, right: eye(24.15), left: eye(24.2) }, reason: "misread" },
  }),
  addConsent: of({ date: FIRST, covers, by: { relation: "mother" }, assent: "given" }),
  startTreatment: of({ from: FIRST, ...covers }),
  addOrder: of(order),
  addSupply: of({
    dispensed: "2025-11-04",
    opened: "2025-11-04",
    concentrationPercent: 0.05,
    volumeMl: 5,
    beyondUse: "2025-12-04",
    lot: "LT-07",
  }),
  addMissedNights: of({ from: "2025-11-10", to: "2025-11-12", nights: 2 }),
  addConcern: of({ opened: "2025-11-20", kind: "light-sensitivity", what: "bright light outdoors" }),
  addDecision: of({ date: "2025-11-20", kind: "continue", reason: "too early to tell" }),
  addExplanation: of({ date: "2025-11-20" }),
  addPayment: of({ date: "2025-11-20", cents: 4000, currency: "EUR" }),
  amendEntry: (seen) => ({
    params: { ...child(seen), entryId: lastOf("order", seen.addOrder) },
    body: { fields: { ...order, confirmed: "2025-11-21" }, reason: "confirmed by the pharmacy" },
  }),
  changeTreatment: (seen) => ({
    params: { ...child(seen), entryId: lastOf("treatment", seen.startTreatment) },
    body: { to: "2025-11-22", kind: "atropine", concentrationPercent: 0.025, reason: "light sensitivity" },
  }),
  endTreatment: (seen) => ({
    params: { ...child(seen), entryId: lastOf("treatment", seen.changeTreatment) },
    body: { to: "2025-11-24", reason: "family's wish" },
  }),
  decide: of({ date: TODAY, kind: "continue", reason: "growth is watched", treatments: [] }),
  withdrawEntry: (seen) => ({
    params: { ...child(seen), entryId: lastOf("payment", seen.addPayment) },
    body: { reason: "recorded for another child" },
  }),
  correctChild: (seen) => ({
    params: child(seen),
    body: {
      child: { name: "Mira Solberg", born: "2017-03-14", sex: "female", number: "18" },
      reason: "number changed",
    },
  }),
  recordFamilyContact: of({
    contact: {
      name: "Ines Solberg",
      relation: "mother",
      language: "en",
      email: "ines@family.example",
      reachedBy: "email",
      agreed: { on: FIRST, to: ["visits", "bottles"] },
    },
  }),
  child: (seen) => ({ params: child(seen) }),
  assessment: (seen) => ({ params: child(seen), query: { asOf: TODAY } }),
  document: (seen) => ({ params: { ...child(seen), kind: "family" }, query: { language: "en" } }),
  calendar: (seen) => ({ params: child(seen) }),
  documentBatch: (seen) => ({ body: { children: [child(seen).id], kind: "family", language: "en" } }),
  lot: () => ({ params: { lot: "LT-07" } }),
  addFamilyLink: of({ language: "en", days: 90 }),
  familyLinks: (seen) => ({ params: child(seen) }),
  openShared: (seen) => shared(seen),
  sharedCalendar: (seen) => shared(seen),
  sharedPdf: (seen) => shared(seen),
  revokeFamilyLink: (seen) => ({ params: { ...child(seen), linkId: seen.addFamilyLink.links[0].id } }),
  addFile: () => ({
    query: { mediaType: "text/plain" },
    headers: { "content-type": "application/octet-stream" },
    body: Buffer.from("What the family read.\n"),
  }),
  file: (seen) => ({ params: { sha256: seen.addFile.sha256 } }),
  imports: () => ({}),
  newImport: () => ({
    query: { name: "lengths.csv" },
    headers: { "content-type": "application/octet-stream" },
    body: Buffer.from(
      "name,born,sex,date,right length,left length\nMira Solberg,2017-03-14,female,2024-09-02,23.91,23.98\n",
    ),
  }),
  importAtWork: (seen) => ({ params: { id: seen.newImport.id } }),
  importQuestions: (seen) => ({
    params: { id: seen.newImport.id },
    body: { mapping: seen.newImport.mapping },
  }),
  checkImport: (seen) => ({
    params: { id: seen.newImport.id },
    body: { mapping: seen.newImport.mapping, settled: seen.importQuestions.questions.map(kindOf) },
  }),
  settleImport: (seen) => ({
    params: { id: seen.newImport.id },
    body: { decisions: [{ group: 1, as: "new" }] },
    isAskedOnly: true,
  }),
  importProblems: ofImport,
  // The steps after it go on by themselves and are tested where they are made; here only what is asked is shown.
  runImport: ofImport,
  cancelImport: ofImport,
  importUndoing: ofImport,
  undoImport: ofImport,
  discardImport: ofImport,
  archives: () => ({}),
  makeArchive: () => ({ body: { withPapers: false, password: PASSWORD } }),
  archiveFile: (seen) => ({ params: { archiveId: seen.makeArchive.archives[0].id }, isAskedOnly: true }),
  removeArchive: (seen) => ({ params: { archiveId: seen.makeArchive.archives[0].id }, isAskedOnly: true }),
  ...inboxCalls(),
  tryTemplate: (seen) => ({
    body: { document: "family", language: "en", text: "# {practice}\n", child: child(seen).id },
  }),
  addToken: () => ({ body: { name: "scheduling", scopes: ["read", "write"], days: 365 } }),
  revokeToken: (seen) => ({ params: { tokenId: seen.addToken.tokens[0].id } }),
  addWebhook: () => ({
    body: { url: "http://localhost:9/news", events: ["finding-new", "duty-open", "object-waiting"] },
  }),
  setWebhook: (seen) => ({ params: { webhookId: seen.addWebhook.webhooks[0].id }, body: { state: "off" } }),
  lookForNews: () => ({}),
  deliverAgain: async (seen, t) => {
    const webhook = seen.addWebhook.webhooks[0].id
    const id = crypto.randomUUID()
    const about = { event: "duty-open", child: child(seen).id } as const
    const body = JSON.stringify({
      id,
      ...about,
      at: `${TODAY}T09:00:00.000Z`,
      link: `/children/${about.child}`,
    })
    const delivery = { id, webhook, ...about, body, key: "an example" }
    await t.record.webhooks.deliveries.tell(
      [{ child: about.child, readFrom: "", told: null, deliveries: [delivery] }],
      `${TODAY}T09:00:00.000Z`,
    )
    return { params: { deliveryId: id } }
  },
  removeWebhook: (seen) => ({ params: { webhookId: seen.addWebhook.webhooks[0].id } }),
  ...messageCalls(),
  changePassword: () => ({ body: { current: PASSWORD, next: "a lighthouse keeps quiet hours" } }),
  logOut: () => ({}),
}

const kindOf = ({ kind }: { readonly kind: string }) => kind

const shared = (seen: Answers): ExampleCall => ({
  params: { token: String(seen.addFamilyLink.links[0].path).replace("/f/", "") },
  body: { born: "2017-03-14" },
})

/** What waits is put into the Inbox as a reader of an instrument's file does it. */
function inboxCalls(): Readonly<Record<string, Ask>> {
  let minute = 0
  const put = async ({ record }: TestApp): Promise<string> => {
    const clock = { nowMs: () => Date.parse(`${TODAY}T07:${10 + minute}:00Z`), today: () => TODAY }
    minute++
    const right = { axialLength: { mm: 23.4 + minute / 100, device: "A" } }
    const fragment: Fragment = {
      identity: { name: "BRANDL EDDA", born: "2016-05-20" },
      course: { visits: [{ date: "2025-11-20", right }] },
      documents: [],
      source: { kind: "dicom", id: `1.2.${minute}`, device: "A" },
      notes: [],
    }
    const taken = await takeRead(
      { record, clock, oneAtATime: inTurn() },
      {
        file: "IM0001",
        bytes: Buffer.from(JSON.stringify(fragment)),
        from: { kind: "instrument", title: "BIOMETER" },
        read: { file: "IM0001", fragments: [fragment], skipped: [] },
        makesChildren: false,
      },
    )
    return taken[0]?.inboxId ?? ""
  }
  return {
    inboxFiles: () => ({
      query: { file: "notes.txt" },
      headers: { "content-type": "application/octet-stream" },
      body: Buffer.from("no file of an instrument\n"),
    }),
    inboxItem: async (_, t) => ({ params: { itemId: await put(t) } }),
    inboxItemFile: (seen) => ({ params: { itemId: seen.inboxItem.id } }),
    takeInboxItem: async (seen) => ({
      params: { itemId: seen.inboxItem.id },
      body: { newChild: { name: "Edda Brandl", born: "2016-05-20", sex: "female" } },
    }),
    undoInboxItem: (seen) => ({
      params: { itemId: seen.inboxItem.id },
      body: { reason: "another child" },
    }),
    setAsideInboxItem: (seen) => ({
      params: { itemId: seen.inboxItem.id },
      body: { reason: "a test of the instrument" },
    }),
  }
}

/** A message that waits is put into the outbox as the program itself does it. */
function messageCalls(): Readonly<Record<string, Ask>> {
  let minute = 0
  const put = async (seen: Answers, t: TestApp, channel: "email" | "sms") => {
    const key = crypto.randomUUID()
    const about = {
      key,
      child: child(seen).id,
      kind: "visit-ahead",
      due: "2025-12-10",
      plannedFor: TODAY,
    } as const
    const wording = {
      channel,
      recipient: "ines@family.example",
      name: "Ines Solberg",
      language: "en",
    } as const
    const text = {
      subject: "Time to book a visit",
      text: "Please call us.",
      messageId: `<${key}@harbour.example>`,
    }
    // Each a minute later than the one before, so that a list of them has one order.
    await t.record.outbox.add({ ...about, ...wording, ...text }, `${TODAY}T08:${10 + minute++}:00.000Z`)
    return (await t.record.outbox.waiting()).find((message) => message.key === key)?.id ?? ""
  }
  const about = (channel: "email" | "sms" = "email"): Ask => {
    return async (seen, t) => ({ params: { messageId: await put(seen, t, channel) } })
  }
  return {
    message: about(),
    cancelMessage: about(),
    retryMessage: about(),
    resolveMessage: async (seen, t) => {
      const id = await put(seen, t, "email")
      const at = `${TODAY}T09:00:00.000Z`
      await t.record.outbox.change({ id, from: ["waiting"], state: "unknown", problem: "interrupted", at })
      return { params: { messageId: id }, body: { was: "sent" } }
    },
    handOverMessages: async (seen, t) => {
      await put(seen, t, "sms")
      return { body: { channel: "sms" } }
    },
    messageList: (seen) => ({ params: { list: seen.handOverMessages.list } }),
    takeListBack: (seen) => ({ params: { list: seen.handOverMessages.list } }),
    lookForMessages: () => ({}),
    testMail: () => ({ body: { to: "ada@harbour.example" }, isAskedOnly: true }),
  }
}
