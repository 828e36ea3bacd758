import type { SavedFile } from '../../shared/contract/contract.ts'

/** How a picture looks outside the window: black on white, widths as in style/drawing.css. States keep their light colours. */
const STYLE = `
text { font-family: "DejaVu Sans", Verdana, sans-serif; fill: #000 }
.line-visible, .line-thin, .line-hidden, .line-axis { stroke: #000; stroke-width: 0.25; stroke-linejoin: round }
.line-visible { stroke-width: 0.5 }
.line-hidden { stroke-dasharray: 3 1.5 }
.line-axis { stroke-dasharray: 8 1.2 0.8 1.2 }
.fill-none { fill: none }
.fill-paper { fill: #fff }
.fill-part { fill: #e8e8e6 }
.arrow { fill: #000 }
.state-stops { stroke: #a32c18 }
.state-look { stroke: #7c5800 }
text.state-stops { fill: #a32c18; stroke: none }
text.state-look { fill: #7c5800; stroke: none }
`

/**
 * A painted drawing as a file of its own, in true millimetres.
 *
 * @param painted the picture as it is on the page; what is laid over it for the hand (class "overlay") is left out
 */
export function svgText(painted: SVGSVGElement): string {
  const copy = painted.cloneNode(true) as SVGSVGElement
  for (const over of copy.querySelectorAll('.overlay')) over.remove()
  const { width, height } = painted.viewBox.baseVal
  for (const name of copy.getAttributeNames()) if (name !== 'viewBox') copy.removeAttribute(name)
  copy.setAttribute('width', `${width}mm`)
  copy.setAttribute('height', `${height}mm`)
  // put in as text: the page's own policy forbids a style element to be made
  const text = new XMLSerializer().serializeToString(copy).replace('>', `><style>${STYLE}</style>`)
  return `<?xml version="1.0" encoding="UTF-8"?>\n${text}\n`
}

/** The same, ready to be handed to the user. */
export function svgFile(painted: SVGSVGElement, name: string): SavedFile {
  const bytes = new TextEncoder().encode(svgText(painted))
  return { fileName: `${name}.svg`, mediaType: 'image/svg+xml', base64: btoa(String.fromCharCode(...bytes)) }
}
