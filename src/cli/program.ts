import { Argument, Command, CommanderError, InvalidArgumentError, Option } from "commander"
import { dayNumberOrNull } from "../engine/calendar.js"
import { ANCESTRIES, type CalendarDate, SEXES, TREATMENT_KINDS } from "../engine/course.js"
import { METHOD_VERSION } from "../engine/method.js"
import { DATE_ORDERS } from "../engine/practice-rules.js"
import { STAGES } from "../engine/protocol/protocol.js"
import { LANGUAGES } from "../engine/say.js"
import { ROLES } from "../engine/today/roles.js"
import { DOCUMENT_KINDS, PAPERS } from "../report/document.js"
import type { ExitCode, Io } from "./io.js"

/**
 * The command line: what each verb takes. The verbs themselves are loaded when called, so that each starts fast.
 *
 * Exit codes: 0 done, 1 the input is at fault, 2 the command was not understood.
 */
export async function runCommandLine(argv: readonly string[], io: Io): Promise<ExitCode> {
  let code: ExitCode = 0
  const program = programOf(io, (next) => {
    code = next
  })
  try {
    await program.parseAsync(argv.map(withoutMinusAtStart), { from: "user" })
    return code
  } catch (cause) {
    if (!(cause instanceof CommanderError)) throw cause
    return cause.exitCode === 0 ? 0 : 2
  }
}

/** A prescription such as "-2.25 -0.50 x 180" begins like an option; a blank before it keeps it an argument. */
const withoutMinusAtStart = (word: string): string => (/^-[.\d]/.test(word) ? ` ${word}` : word)

