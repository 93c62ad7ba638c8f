import { say } from "../../../engine/say.js"
import { type NumberForm, numberForm } from "./number-formats.js"
import { unsafe, unsound, type WorkbookPackage } from "./package.js"
import { readXml } from "./xml-events.js"

/** What has to be known of a workbook before one of its sheets is read. */
export interface Workbook {
  readonly isFrom1904: boolean
  /** Name of the part that holds the sheet. */
  readonly sheetPart: string
  /** By the number that a cell names as its style. */
  readonly forms: readonly NumberForm[]
  readonly sharedTexts: readonly string[]
}

interface Sheet {
  readonly name: string
  readonly relation: string
  readonly isHidden: boolean
}

const WORKBOOK = "xl/workbook.xml"
const MOST_STYLES = 65_536
const MOST_TEXTS = 1_000_000
const MOST_TEXT_LENGTH = 32_000_000
/** As for a cell of text. */
const LARGEST_TEXT = 10_000

export async function readWorkbook(parts: WorkbookPackage, named: string | undefined): Promise<Workbook> {
  if (!parts.has(WORKBOOK)) throw unsound()
  const { sheets, isFrom1904 } = await readSheets(parts)
  const targets = await readRelations(parts)
  const worksheets = sheets.filter(({ relation }) => targets.has(relation))
  const sheet =
    named === undefined
      ? worksheets.find(({ isHidden }) => !isHidden)
      : worksheets.find(({ name }) => name === named)
  const sheetPart = sheet && targets.get(sheet.relation)
  if (!sheetPart || !parts.has(sheetPart))
    throw unsafe(
      named === undefined
        ? say("The workbook has no sheet that can be read.")
        : say('The workbook has no sheet called "{named}".', { named }),
    )
  return { isFrom1904, sheetPart, forms: await readForms(parts), sharedTexts: await readSharedTexts(parts) }
}

async function readSheets(parts: WorkbookPackage) {
  const sheets: Sheet[] = []
  let isFrom1904 = false
  await readXml(parts.part(WORKBOOK), {
    open: (name, attributes) => {
      if (name === "workbookPr") isFrom1904 = ["1", "true"].includes(attributes.date1904 ?? "")
      if (name !== "sheet") return
      const relation = Object.entries(attributes).find(([key]) => key.endsWith(":id"))?.[1] ?? ""
      const isHidden = attributes.state !== undefined && attributes.state !== "visible"
      sheets.push({ name: attributes.name ?? "", relation, isHidden })
    },
  })
  return { sheets, isFrom1904 }
}

/** The parts of the worksheets by the id of their relation; parts outside of the workbook are never looked for. */
async function readRelations(parts: WorkbookPackage): Promise<ReadonlyMap<string, string>> {
  const targets = new Map<string, string>()
  await readXml(parts.part("xl/_rels/workbook.xml.rels"), {
    open: (name, { Id, Type, Target, TargetMode }) => {
      if (name !== "Relationship" || !Id || !Target || TargetMode === "External") return
      if (Type?.endsWith("/worksheet"))
        targets.set(Id, Target.startsWith("/") ? Target.slice(1) : `xl/${Target}`)
    },
  })
  return targets
}

async function readForms(parts: WorkbookPackage): Promise<readonly NumberForm[]> {
  if (!parts.has("xl/styles.xml")) return []
  const codes = new Map<number, string>()
  const ids: number[] = []
  let isInCells = false
  await readXml(parts.part("xl/styles.xml"), {
    open: (name, attributes) => {
      if (name === "numFmt") codes.set(Number(attributes.numFmtId), attributes.formatCode ?? "")
      if (name === "cellXfs") isInCells = true
      if (name === "xf" && isInCells) ids.push(Number(attributes.numFmtId ?? 0))
      if (ids.length > MOST_STYLES || codes.size > MOST_STYLES) throw unsound()
    },
    close: (name) => {
      if (name === "cellXfs") isInCells = false
    },
  })
  return ids.map((id) => numberForm({ id, code: codes.get(id) }))
}

async function readSharedTexts(parts: WorkbookPackage): Promise<readonly string[]> {
  if (!parts.has("xl/sharedStrings.xml")) return []
  const texts: string[] = []
  let length = 0
  const gathered = new TextGatherer()
  await readXml(parts.part("xl/sharedStrings.xml"), {
    open: (name) => {
      if (name === "si") gathered.begin()
      gathered.open(name)
    },
    text: (text) => gathered.text(text),
    close: (name) => {
      gathered.close(name)
      if (name !== "si") return
      texts.push(gathered.held)
      length += gathered.held.length
      if (texts.length > MOST_TEXTS || length > MOST_TEXT_LENGTH)
        throw unsafe(say("The workbook holds more text than a table of measurements."))
    },
  })
  return texts
}

/** A text made of runs: the plain ones together, without the reading aids that stand beside them. */
export class TextGatherer {
  held = ""
  #isText = false
  #aids = 0

  begin(): void {
    this.held = ""
  }

  open(name: string): void {
    if (name === "rPh") this.#aids += 1
    if (name === "t") this.#isText = this.#aids === 0
  }

  text(text: string): void {
    if (!this.#isText) return
    this.held += text
    if (this.held.length > LARGEST_TEXT)
      throw unsafe(say("A cell of the workbook has more than {most} characters.", { most: LARGEST_TEXT }))
  }

  close(name: string): void {
    if (name === "rPh") this.#aids -= 1
    if (name === "t") this.#isText = false
  }
}
