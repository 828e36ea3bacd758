/** The one function used of fontkit, which comes without types: opens a font so that pdfkit need not parse it again at each use. */
declare module 'fontkit' {
  export function create(data: Uint8Array): PDFKit.Mixins.PDFFontSource
}
