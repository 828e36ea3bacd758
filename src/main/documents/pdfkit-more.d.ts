/** What pdfkit 0.20 takes and its published types leave out. */
declare namespace PDFKit.Mixins {
  interface StructureElementOptions {
    scope?: 'Row' | 'Column'
    bbox?: [number, number, number, number]
  }
}

declare namespace PDFKit {
  interface PDFOutline {
    /** `top` and `left` count from the upper and the right edge of the page, in points */
    addItem(title: string, options: { expanded?: boolean; top?: number; left?: number }): PDFOutline
  }
}
