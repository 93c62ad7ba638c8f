import { type FormEvent, useState } from "react"
import { failureInWords, Refused } from "../client.js"
import { Cautions } from "../parts/cautions.js"
import { Field } from "../parts/field.js"
import { PageHeading } from "../parts/page-heading.js"
import { useLogIn } from "../queries.js"

export function LoginPage() {
  const logIn = useLogIn()
  const [name, setName] = useState("")
  const [password, setPassword] = useState("")
  const submit = (event: FormEvent) => {
    event.preventDefault()
    logIn.mutate({ name: name.trim(), password })
  }
  const problems = logIn.error instanceof Refused ? logIn.error.problems : []
  const faultAt = (path: string) => problems.find((problem) => problem.path === path)?.message
  return (
    <>
      <main className="login">
        <div className="card">
          <PageHeading title="Log in">Lengthwise</PageHeading>
          <p className="soft">
            Is the eye growing slowly enough, is it the treatment, and what is owed next.
          </p>
          <form className="form" onSubmit={submit} noValidate>
            <div role="alert">
              {logIn.isError && <p className="form-fault">{failureInWords(logIn.error)}</p>}
            </div>
            <Field label="Name" fault={faultAt("name")}>
              {(control) => (
                <input
                  {...control}
                  autoComplete="username"
                  autoCapitalize="none"
                  spellCheck={false}
                  value={name}
                  onChange={(event) => setName(event.target.value)}
                />
              )}
            </Field>
            <Field label="Password" fault={faultAt("password")}>
              {(control) => (
                <input
                  {...control}
                  type="password"
                  autoComplete="current-password"
                  value={password}
                  onChange={(event) => setPassword(event.target.value)}
                />
              )}
            </Field>
            <button type="submit" className="primary" disabled={logIn.isPending}>
              Log in
            </button>
          </form>
        </div>
      </main>
      <Cautions />
    </>
  )
}
