/** Width of a figure saved as a picture, px: sharp on a slide and on a sheet. */
const PICTURE_WIDTH = 2000

/** Puts a figure on the clipboard: as a drawing where the browser can, and as text in any case. */
export async function copyFigure(svg: string): Promise<void> {
  const types = ["text/plain", "image/svg+xml"].filter(
    (type) => ClipboardItem.supports?.(type) ?? type === "text/plain",
  )
  const items = Object.fromEntries(types.map((type) => [type, new Blob([svg], { type })]))
  await navigator.clipboard.write([new ClipboardItem(items)])
}

export async function saveAs(content: Blob, name: string): Promise<void> {
  const url = URL.createObjectURL(content)
  const link = document.createElement("a")
  link.href = url
  link.download = name
  link.click()
  URL.revokeObjectURL(url)
}

/** The figure as a picture on white, as it would stand on paper. */
export async function pngOf(svg: string): Promise<Blob> {
  const picture = new Image()
  // An address of this kind is allowed by the page's own rules; one of an object is not.
  picture.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(sized(svg))}`
  await picture.decode()
  const canvas = document.createElement("canvas")
  canvas.width = PICTURE_WIDTH
  canvas.height = Math.round((PICTURE_WIDTH * picture.naturalHeight) / picture.naturalWidth)
  const pen = canvas.getContext("2d")
  if (!pen) throw new Error("this browser draws no picture")
  pen.fillStyle = "#fff"
  pen.fillRect(0, 0, canvas.width, canvas.height)
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height)
  const png = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"))
  if (!png) throw new Error("this browser makes no PNG")
  return png
}

/** With a width and a height of its own: a browser takes a drawing that states none as 150 px high. */
function sized(svg: string): string {
  const drawing = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement
  const [, , width = 300, height = 150] = (drawing.getAttribute("viewBox") ?? "").split(/[ ,]+/).map(Number)
  drawing.setAttribute("width", String(width))
  drawing.setAttribute("height", String(height))
  return new XMLSerializer().serializeToString(drawing)
}
