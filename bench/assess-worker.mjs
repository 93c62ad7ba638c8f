import { parentPort, workerData } from "node:worker_threads"
import { assess } from "../dist/engine/index.js"
import { benchCourse, evidence, lastVisit } from "./child.mjs"

// Courses are made before the clock starts; 50 different ones, so that no cache answers for the engine.
const courses = Array.from({ length: 50 }, (_, i) =>
  benchCourse({ seed: workerData.from + i, treatments: 1 }),
)
for (const course of courses) assess({ course, asOf: lastVisit(course), evidence })
const started = process.hrtime.bigint()
for (let i = 0; i < workerData.count; i++) {
  const course = courses[i % courses.length]
  assess({ course, asOf: lastVisit(course), evidence })
}
parentPort.postMessage(Number(process.hrtime.bigint() - started) / 1e9)
