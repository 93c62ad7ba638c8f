/** Who may import whom (docs/architecture.md). Anything not listed here as allowed fails the build. */
const folders = [
  "evidence",
  "engine",
  "chart",
  "record",
  "interop",
  "words",
  "report",
  "server",
  "web",
  "cli",
]
const may = {
  evidence: [],
  engine: ["evidence"],
  chart: ["engine"],
  record: ["engine"],
  interop: ["engine", "evidence"],
  words: ["engine"],
  report: ["engine", "chart", "evidence"],
  server: ["evidence", "engine", "chart", "record", "interop", "words", "report"],
  web: ["engine", "chart", "evidence", "words", "server/contract"],
  cli: ["evidence", "engine", "chart", "record", "interop", "words", "report", "server"],
}
const walls = folders.map((folder) => {
  const allowed = [folder, ...may[folder]].map((name) => `^src/${name}(/|$)`)
  return {
    name: `${folder}-imports`,
    severity: "error",
    comment: `src/${folder} may import only: ${["itself", ...may[folder]].join(", ")}`,
    from: { path: `^src/${folder}/`, pathNot: "\\.test\\.tsx?$" },
    to: { path: "^src/", pathNot: allowed },
  }
})
module.exports = {
  forbidden: [
    ...walls,
    {
      name: "engine-evidence-types-only",
      severity: "error",
      comment: "data is passed into the engine; it may import the types of the evidence only",
      from: { path: "^src/engine/", pathNot: "\\.test\\.ts$" },
      to: { path: "^src/evidence/", pathNot: "^src/evidence/types\\.ts$" },
    },
    {
      name: "pure-has-no-packages",
      severity: "error",
      comment: "engine and evidence use no package at all, Node's own included",
      from: { path: "^src/(engine|evidence)/", pathNot: "\\.test\\.ts$" },
      to: { dependencyTypes: ["npm", "npm-dev", "core"] },
    },
    {
      name: "cli-not-routes",
      severity: "error",
      from: { path: "^src/cli/" },
      to: { path: "^src/server/routes/" },
    },
    {
      name: "no-own-index",
      severity: "error",
      comment: "inside a folder import the owning file, never the folder's own index",
      from: { path: "^src/([^/]+)/.+", pathNot: "index\\.ts$|\\.test\\.tsx?$" },
      to: { path: "^src/$1/index\\.ts$" },
    },
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.test.json" },
    enhancedResolveOptions: { extensions: [".ts", ".tsx", ".js"], conditionNames: ["import", "types"] },
  },
}
