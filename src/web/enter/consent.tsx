import { Navigate } from "@tanstack/react-router"
import type { EnterProps } from "./enter-props.js"

/** A consent is read and signed on a part of its own. */
export function EnterConsent({ view }: EnterProps) {
  return (
    <Navigate to="/children/$childId/$part" params={{ childId: view.child.id, part: "consent" }} hash="new" />
  )
}