function programOf(io: Io, exit: (code: ExitCode) => void): Command {
  const program = new Command("lengthwise")
    .description(
      "Is this child's eye growing slowly enough, is it the treatment, and what is owed next. Not a medical device.",
    )
    .version(`Lengthwise, method ${METHOD_VERSION}`)
    .exitOverride()
    .configureOutput({ writeOut: io.out, writeErr: io.error })
    .showHelpAfterError("(lengthwise --help, or lengthwise VERB --help, says what is taken)")
    .helpCommand(false)

  /** A verb with the two options that all share. `load` brings its code when it is called. */
  const verb = (
    name: string,
    description: string,
    load: () => Promise<{ run: (args: never, io: Io) => Promise<ExitCode> }>,
    argumentsOf: (command: Command) => object = (command) => command.opts(),
  ): Command => {
    const command = program.command(name).description(description)
    return command
      .option("--json", "one JSON document on stdout, messages on stderr")
      .action(async () => exit(await (await load()).run(argumentsOf(command) as never, io)))
  }
  const withFile = (command: Command) => ({ file: command.args[0], ...command.opts() })

  verb(
    "assess",
    "what the figures say of growth, and apart from it of the treatment",
    () => import("./commands/assess.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .addOption(asOf())
    .addOption(why())
  verb(
    "forecast",
    "where the eyes go, untreated and as treated",
    () => import("./commands/forecast.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .requiredOption("--to-age <years>", "age up to which the lines are drawn", number)
    .addOption(asOf())
    .addOption(why())
  verb(
    "before-myopia",
    "of a child not myopic yet: length, refraction, parents, reviews, advice, each with its evidence",
    () => import("./commands/before-myopia.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .addOption(asOf())
  verb(
    "examination",
    "what an examination owes, in the order of the room, and what the visit of that day lacks",
    () => import("./commands/examination.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .addOption(new Option("--stage <stage>", "instead of the one that is owed").choices(STAGES))
    .option("--on <duties...>", "duties of the evidence to switch on, such as CD-028")
    .addOption(asOf())
  verb("centile", "where a length stands among peers", () => import("./commands/centile.js"))
    .requiredOption("--al <mm>", "axial length in mm", number)
    .requiredOption("--age <years>", "age in years, with decimals", number)
    .addOption(new Option("--sex <sex>", "sex of the child").choices(SEXES).makeOptionMandatory())
    .addOption(
      new Option("--ancestry <ancestry>", "picks a reference when none is named").choices(ANCESTRIES),
    )
    .option("--reference <id>", "reference to place the length on")
    .addOption(why())
  verb(
    "refraction",
    "readings of one eye as power vector and printed prescription",
    () => import("./commands/refraction.js"),
    (command) => ({
      readings: command.args.map((reading) => reading.trim()),
      ...command.opts(),
    }),
  )
    .argument("<readings...>", 'such as "-2.25 -0.50 x 180"')
    .option("--vertex-mm <mm>", "take the powers to the cornea from this vertex distance", number)
    .addOption(why())
  verb(
    "due",
    "what is owed to a child and when; for a folder or a data folder, who is owed what today",
    () => import("./commands/owed.js"),
    withFile,
  )
    .argument("<file>", `${COURSE_FILE}; or a folder of course files, or a data folder`)
    .addOption(new Option("--role <role>", "of a folder only what this role does").choices(ROLES))
    .addOption(asOf())
    .option("--protocol <file>", "a practice's own protocol instead of the one that fits the treatment")
    .addOption(why())
  verb(
    "consent",
    "whether a consent in force covers a treatment, and what there is to read for it",
    () => import("./commands/consent.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .addOption(
      new Option("--for <kind>", "treatment asked about")
        .choices(TREATMENT_KINDS.filter((kind) => kind !== "none"))
        .makeOptionMandatory(),
    )
    .option("--concentration <percent>", "strength of drops, % w/v", number)
    .option("--text", "the wording that ships, with its figures")
    .addOption(new Option("--language <language>", "language of the text (default: en)").choices(LANGUAGES))
    .addOption(asOf())
  verb("order", "how a strength of drops is made from stock", () => import("./commands/order.js"))
    .requiredOption("--concentration <percent>", "strength ordered, % w/v", number)
    .requiredOption("--stock <percent>", "strength of the stock, % w/v", number)
    .requiredOption("--bottles <count>", "how many bottles", number)
    .requiredOption("--volume-ml <ml>", "volume of one bottle, mL", number)
    .option("--smallest-volume-ml <ml>", "smallest volume the measuring device allows, mL", number)
    .option("--graduation-ml <ml>", "the step to which the measuring device is read, mL", number)
    .option("--tolerance <percent>", "how far one measured volume may be off, per cent of it (95 %)", number)
    .option("--stock-tolerance <percent>", "how far the stock may be off its label, per cent (95 %)", number)
    .option("--nights <count>", "also say how many bottles so many nights need", number)
    .option("--eyes <count>", "eyes that get drops, 1 or 2 (default: 2)", number)
    .option(
      "--days-after-opening <days>",
      "days an opened bottle is used (default: 30, without preservative)",
      number,
    )
    .option("--preserved", "with a preservative")
    .addOption(why())
  verb(
    "supply",
    "bottles, nights covered, gaps, and the next bottle due",
    () => import("./commands/supply.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .addOption(asOf())
  verb(
    "calendar",
    "what the family has to do, as a calendar for its phone (iCalendar), without a word about health",
    () => import("./commands/calendar.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .requiredOption("--out <file>", "calendar file to write, .ics")
    .addOption(new Option("--language <language>", "language of the family").choices(LANGUAGES).default("en"))
    .option("--practice <name>", "whom to ask; stands as the place of each entry")
    .addOption(asOf())
  verb(
    "safety",
    "concerns, red flags, cautions not asked yet, adverse events",
    () => import("./commands/safety.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .addOption(asOf())
    .option("--adverse-events", "the adverse events alone, as a document")
    .addOption(new Option("--format <format>", "of that document").choices(["csv", "json"]).default("csv"))
  verb(
    "choices",
    "the options side by side for this child, none recommended",
    () => import("./commands/choices.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .option("--fees <file>", "the practice's fee schedule, or a list of them (schema: schema fees)")
    .option("--strong", "drops of 0.5 and 1 % as well")
    .addOption(asOf())
    .addOption(why())
  verb(
    "estimate",
    "what the coming months cost, by a practice's fees",
    () => import("./commands/estimate.js"),
    withFile,
  )
    .argument("<file>", COURSE_FILE)
    .requiredOption("--fees <file>", "the practice's fee schedule, or a list of them (schema: schema fees)")
    .addOption(
      new Option(
        "--treatment <kind>",
        "the option; none for observation (default: the course as recorded)",
      ).choices(TREATMENT_KINDS),
    )
    .option("--concentration <percent>", "strength of atropine, % w/v", number)
    .option("--months <count>", "how far ahead, 1 to 120", months, 30)
    .addOption(asOf())
    .addHelpText("after", FEES_EXAMPLE)
  verb(
    "report",
    "a paper of a child as PDF: for the family, the pharmacy, another doctor; of a folder all of them in one",
    () => import("./commands/report.js"),
    withFile,
  )
    .argument("<file>", `${COURSE_FILE}; or a folder of course files`)
    .addOption(new Option("--document <kind>", "which paper").choices(DOCUMENT_KINDS).default("family"))
    .addOption(new Option("--language <language>", "language of its reader").choices(LANGUAGES).default("en"))
    .addOption(new Option("--paper <size>", "size of the sheet").choices(PAPERS).default("a4"))
    .requiredOption("--out <file>", 'PDF to write, or "-" for stdout')
    .option("--name <name>", "the child's name, which no course file holds")
    .option("--practice <name>", "the practice's name")
    .option("--letterhead <file>", "text of the letterhead under the name, a line each")
    .option("--logo <file>", "PNG or JPEG beside it, at most 1 MB")
    .option("--fees <file>", "the practice's fee schedule, or a list of them (schema: schema fees)")
    .addOption(
      new Option("--treatment <kind>", "for a consent or an estimate (default: as recorded)").choices(
        TREATMENT_KINDS,
      ),
    )
    .option("--concentration <percent>", "strength of atropine, % w/v", number)
    .option("--months <count>", "months an estimate covers, 1 to 120", months)
    .option("--link <url>", "address of the family's page, for the code on the paper")
    .addOption(asOf())
  verb(
    "read",
    "what files of instruments and other programs hold (DICOM, FHIR, CSV, XLSX, course files); nothing is stored",
    () => import("./commands/read.js"),
    (command) => ({ files: command.args, ...command.opts() }),
  )
    .argument("<files...>", "files, or folders of them")
    .addOption(mapping())
    .addOption(dateOrder())
    .addOption(decimalSign())
  verb(
    "import",
    "takes files of instruments and other programs, or a practice's archive, into a data folder",
    () => import("./commands/import.js"),
    (command) => ({ files: command.args, ...command.opts() }),
  )
    .argument("<files...>", "files, or folders of them")
    .requiredOption("--data <folder>", "data folder, which no server is using")
    .addOption(mapping())
    .addOption(dateOrder())
    .addOption(decimalSign())
  verb(
    "export",
    "a course as FHIR or tables; a whole practice as an archive, or without names for research",
    () => import("./commands/export.js"),
    (command) => ({ what: command.args[0], ...command.opts() }),
  )
    .argument("<course>", `${COURSE_FILE}; or a data folder`)
    .addOption(new Option("--format <format>", "open format").choices(EXPORT_FORMATS).makeOptionMandatory())
    .requiredOption("--out <file>", 'file to write, or "-" for stdout; for many tables a folder/ or a .zip')
    .option("--no-papers", "an archive without the full record of each child as PDF, which takes long")
    .addOption(new Option("--language <language>", "language of the papers").choices(LANGUAGES).default("en"))
    .addOption(new Option("--paper <size>", "size of their sheet").choices(PAPERS).default("a4"))
  verb(
    "verify",
    "whether the record of a data folder is whole, entry by entry",
    () => import("./commands/verify.js"),
    (command) => ({ data: command.args[0], ...command.opts() }),
  )
    .argument("<folder>", "data folder")
    .option("--rebuild", "make the derived tables anew")
  verb("method", "version, parameters, sources and grades", () => import("./commands/method.js"))
  verb(
    "protocol",
    "the protocols that ship; whether one of a practice is sound",
    () => import("./commands/protocol.js"),
    (command) => ({ action: command.args[0], what: command.args[1], ...command.opts() }),
  )
    .addArgument(new Argument("<action>", "what to do").choices(["list", "show", "check", "schema"]))
    .argument("[what]", "id of the protocol to show, or protocol file to check")
  verb(
    "schema",
    "the JSON Schema of the course file, or of the fees",
    () => import("./commands/schema.js"),
    (command) => ({ of: command.args[0], ...command.opts() }),
  ).addArgument(new Argument("[of]", "which file").choices(["course-file", "fees"]))
  program
    .command("serve")
    .description("start the server on a data folder, which is made if absent")
    .requiredOption("--data <folder>", "data folder")
    .requiredOption("--port <number>", "port on 127.0.0.1", port)
    .option("--demo", "load the demo practice into an empty folder", false)
    .addOption(
      new Option("--today <date>", "in the demo practice: another day than this machine's").argParser(date),
    )
    .option(
      "--address <url>",
      "where families reach this server, such as https://eyes.example (or LENGTHWISE_ADDRESS); stands in their links",
    )
    .option(
      "--smtp <url>",
      "mail server, smtp[s]://user:password@host:port (better: LENGTHWISE_SMTP, which others on this machine can't read)",
    )
    .option("--dicom-port <number>", "receive from instruments (DICOM) on this port", port)
    .option(
      "--dicom-host <address>",
      "address of this machine where instruments reach it (only programs of this machine when absent)",
    )
    .option("--dicom-cert <file>", "certificate (PEM) for DICOM over TLS")
    .option("--dicom-key <file>", "its key (PEM)")
    .option("--json", "the address as one JSON document on stdout, messages on stderr")
    .action(async (options) => exit(await (await import("./commands/serve.js")).run(options, io)))
  return program
}

const EXPORT_FORMATS = ["fhir", "ndjson", "csv", "archive", "research"] as const

const mapping = () => new Option("--mapping <file>", "for tables: a saved mapping of columns to fields, JSON")
const dateOrder = () =>
  new Option("--date-order <order>", "for tables whose days can be read in two ways").choices(DATE_ORDERS)
const decimalSign = () => new Option("--decimal <sign>", "for tables: the decimal sign").choices([".", ","])

const FEES_EXAMPLE = `
Fees are JSON, amounts whole numbers in the smallest unit of the currency:
  { "title": "Fees 2026", "currency": "EUR", "from": "2026-01-01", "fees": [
    { "id": "review", "title": "Review", "cents": 5500, "coverage": "covered",
      "charged": { "kind": "examination", "stages": ["review", "washout"] } },
    { "id": "length", "title": "Length measurement", "cents": 4000, "coverage": "not-covered",
      "charged": { "kind": "measure", "measure": "axial-length" } },
    { "id": "bottle", "title": "Bottle", "cents": 3200, "coverage": "not-covered",
      "charged": { "kind": "bottle" } } ] }`

const COURSE_FILE = 'course file, or "-" for stdin'

const asOf = () =>
  new Option("--as-of <date>", "day the question is asked for, YYYY-MM-DD (default: today)").argParser(date)
const why = () =>
  new Option("--why", "the inputs, the formula in words, the parameters, the sources, the grade")

function date(text: string): CalendarDate {
  if (dayNumberOrNull(text) === null) throw new InvalidArgumentError("It must be a day written YYYY-MM-DD.")
  return text
}

function number(text: string): number {
  const value = Number(text)
  if (text.trim() === "" || !Number.isFinite(value)) throw new InvalidArgumentError("It must be a number.")
  return value
}

function months(text: string): number {
  const value = number(text)
  if (!Number.isInteger(value) || value < 1 || value > 120) {
    throw new InvalidArgumentError("It must be a whole number from 1 to 120.")
  }
  return value
}

function port(text: string): number {
  const value = number(text)
  if (!Number.isInteger(value) || value < 0 || value > 65_535) {
    throw new InvalidArgumentError("It must be a whole number from 0 to 65535.")
  }
  return value
}
