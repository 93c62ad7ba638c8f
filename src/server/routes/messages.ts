import type { FastifyInstance } from "fastify"
import { addDays } from "../../engine/calendar.js"
import type { MessageState } from "../../engine/messages/message-states.js"
import { isQuiet } from "../../engine/messages/quiet-hours.js"
import { say } from "../../engine/say.js"
import { problem } from "../../interop/course/problem.js"
import type { ListedChild, OutboxMessage, Person } from "../../record/index.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import {
  MESSAGES_PAGE,
  type MessageAnswer,
  type MessageRow,
  type MessagesAnswer,
} from "../contract/messages.js"
import type { MailJob } from "../mail/mail-job.js"
import { messageList } from "../mail/message-lists.js"
import { noSuch, Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"

const PLAN_DAYS = 14
const MOST_PLANNED = 200

/** The outbox as the practice sees it, and what a person decides about a message. */
export function messagesRoutes(app: FastifyInstance, context: Context, mail: MailJob): void {
  const { record, clock } = context
  const { outbox } = record
  const now = () => new Date(clock.nowMs()).toISOString()

  serveRoute(app, api.messages, {
    answer: async ({ query: { search, state, page } }) => {
      const [{ total, messages }, counts, waiting, namesOf] = await Promise.all([
        outbox.list({ search, state, page, pageSize: MESSAGES_PAGE }),
        outbox.counts(),
        outbox.waiting(),
        naming(context),
      ])
      const toHandOver = (channel: "sms" | "post") =>
        waiting.filter((message) => message.channel === channel).length
      return {
        total,
        page,
        pageSize: MESSAGES_PAGE,
        counts: { ...counts },
        toHandOver: { sms: toHandOver("sms"), post: toHandOver("post") },
        messages: await Promise.all(messages.map((message) => namesOf.row(message))),
        health: await healthOf(context, mail),
      }
    },
  })

  serveRoute(app, api.messagePlan, {
    answer: async () => {
      const { today, messages, children } = await mail.plan.now()
      const until = addDays(today, PLAN_DAYS)
      const coming = messages.filter(({ on }) => on > today && on <= until)
      return {
        today,
        until,
        total: coming.length,
        messages: coming
          .slice(0, MOST_PLANNED)
          .map(({ key, child, kind, channel, name, language, on, due }) => ({
            key,
            child: shortChild(child, children.get(child) ?? null),
            kind,
            channel,
            name,
            language,
            on,
            due,
          })),
      }
    },
  })

  serveRoute(app, api.message, { answer: ({ params }) => messageOf(context, params.messageId) })

  /** Brings a message into another state and answers with it; a state it can't be left from is a refusal. */
  const moved = async (
    id: string,
    move: {
      readonly from: readonly MessageState[]
      readonly state: MessageState
      readonly person: Person
    } & Partial<Pick<OutboxMessage, "problem" | "attempts">>,
  ): Promise<MessageAnswer> => {
    const { person, problem: why, ...change } = move
    const made = await outbox.change({ id, ...change, problem: why ?? undefined, at: now(), by: person.id })
    if (!made) {
      const message = await outbox.message(id)
      if (!message) throw noSuch("message", id)
      throw new Refusal(409, [
        problem({
          path: "state",
          value: message.state,
          allowed: `a message that is ${move.from.join(" or ")}`,
        }),
      ])
    }
    return messageOf(context, id)
  }

  serveRoute(app, api.cancelMessage, {
    answer: ({ params: { messageId }, person }) =>
      moved(messageId, { from: ["waiting", "failed"], state: "cancelled", person }),
  })

  serveRoute(app, api.retryMessage, {
    answer: ({ params: { messageId }, person }) =>
      moved(messageId, {
        from: ["waiting", "failed", "cancelled"],
        state: "waiting",
        problem: "again",
        attempts: 0,
        person,
      }),
  })

  serveRoute(app, api.resolveMessage, {
    answer: ({ params: { messageId }, body: { was }, person }) =>
      was === "sent"
        ? moved(messageId, { from: ["unknown"], state: "sent", problem: "told-sent", person })
        : moved(messageId, { from: ["unknown"], state: "waiting", problem: "again", attempts: 0, person }),
  })

  serveRoute(app, api.lookForMessages, { perMinute: 30, answer: () => mail.run({ insist: true }) })

  serveRoute(app, api.testMail, {
    perMinute: 5,
    answer: async ({ body: { to }, person }) => {
      const { messages } = await context.rules.now()
      const { server } = mail.health()
      if (server === null || !messages)
        throw new Refusal(409, [
          {
            path: "",
            value: null,
            allowed: say("a mail server named at the start, and the practice’s settings of messages"),
            message:
              server === null
                ? say("no mail server was named when this server was started")
                : say("the practice has not recorded its settings of messages yet"),
          },
        ])
      const { kind, ...said } = await mail.test({
        from: { name: messages.sender, address: messages.from },
        replyTo: messages.replyTo,
        to: { name: person.name, address: to },
        subject: say("Test of the mail server"),
        text: say("This is a test. Messages from {practice} to families can be sent.", {
          practice: messages.sender,
        }),
        language: "en",
        messageId: `<${crypto.randomUUID()}@${messages.from.split("@").at(-1)}>`,
      })
      return { outcome: kind, problem: "problem" in said ? said.problem : null, reply: said.reply }
    },
  })

  serveRoute(app, api.handOverMessages, {
    answer: async ({ body: { channel }, person }) => {
      // Brought up to date first: nothing is handed over that has nothing left to say.
      await mail.run()
      const list = crypto.randomUUID()
      const count = await outbox.handOver({ channel, list, at: now(), by: person.id })
      return { list: count > 0 ? list : null, count }
    },
  })

  serveRoute(app, api.messageList, {
    answer: async ({ params: { list }, reply }) => {
      const messages = await outbox.ofList(list)
      const [first] = messages
      if (!first) throw noSuch("list", list)
      reply.header(
        "content-disposition",
        `attachment; filename="messages-${first.channel}-${first.changedAt.slice(0, 10)}.csv"`,
      )
      reply.type("text/csv; charset=utf-8")
      return messageList(messages)
    },
  })

  serveRoute(app, api.takeListBack, {
    answer: async ({ params: { list }, person }) => ({
      count: await outbox.takeBack({ list, at: now(), by: person.id }),
    }),
  })

  // Only where it listens: an application that is asked without a socket does nothing by itself.
  app.addHook("onListen", async () => {
    mail.start((error) => app.log.error({ err: error }, "looking after the outbox failed"))
  })
  app.addHook("onClose", () => mail.stop())
}

async function healthOf({ rules, clock }: Context, mail: MailJob): Promise<MessagesAnswer["health"]> {
  const { messages } = await rules.now()
  return {
    ...mail.health(),
    isOn: messages?.isOn === true,
    isQuiet: messages ? isQuiet({ nowMs: clock.nowMs(), ...messages }) : false,
    quietTo: messages?.quietTo ?? null,
  }
}

const shortChild = (id: string, child: ListedChild | null): MessageRow["child"] => ({
  id,
  name: child?.name ?? "",
  number: child?.number ?? null,
})

/** Rows of messages with the names of children and people in place of their ids. */
async function naming({ record }: Context) {
  const people = new Map((await record.people()).map(({ id, name }) => [id, name]))
  const nameOf = (id: string | null) => (id === null ? null : (people.get(id) ?? id))
  return {
    nameOf,
    row: async (message: OutboxMessage): Promise<MessageRow> => {
      const { id, kind, channel, recipient, name, language, due, state, problem, reply } = message
      const { attempts, nextAttemptAt, changedAt, list } = message
      return {
        id,
        child: shortChild(message.child, await record.child(message.child)),
        kind,
        channel,
        to: recipient,
        name,
        language,
        due,
        state,
        problem,
        reply,
        attempts,
        nextAttemptAt,
        changedAt,
        changedBy: nameOf(message.changedBy),
        list,
      }
    },
  }
}

async function messageOf(context: Context, id: string): Promise<MessageAnswer> {
  const { outbox } = context.record
  const [message, events, namesOf] = await Promise.all([
    outbox.message(id),
    outbox.events(id),
    naming(context),
  ])
  if (!message) throw noSuch("message", id)
  const { subject, text, messageId, createdAt } = message
  return {
    ...(await namesOf.row(message)),
    subject,
    text,
    messageId,
    createdAt,
    events: events.map((event) => ({ ...event, by: namesOf.nameOf(event.by) })),
  }
}
