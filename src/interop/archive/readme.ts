import type { Manifest } from "./format.js"

/** The first part of every archive: what is what, for whoever opens it in ten years without us. */
export function readmeText({ of, practice }: Pick<Manifest, "of" | "practice">): string {
  return of === "practice" ? practiceReadme(practice?.name ?? "") : COURSE_README
}

const HEAD = `
This is a zip file. Any program that opens zip files shows what is in it; nothing in it needs the program that made it.
It holds health data of children, and it is not encrypted: keep it where nobody else can read it.

Texts are UTF-8. Files that end in .ndjson hold one JSON value a line. Tables (.csv) follow RFC 4180: comma, quotes
where needed, CR LF; figures with a decimal point, days as 2025-01-31, units in the headings. A text that a spreadsheet
would run as a formula has an apostrophe before it.
`.trim()

const practiceReadme = (name: string): string => `${name}: everything that this practice has recorded
${"=".repeat(60)}

${HEAD}

To read
  tables/*.csv              visits (a row an eye), treatments, bottles, consents, decisions and more; the column Child
                            key ties them together, and tables/children.csv says who each child is
  children/ID/record.pdf    the full record of a child on paper (absent when the archive was made without papers)
  children/ID/course.json   the same as a course file, which Lengthwise and other programs read
  files/SHA256              scans, signatures and letters as they were stored; files.ndjson says what each is
  rules.json                protocols, fees, consent wordings, pharmacies and what else the practice set, as in force

To restore
  entries.ndjson            every entry ever recorded, corrections and withdrawals included, in order, each with the
                            SHA-256 that ties it to the one before
  practice.json             name, place and settings of the practice
  people.ndjson             who recorded; names, roles and log-in names
  files.ndjson              media type, author and day of every stored file
  outbox.ndjson, outbox-events.ndjson      messages to families and what became of each
  inbox.ndjson, inbox-events.ndjson        what instruments and other programs sent, and what became of it
  imports.ndjson, import-spans.ndjson      imports of whole files, and which entries came with each
  family-links.ndjson       links that families were given
  manifest.json             what made this archive and when, the hash of the last entry, and size and SHA-256 of
                            every part

  lengthwise import ARCHIVE.zip --data NEW-FOLDER      makes a new data folder with the same record, entry for entry

Not in it
  Passwords, not even as hashes: everybody gets a new one when the archive is restored, and the import says where it is.
  Keys: family links that still opened when the archive was made are written as ended, and do not open after a restore.
  Who was logged in, wrong passwords, keys of other programs.

docs/archive.md of Lengthwise describes every part, so that another program can read it.
`

const COURSE_README = `The course of one child
=======================

${HEAD}

  course.json     the course: visits, treatments, bottles, consents, decisions (a course file of Lengthwise)
  tables/*.csv    the same as tables, the visits with a row an eye
  fhir.json       the same as a FHIR R4 Bundle
  record.pdf      the full record on paper (absent when the archive was made without papers)
  manifest.json   what made this archive and when, and size and SHA-256 of every part

A course file names nobody. docs/archive.md of Lengthwise describes every part.
`
