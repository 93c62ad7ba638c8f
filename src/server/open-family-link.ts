import type { FastifyRequest } from "fastify"
import type { Language } from "../engine/say.js"
import { LINK_FAILURES_ALLOWED } from "../record/index.js"
import type { Context } from "./context.js"
import { familyAddress } from "./family-address.js"

/** The address of the child's page for its family, where a link was made and still opens; for the code on a paper. */
export async function openFamilyLink(
  context: Context,
  asked: { readonly child: string; readonly language: Language; readonly request: FastifyRequest },
): Promise<string | undefined> {
  const { record, clock } = context
  const open = (await record.familyLinksOf(asked.child)).filter(
    ({ revokedAt, failures, expiresAt }) =>
      revokedAt === null && failures < LINK_FAILURES_ALLOWED && Date.parse(expiresAt) > clock.nowMs(),
  )
  const link = open.find(({ language }) => language === asked.language) ?? open[0]
  const token = link && (await record.familyLinkToken(link.id))
  return token ? `${familyAddress(asked.request, context)}/f/${token}` : undefined
}
