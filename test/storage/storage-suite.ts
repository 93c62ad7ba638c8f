import type { OpenDatabase } from "../../src/record/index.js"
import { entriesSuite } from "./entries-suite.js"
import { filesSuite } from "./files-suite.js"
import { importsSuite } from "./imports-suite.js"
import { inboxSuite } from "./inbox-suite.js"
import { outboxSuite } from "./outbox-suite.js"
import { viewsSuite } from "./views-suite.js"

/** What every database under the record must do. `openDatabase` gives a fresh, empty one each time. */
export function storageSuite(name: string, openDatabase: () => Promise<OpenDatabase>): void {
  entriesSuite(name, openDatabase)
  filesSuite(name, openDatabase)
  inboxSuite(name, openDatabase)
  importsSuite(name, openDatabase)
  outboxSuite(name, openDatabase)
  viewsSuite(name, openDatabase)
}
