import { Link } from "@tanstack/react-router"
import { say } from "../../engine/say.js"
import { failureInWords } from "../client.js"
import { PageHeading } from "../parts/page-heading.js"

/** Shown when a page itself fails. What is recorded is on the server and not touched by it. */
export function FailedPage({ error }: { readonly error: unknown }) {
  return (
    <>
      <PageHeading title={say("This page cannot be shown")} />
      <p className="form-fault">{failureInWords(error)}</p>
      <p>
        {say("Something is wrong with the program. What was saved is safe.")}{" "}
        <Link to="/children">{say("To the children")}</Link>
      </p>
    </>
  )
}
