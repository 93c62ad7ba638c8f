/** One sentence carried from the page that did something to the page that shows the result. */
let message: string | null = null

export function leaveMessage(text: string): void {
  message = text
}

/** Gives the message once. */
export function takeMessage(): string | null {
  const taken = message
  message = null
  return taken
}
