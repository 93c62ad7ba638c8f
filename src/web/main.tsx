import "./styles/tokens.css"
import "./styles/base.css"
import "./styles/layout.css"
import "./styles/forms.css"
import "./styles/disclosure.css"
import "./styles/children.css"
import "./styles/child.css"
import "./styles/tables.css"
import "./styles/glasses.css"
import "./styles/visit.css"
import "./styles/why.css"
import "./styles/print.css"
import { QueryClientProvider } from "@tanstack/react-query"
import { RouterProvider } from "@tanstack/react-router"
import { createRoot } from "react-dom/client"
import { queryClient } from "./queries.js"
import { learnReadingLanguage } from "./reading-language.js"
import { router } from "./router.js"

const root = document.getElementById("root")
if (!root) throw new Error("index.html has no element with the id root")
await learnReadingLanguage()
createRoot(root).render(
  <QueryClientProvider client={queryClient()}>
    <RouterProvider router={router} />
  </QueryClientProvider>,
)
