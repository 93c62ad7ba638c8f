import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import { cookieOf, faults, PASSWORD, problemsOf, type TestApp, testApp } from "./test-app.js"

let t: TestApp
beforeEach(async () => {
  t = await testApp()
})
afterEach(() => t.close())

const tryLogIn = (name: string, password: string, headers = {}) =>
  t.ask("POST", "/api/session", { body: { name, password }, headers })

describe("logging in", () => {
  it("answers who is logged in", async () => {
    const answer = await tryLogIn("Ada", PASSWORD)
    expect(answer.statusCode).toBe(201)
    expect(api.logIn.answer.parse(answer.json()).person).toMatchObject({
      name: "Ada Lindqvist",
      role: "clinician",
    })
  })

  it("gives a cookie that no script and no other site can use, of at least 128 bits", async () => {
    const [cookie] = (await tryLogIn("ada", PASSWORD)).cookies
    expect(cookie).toMatchObject({ httpOnly: true, sameSite: "Strict", path: "/" })
    expect(Buffer.from(cookie?.value ?? "", "base64url").length).toBeGreaterThanOrEqual(16)
  })

  it("gives a new session each time and ends the one before", async () => {
    const first = cookieOf(await tryLogIn("ada", PASSWORD))
    const second = cookieOf(await tryLogIn("ada", PASSWORD, { cookie: first }))
    expect(second).not.toBe(first)
    expect((await t.ask("GET", "/api/session", { headers: { cookie: first } })).statusCode).toBe(401)
    expect((await t.ask("GET", "/api/session", { headers: { cookie: second } })).statusCode).toBe(200)
  })

  it("says the same whether the name or the password is wrong", async () => {
    const [wrongPassword, wrongName] = [
      await tryLogIn("ada", "not this one"),
      await tryLogIn("zoe", PASSWORD),
    ]
    expect(wrongPassword.statusCode).toBe(401)
    expect(wrongName.json()).toEqual(wrongPassword.json())
    expect(wrongPassword.cookies).toEqual([])
  })

  it("makes a name wait from the fifth wrong password on, even for the right one, and nobody else", async () => {
    for (let guess = 0; guess < 5; guess++) expect((await tryLogIn("ada", "guess")).statusCode).toBe(401)
    const locked = await tryLogIn("ada", PASSWORD)
    expect(locked.statusCode).toBe(429)
    expect(locked.headers["retry-after"]).toBe("30")
    expect((await tryLogIn("ben", PASSWORD)).statusCode).toBe(201)
    t.pass(30_000)
    expect((await tryLogIn("ada", PASSWORD)).statusCode).toBe(201)
  })

  it("lets no more guesses through when they come all at once", async () => {
    const answers = await Promise.all(Array.from({ length: 20 }, () => tryLogIn("ada", "guess")))
    expect(answers.filter(({ statusCode }) => statusCode === 401)).toHaveLength(5)
  })

  it("makes a name nobody has wait as well, so that waiting tells nothing", async () => {
    for (let guess = 0; guess < 5; guess++) await tryLogIn("zoe", "guess")
    expect((await tryLogIn("zoe", "guess")).statusCode).toBe(429)
  })

  it("forgets wrong passwords after a right one", async () => {
    for (let guess = 0; guess < 4; guess++) await tryLogIn("ada", "guess")
    await tryLogIn("ada", PASSWORD)
    for (let guess = 0; guess < 4; guess++) expect((await tryLogIn("ada", "guess")).statusCode).toBe(401)
    expect((await tryLogIn("ada", PASSWORD)).statusCode).toBe(201)
  })

  it("refuses more than sixty tries a minute from one address", async () => {
    for (let attempt = 0; attempt < 60; attempt++) await tryLogIn("zoe", "guess")
    const answer = await tryLogIn("ada", PASSWORD)
    expect(answer.statusCode).toBe(429)
    expect(problemsOf(answer)[0]?.message).toContain("from this address")
  })

  it("names what is missing", async () => {
    const answer = await t.ask("POST", "/api/session", { body: { name: "ada" } })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual(["password: the password"])
  })
})

describe("a session", () => {
  beforeEach(() => t.logIn())

  it("ends at log-out", async () => {
    expect((await t.ask("DELETE", "/api/session")).statusCode).toBe(204)
    expect((await t.ask("GET", "/api/session")).statusCode).toBe(401)
  })

  it("ends after half an hour without use", async () => {
    t.pass(30 * 60_000)
    expect((await t.ask("GET", "/api/children")).statusCode).toBe(401)
  })
})

describe("changing the password", () => {
  const next = "seven small boats at dawn"
  const change = (body: object) => t.ask("POST", "/api/password", { body })
  beforeEach(() => t.logIn())

  it("works with the password in use, ends the other sessions and keeps this one", async () => {
    const other = cookieOf(
      await t.app.inject({
        method: "POST",
        url: "/api/session",
        payload: { name: "ada", password: PASSWORD },
      }),
    )
    expect((await change({ current: PASSWORD, next })).statusCode).toBe(204)
    expect((await t.ask("GET", "/api/session")).statusCode).toBe(200)
    expect((await t.app.inject({ url: "/api/session", headers: { cookie: other } })).statusCode).toBe(401)
    expect((await tryLogIn("ada", PASSWORD)).statusCode).toBe(401)
    expect((await tryLogIn("ada", next)).statusCode).toBe(201)
  })

  it("needs the password in use", async () => {
    expect(faults(await change({ current: "guess", next }))).toEqual(["current: the password in use"])
  })

  it.each([
    ["14 characters", "abcdefghijklmn", "15 to 256 characters long"],
    ["257 characters", "abcdefgh".repeat(33).slice(0, 257), "15 to 256 characters long"],
    ["the same letters over and over", "abababababababab", "made of at least 6 different characters"],
    ["the practice's name", "quietharbour 2025 !", 'without "Quiet Harbour" in it'],
    ["the product's name", "my-lengthwise-password", 'without "lengthwise" in it'],
  ])("refuses %s", async (_, password, rule) => {
    const answer = await change({ current: PASSWORD, next: password })
    expect(answer.statusCode).toBe(422)
    expect(faults(answer)).toEqual([`next: ${rule}`])
    expect(problemsOf(answer)[0]?.value).toBeNull()
  })

  it("takes 64 characters of any script with spaces, and reads every one of them", async () => {
    const long = `${"日本語 пароль ".repeat(8).slice(0, 63)}x`
    expect((await change({ current: PASSWORD, next: long })).statusCode).toBe(204)
    expect((await tryLogIn("ada", `${long.slice(0, -1)}y`)).statusCode).toBe(401)
    expect((await tryLogIn("ada", long)).statusCode).toBe(201)
  })
})
