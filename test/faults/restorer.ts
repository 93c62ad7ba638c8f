import { restoreArchive } from "../../src/server/leave/restore-archive.js"

// A process of its own that restores an archive and is killed meanwhile.
const [file = "", folder = ""] = process.argv.slice(2)
await restoreArchive({ file, folder, onProgress: (told) => process.stdout.write(`${told}\n`) })
process.stdout.write("restored\n")
