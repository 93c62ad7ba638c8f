import { msg, say } from "../../engine/say.js"
import type { ArchivePhase, ArchiveState, ShownArchive } from "../../server/contract/leave.js"
import { failureInWords } from "../client.js"
import { instantInWords } from "../messages/messages-words.js"
import { useLookAgain, useRemoveArchive } from "./use-archives.js"

const STATES: Readonly<Record<ArchiveState, string>> = {
  running: msg("Being made"),
  ready: msg("Ready"),
  fetched: msg("Downloaded, then removed here"),
  cancelled: msg("Cancelled"),
  failed: msg("Failed"),
  interrupted: msg("Cut short: the server was stopped"),
  removed: msg("Removed"),
  expired: msg("Removed after a day"),
}

const PHASES: Readonly<Record<ArchivePhase, string>> = {
  record: msg("Entries"),
  files: msg("Stored files"),
  courses: msg("Courses"),
  tables: msg("Tables"),
  papers: msg("Papers"),
}

/** The archive that is being made or ready, and what became of the last ones. */
export function ArchiveList({ archives }: { readonly archives: readonly ShownArchive[] }) {
  const remove = useRemoveArchive()
  const lookAgain = useLookAgain()
  if (archives.length === 0) return null
  return (
    <section className="card" aria-label={say("Last archives")}>
      <h2>{say("Last archives")}</h2>
      <div role="alert">{remove.error && <p className="form-fault">{failureInWords(remove.error)}</p>}</div>
      <ul className="archives">
        {archives.map((archive) => (
          <li key={archive.id}>
            <p>
              <strong>{say(STATES[archive.state])}</strong>{" "}
              <span className="soft">
                {say("{when}, {who}", { when: instantInWords(archive.startedAt), who: archive.by })}
                {archive.bytes !== null && `, ${say("{size} MB", { size: megabytes(archive.bytes) })}`}
              </span>
            </p>
            {archive.state === "running" && <Making {...archive} />}
            {archive.head !== null && (
              <p className="soft small">
                {say("Last entry {head}. Note it elsewhere, and a restore can be compared with it.", {
                  head: archive.head,
                })}
              </p>
            )}
            {archive.problems.length > 0 && (
              <ul className="small">
                {archive.problems.map((problem) => (
                  <li key={problem}>{problem}</li>
                ))}
              </ul>
            )}
            {(archive.state === "running" || archive.state === "ready") && (
              <p className="archive-acts">
                {archive.state === "ready" && (
                  <a
                    className="button"
                    href={`/api/archives/${archive.id}/file`}
                    download
                    onClick={lookAgain}
                  >
                    {say("Download")}
                  </a>
                )}
                <button type="button" disabled={remove.isPending} onClick={() => remove.mutate(archive.id)}>
                  {archive.state === "running" ? say("Cancel") : say("Remove")}
                </button>
                {archive.until !== null && (
                  <span className="soft small">
                    {say("Removed when downloaded, or on {when}.", { when: instantInWords(archive.until) })}
                  </span>
                )}
              </p>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

function Making({ progress }: Pick<ShownArchive, "progress">) {
  const phase = progress ? say(PHASES[progress.phase]) : say("Begins")
  return (
    <p>
      <progress aria-label={phase} max={progress?.total ?? 1} value={progress?.done ?? 0} />{" "}
      {progress
        ? say("{phase}: {done} of {total}", { phase, done: progress.done, total: progress.total })
        : phase}
    </p>
  )
}

/** A tenth of a megabyte is enough to know a file by. */
const megabytes = (bytes: number): string => (bytes / 1_000_000).toFixed(1)
