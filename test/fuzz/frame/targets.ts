import { readdirSync } from "node:fs"
import { fileURLToPath } from "node:url"
import type { FuzzTarget } from "./target.js"

const folder = new URL("../targets/", import.meta.url)

/** Every reader that can be fed: one file each. */
export const targetNames = (): readonly string[] =>
  readdirSync(fileURLToPath(folder))
    .filter((file) => file.endsWith(".ts") && !file.includes(".test."))
    .map((file) => file.replace(/\.ts$/, ""))
    .sort()

export async function targetNamed(name: string): Promise<FuzzTarget> {
  const { target } = (await import(new URL(`${name}.ts`, folder).href)) as { readonly target: FuzzTarget }
  return target
}
