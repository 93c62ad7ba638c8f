import { AsyncLocalStorage } from "node:async_hooks"
import type { FastifyInstance, FastifyRequest } from "fastify"
import { isLanguage, type Language, languageFrom } from "../engine/say.js"

const reading = new AsyncLocalStorage<Language>()
languageFrom(() => reading.getStore())

/** Answers each request in the language that its reader's page asks for; English for whoever names none that is known. */
export function speakTheReadersLanguage(app: FastifyInstance): void {
  app.addHook("onRequest", (request, _reply, done) => reading.run(languageOf(request), done))
  // Once a body was read the way back leads through the socket, which knows of no request.
  app.addHook("preValidation", (request, _reply, done) => reading.run(languageOf(request), done))
}

/** The first of the languages asked for, in order, that is spoken here. */
export function languageOf({ headers }: FastifyRequest): Language {
  const asked = (headers["accept-language"] ?? "").split(",").map((part) => part.split(";")[0]?.trim() ?? "")
  for (const tag of asked) {
    if (isLanguage(tag)) return tag
    const [language] = tag.split("-")
    if (isLanguage(language)) return language
    if (language === "zh") return "zh-Hans"
  }
  return "en"
}
