import { learn } from "../engine/say.js"
import { spanish } from "./es/index.js"
import { simplifiedChinese } from "./zh-Hans/index.js"

/** Makes every language known. A page learns only the one it is read in. */
export function learnEveryLanguage(): void {
  learn("es", spanish)
  learn("zh-Hans", simplifiedChinese)
}
