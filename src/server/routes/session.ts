import type { FastifyInstance, FastifyRequest } from "fastify"
import { say } from "../../engine/say.js"
import type { Person } from "../../record/index.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import { SESSION_COOKIE } from "../guard.js"
import { logInCheck } from "../log-in.js"
import { passwordFault, passwordFits, passwordHash } from "../passwords.js"
import { Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"

/** Guessing is slowed by name in `log-in.ts`; this only keeps one address from keeping the processor busy. */
const PASSWORD_CHECKS_PER_MINUTE = 60

export function sessionRoutes(app: FastifyInstance, context: Context): void {
  const { record, clock } = context
  const checkLogIn = logInCheck(context)
  const shown = ({ id, name, role }: Person) => ({ person: { id, name, role } })

  serveRoute(app, api.logIn, {
    open: true,
    perMinute: PASSWORD_CHECKS_PER_MINUTE,
    answer: async ({ body, request, reply }) => {
      const person = await checkLogIn(body)
      const nowMs = clock.nowMs()
      const former = request.cookies[SESSION_COOKIE]
      if (former) await record.endSession({ token: former, nowMs })
      const token = await record.openSession({ person: person.id, nowMs })
      reply.setCookie(SESSION_COOKIE, token, cookieOptions(request))
      return shown(person)
    },
  })

  serveRoute(app, api.session, { answer: async ({ person }) => shown(person) })

  serveRoute(app, api.logOut, {
    answer: async ({ request, reply }) => {
      const token = request.cookies[SESSION_COOKIE] ?? ""
      await record.endSession({ token, nowMs: clock.nowMs() })
      reply.clearCookie(SESSION_COOKIE, cookieOptions(request))
      return undefined
    },
  })

  serveRoute(app, api.changePassword, {
    perMinute: PASSWORD_CHECKS_PER_MINUTE,
    answer: async ({ body, person, request }) => {
      const stored = await record.personByLogIn(person.logIn)
      if (!(await passwordFits(body.current, stored?.passwordHash ?? null)))
        throw refusedPassword("current", say("the password in use"))
      const contextWords = ["lengthwise", record.practice.name, person.name, person.logIn]
      const fault = passwordFault(body.next, { contextWords })
      if (fault) throw refusedPassword("next", fault)
      await record.setPasswordHash({ person: person.id, passwordHash: await passwordHash(body.next) })
      const except = request.cookies[SESSION_COOKIE] ?? ""
      await record.endSessionsOf({ person: person.id, except, nowMs: clock.nowMs() })
      return undefined
    },
  })
}

function refusedPassword(path: "current" | "next", allowed: string): Refusal {
  const message =
    path === "current"
      ? say("this is not the password in use")
      : say("the new password must be {allowed}", { allowed })
  return new Refusal(422, [{ path, value: null, allowed, message }])
}

function cookieOptions({ protocol }: FastifyRequest) {
  return { httpOnly: true, sameSite: "strict", secure: protocol === "https", path: "/" } as const
}
