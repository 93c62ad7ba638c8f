import type { FastifyInstance } from "fastify"
import { say } from "../../engine/say.js"
import type { ApiToken } from "../../record/index.js"
import type { Context } from "../context.js"
import { api } from "../contract/api.js"
import type { TokensAnswer } from "../contract/tokens.js"
import { noSuch, Refusal } from "../refusal.js"
import { serveRoute } from "../route.js"
import { webhookRoutes } from "../webhooks/webhook-routes.js"

const DAY_MS = 86_400_000
/** Open at a time; a practice that needs more has forgotten some. Ours; common practice, no source. */
const MOST_OPEN = 100

/** Keys of other programs, and where they are told of what is new. */
export async function tokensRoutes(app: FastifyInstance, context: Context): Promise<void> {
  const { record, clock, oneAtATime } = context
  const { tokens } = record

  const answer = async (): Promise<TokensAnswer> => {
    const [all, people] = await Promise.all([tokens.list(), record.people()])
    const names = new Map(people.map(({ id, name }) => [id, name]))
    const nameOf = (id: string) => names.get(id) ?? id
    const nowMs = clock.nowMs()
    return {
      tokens: all.map((token) => ({
        ...token,
        scopes: [...token.scopes],
        state: stateOf(token, nowMs),
        createdBy: nameOf(token.createdBy),
        revokedBy: token.revokedBy && nameOf(token.revokedBy),
      })),
    }
  }

  serveRoute(app, api.tokens, { answer })

  serveRoute(app, api.addToken, {
    perMinute: 30,
    answer: ({ body: { name, scopes, days }, person }) =>
      oneAtATime(async () => {
        const nowMs = clock.nowMs()
        const open = (await tokens.list()).filter((token) => stateOf(token, nowMs) === "open")
        if (open.length >= MOST_OPEN)
          throw new Refusal(409, [
            {
              path: "",
              value: open.length,
              allowed: say("at most {most} tokens at a time", { most: MOST_OPEN }),
              message: say("there are too many tokens; revoke those that nobody needs"),
            },
          ])
        const expiresMs = nowMs + days * DAY_MS
        const { secret } = await tokens.add({ name, scopes, createdBy: person.id, nowMs, expiresMs })
        return { ...(await answer()), secret }
      }),
  })

  serveRoute(app, api.revokeToken, {
    answer: async ({ params: { tokenId }, person }) => {
      const isRevoked = await tokens.revoke({ id: tokenId, by: person.id, nowMs: clock.nowMs() })
      // Revoked before is as good as revoked now.
      if (!isRevoked && !(await tokens.list()).some(({ id }) => id === tokenId))
        throw noSuch("token", tokenId)
      return answer()
    },
  })

  webhookRoutes(app, context)
}

function stateOf({ revokedAt, expiresAt }: ApiToken, nowMs: number): "open" | "expired" | "revoked" {
  if (revokedAt !== null) return "revoked"
  return Date.parse(expiresAt) > nowMs ? "open" : "expired"
}
