import { type FormEvent, useState } from "react"
import { say } from "../../engine/say.js"
import { failureInWords, Refused } from "../client.js"
import { sentence } from "../format.js"
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
  // Which of the two is wrong is not told, to nobody.
  const wrong =
    logIn.error instanceof Refused && logIn.error.problems.length > 0
      ? logIn.error.problems.map(({ message }) => sentence(message)).join(" ")
      : logIn.error && failureInWords(logIn.error)
  return (
    <>
      <main className="login">
        <div className="card">
          <PageHeading title={say("Log in")}>Lengthwise</PageHeading>
          <p className="soft">
            {say("Is the eye growing slowly enough, is it the treatment, and what is owed next.")}
          </p>
          <form className="form" onSubmit={submit} noValidate>
            <div role="alert">{wrong && <p className="form-fault">{wrong}</p>}</div>
            <Field label={say("Name")}>
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
            <Field label={say("Password")}>
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
              {say("Log in")}
            </button>
          </form>
        </div>
      </main>
      <Cautions />
    </>
  )
}
