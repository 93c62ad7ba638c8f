import { afterAll, beforeAll, expect, it } from "vitest"
import { api } from "../../src/server/contract/api.js"
import { type TestApp, testApp } from "./test-app.js"

let t: TestApp
beforeAll(async () => {
  t = await testApp()
})
afterAll(() => t.close())

const document = async () => (await t.app.inject("/api/openapi.json")).json()

it("the description of the API is the one that was agreed on", async () => {
  const text = `${JSON.stringify(await document(), null, 1)}\n`
  await expect(text).toMatchFileSnapshot("fixtures/open-api.json")
})

it("is OpenAPI 3.1 and has every line of the contract, and no other", async () => {
  const { openapi, paths } = await document()
  const described = Object.entries<object>(paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`),
  )
  const agreed = Object.values(api).map(({ method, url }) => `${method} ${url.replace(/:(\w+)/g, "{$1}")}`)
  expect(openapi).toBe("3.1.0")
  expect(described.toSorted()).toEqual(agreed.toSorted())
})
