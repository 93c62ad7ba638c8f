/**
 * Runs tasks one after another. What is checked against the record and then recorded must not have another
 * recording in between; one process serves a data folder, so a queue in memory is enough.
 */
export function inTurn(): <T>(task: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve()
  return (task) => {
    const result = last.then(task, task)
    last = result.catch(() => undefined)
    return result
  }
}
