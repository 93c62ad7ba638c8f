import QRCode from "qrcode"
import { say } from "../../engine/say.js"
import type { Block } from "../document.js"
import type { DocumentInput } from "../document-input.js"

/** Light border around the code, in modules, that readers of such codes ask for (ISO/IEC 18004). */
const QUIET = 4

/** The way to the family's page, for a phone; nothing where no link was made. The link itself holds nothing of the child. */
export function pageCode({ familyLink }: Pick<DocumentInput, "familyLink">): readonly Block[] {
  if (familyLink === undefined) return []
  return [
    {
      kind: "code",
      svg: codeSvg(familyLink),
      alt: say("Code that opens this page on a phone"),
      lines: [
        say("This page on your phone, with more answers: scan the code."),
        say("It opens after the birth date of your child is typed in."),
      ],
    },
  ]
}

/** Drawn from the modules at once, since the package's own drawing is only given later. */
function codeSvg(text: string): string {
  const { size, data } = QRCode.create(text, { errorCorrectionLevel: "M" }).modules
  const rows = Array.from({ length: size }, (_, y) => Array.from(data.slice(y * size, (y + 1) * size)))
  const path = rows
    .flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x + QUIET} ${y + QUIET}h1v1h-1z`] : [])))
    .join("")
  const side = size + 2 * QUIET
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" shape-rendering="crispEdges"><rect width="${side}" height="${side}" fill="#ffffff"/><path d="${path}" fill="#000000"/></svg>`
}
