import { type FormEvent, useEffect, useState } from "react"
import { isLanguage, type Language, languageFrom, learn, say } from "../../engine/say.js"
import type { OpenLinkBody, SharedAnswer } from "../../server/contract/family-links.js"
import { ask, failureInWords, Refused, Unreachable } from "../client.js"
import { FamilyDocument } from "./family-document.js"
import { useNarrow } from "./use-narrow.js"

/** First the child's birth date, then the page. Nothing is kept on the phone: a reload asks again. */
export function SharedPage({ token }: { readonly token: string }) {
  const [spoken, setSpoken] = useSpoken()
  const [born, setBorn] = useState("")
  const [answer, setAnswer] = useState<SharedAnswer | null>(null)
  const [fault, setFault] = useState<string | null>(null)
  const [isAsking, setAsking] = useState(false)
  const on = useNarrow() ? "phone" : "screen"

  const open = async (language?: Language) => {
    setAsking(true)
    setFault(null)
    try {
      const body: OpenLinkBody = { born, on, ...(language ? { language } : {}) }
      const opened = await ask<SharedAnswer>("POST", `/api/shared/${token}`, body)
      await setSpoken(opened.document.language)
      setAnswer(opened)
    } catch (error) {
      setFault(faultInWords(error))
    } finally {
      setAsking(false)
    }
  }
  // A phone turned round, or a window made wider: the figures are drawn anew.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only when the width has changed
  useEffect(() => {
    if (answer) void open(answer.document.language)
  }, [on])
  if (answer) {
    const asked = { born, language: answer.document.language }
    return (
      <FamilyDocument
        document={answer.document}
        fault={fault}
        onLanguage={open}
        pdf={{ url: `/api/shared/${token}/pdf`, body: asked, name: "family-page.pdf" }}
        calendar={{ url: `/api/shared/${token}/calendar`, body: asked, name: "appointments.ics" }}
      />
    )
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    void open()
  }
  return (
    <main className="family-door">
      <p className="family-languages">
        {OFFERED.map((each) => (
          <button
            key={each}
            type="button"
            className="link"
            lang={each}
            aria-pressed={each === spoken}
            onClick={() => setSpoken(each)}
          >
            {NAMES[each]}
          </button>
        ))}
      </p>
      <h1>{say("Your child’s page")}</h1>
      <p>{say("To open it, enter your child’s date of birth.")}</p>
      <form onSubmit={submit} noValidate>
        <label htmlFor="born">{say("Date of birth")}</label>
        <input
          id="born"
          type="date"
          required
          autoComplete="off"
          value={born}
          aria-invalid={fault !== null}
          aria-describedby="born-fault"
          onChange={({ target }) => setBorn(target.value)}
        />
        <p role="alert" id="born-fault" className="field-fault">
          {fault}
        </p>
        <button type="submit" className="primary" disabled={isAsking || born === ""}>
          {say("Open|the page")}
        </button>
      </form>
      <p className="soft small">
        {say("After five wrong dates the link locks. The practice can give you a new one.")}
      </p>
    </main>
  )
}

const OFFERED: readonly Language[] = ["en", "es", "zh-Hans"]
const NAMES: Readonly<Record<Language, string>> = { en: "English", es: "Español", "zh-Hans": "简体中文" }

/** The language of what stands around the document, by the phone's own first; learnt when it is wanted. */
function useSpoken(): readonly [Language, (language: Language) => Promise<void>] {
  const [spoken, setSpoken] = useState<Language>("en")
  const speak = async (wanted: Language) => {
    if (wanted === "es") learn("es", (await import("../../words/es/share.js")).share)
    if (wanted === "zh-Hans") learn("zh-Hans", (await import("../../words/zh-Hans/share.js")).share)
    languageFrom(() => wanted)
    document.documentElement.lang = wanted
    document.title = say("Your child’s page")
    setSpoken(wanted)
  }
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the page opens
  useEffect(() => {
    void speak(phoneLanguage())
  }, [])
  return [spoken, speak]
}

function phoneLanguage(): Language {
  const tags = navigator.languages.map((tag) =>
    tag.startsWith("zh") ? "zh-Hans" : (tag.split("-")[0] ?? ""),
  )
  return tags.find(isLanguage) ?? "en"
}

function faultInWords(error: unknown): string {
  if (error instanceof Unreachable) return say("The practice’s server cannot be reached. Try again later.")
  if (error instanceof Refused && error.status === 429) {
    return say("That was often in a short time. Wait a minute, then try again.")
  }
  if (error instanceof Refused && (error.status === 404 || error.status === 422)) {
    return say(
      "This link and this date do not open a page. Check the date, or ask the practice for a new link.",
    )
  }
  return failureInWords(error)
}
