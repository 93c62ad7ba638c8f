import { msg, say } from "../../engine/say.js"
import type { ImportAtWork } from "../../server/contract/imports.js"
import { useStep } from "./use-import.js"

const WORDS: Readonly<Partial<Record<ImportAtWork["state"], string>>> = {
  checking: msg("Reading {file}"),
  recording: msg("Recording {file}"),
  "taking-back": msg("Taking {file} back"),
}

/** What is under way, how far it is, and how to stop it. */
export function ProgressCard({ work }: { readonly work: ImportAtWork }) {
  const cancel = useStep<void>(() => `/api/imports/${work.id}/cancel`)
  const { progress, state, file } = work
  const title = say(WORDS[state] ?? "{file}", { file })
  const percent = progress && progress.total > 0 ? Math.floor((100 * progress.done) / progress.total) : 0
  return (
    <section className="card import-progress" aria-label={title}>
      <h2 tabIndex={-1}>{title}</h2>
      <progress aria-label={title} max={100} value={percent} />
      <p className="soft">{say("{percent} %", { percent })}</p>
      {state !== "taking-back" && (
        <button type="button" disabled={cancel.isPending} onClick={() => cancel.mutate()}>
          {state === "recording" ? say("Cancel and take back what was recorded") : say("Cancel")}
        </button>
      )}
    </section>
  )
}
