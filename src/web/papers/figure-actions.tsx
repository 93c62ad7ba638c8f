import { useState } from "react"
import { say } from "../../engine/say.js"
import { copyFigure, pngOf, saveAs } from "./keep-figure.js"

/** A figure of a document to be taken elsewhere: copied, or saved as drawing or picture. */
export function FigureActions({ svg, name }: { readonly svg: string; readonly name: string }) {
  const [said, setSaid] = useState("")
  const tried = (task: Promise<void>, done: string) =>
    task.then(
      () => setSaid(done),
      () => setSaid(say("The browser did not allow it.")),
    )
  const saved = say("The figure is saved to your downloads.")
  return (
    <p className="links">
      <button
        type="button"
        className="link"
        onClick={() => tried(copyFigure(svg), say("The figure is copied."))}
      >
        {say("copy figure")}
      </button>
      <button
        type="button"
        className="link"
        onClick={() => tried(saveAs(new Blob([svg], { type: "image/svg+xml" }), `figure-${name}.svg`), saved)}
      >
        {say("save as SVG")}
      </button>
      <button
        type="button"
        className="link"
        onClick={() =>
          tried(
            pngOf(svg).then((png) => saveAs(png, `figure-${name}.png`)),
            saved,
          )
        }
      >
        {say("save as PNG")}
      </button>
      <span role="status" className="soft small">
        {said}
      </span>
    </p>
  )
}
