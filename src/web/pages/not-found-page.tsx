import { Link } from "@tanstack/react-router"
import { say } from "../../engine/say.js"
import { PageHeading } from "../parts/page-heading.js"

export function NotFoundPage() {
  return (
    <>
      <PageHeading title={say("There is no such page")} />
      <p>
        <Link to="/children">{say("To the children")}</Link>
      </p>
    </>
  )
}
