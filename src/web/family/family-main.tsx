import "../styles/tokens.css"
import "../styles/base.css"
import "../styles/forms.css"
import "./family.css"
import { createRoot } from "react-dom/client"
import { SharedPage } from "./shared-page.js"

/** The page behind a link, for a phone in the hand: nothing of the practice's own pages is loaded with it. */
const root = document.getElementById("root")
if (!root) throw new Error("family.html has no element with the id root")
const [, , token = ""] = location.pathname.split("/")
createRoot(root).render(<SharedPage token={token} />)
