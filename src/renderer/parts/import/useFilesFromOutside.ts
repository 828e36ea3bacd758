import { useEffect, useState } from 'react'

const holdsFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false

const inField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement && (target.isContentEditable || target.matches('input, textarea, select'))

/**
 * Listens on the whole window for a file dropped on it and for a build pasted outside of any field.
 * @returns whether a file is being dragged over the window now
 */
export function useFilesFromOutside(takeFile: (file: File) => Promise<void>, takeText: (text: string) => void): boolean {
  const [dragging, setDragging] = useState(false)
  useEffect(() => {
    const onOver = (event: DragEvent) => {
      if (!holdsFile(event)) return
      event.preventDefault()
      setDragging(true)
    }
    const onLeave = (event: DragEvent) => {
      if (event.relatedTarget === null) setDragging(false)
    }
    const onDrop = (event: DragEvent) => {
      if (!holdsFile(event)) return
      // Without this the browser would leave the program and show the file.
      event.preventDefault()
      setDragging(false)
      const file = event.dataTransfer?.files[0]
      if (file !== undefined) void takeFile(file)
    }
    const onPaste = (event: ClipboardEvent) => {
      if (inField(event.target)) return
      const file = event.clipboardData?.files[0]
      const text = event.clipboardData?.getData('text/plain').trim() ?? ''
      if (file !== undefined) void takeFile(file)
      else if (text.startsWith('{')) takeText(text)
    }
    window.addEventListener('dragover', onOver)
    window.addEventListener('dragleave', onLeave)
    window.addEventListener('drop', onDrop)
    window.addEventListener('paste', onPaste)
    return () => {
      window.removeEventListener('dragover', onOver)
      window.removeEventListener('dragleave', onLeave)
      window.removeEventListener('drop', onDrop)
      window.removeEventListener('paste', onPaste)
    }
  }, [takeFile, takeText])
  return dragging
}
