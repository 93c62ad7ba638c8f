import { writeFileSync } from "node:fs"
import { join } from "node:path"
import { processIo } from "../../src/cli/process-io.js"
import { runCommandLine } from "../../src/cli/program.js"

// A process of its own that imports a large table until it is killed; every line of progress comes out on stdout.
const [folder = "", rows = "20000"] = process.argv.slice(2)
const file = join(folder, "..", "large.csv")
const lines = Array.from({ length: Number(rows) }, (_, n) => {
  const child = Math.floor(n / 4)
  const [year, month] = [2008 + (child % 9), 1 + (child % 12)]
  const born = `${year}-${String(month).padStart(2, "0")}-${String(1 + (child % 28)).padStart(2, "0")}`
  const name = `Xa${child.toString(36)}q Wu${((child * 7919) % 99991).toString(36)}v`
  return `K-${child},${name},${born},female,20${20 + (n % 4)}-03-05,24.${10 + (n % 80)},24.05`
})
writeFileSync(file, ["Number,Name,Date of birth,Sex,Date,AL OD mm,AL OS mm", ...lines, ""].join("\n"))
const mapping = join(folder, "..", "mapping.json")
const heading = (name: string, field: string) => ({ heading: name, field })
writeFileSync(
  mapping,
  JSON.stringify({
    id: "m",
    title: "m",
    rowIs: "visit",
    dateOrder: "year-month-day",
    decimalSign: ".",
    columns: [
      heading("Number", "number"),
      heading("Name", "name"),
      heading("Date of birth", "born"),
      heading("Sex", "sex"),
      heading("Date", "date"),
      heading("AL OD mm", "right.axialLengthMm"),
      heading("AL OS mm", "left.axialLengthMm"),
    ],
  }),
)
const io = { ...processIo, error: (text: string) => process.stdout.write(text) }
process.exitCode = await runCommandLine(["import", file, "--data", folder, "--mapping", mapping], io)
