import { createContext, type ReactNode, useCallback, useContext, useEffect, useState } from 'react'

type Tell = (text: string, tone?: 'plain' | 'trouble') => void

const NoticeContext = createContext<Tell>(() => undefined)

/** Says a result to everyone: on a strip at the foot of the window, and through a live region to a screen reader. */
export const useNotice = (): Tell => useContext(NoticeContext)

/** How long good news stays. Trouble stays until it is dismissed. */
const SHOWN_MS = 10_000

interface Notice {
  readonly text: string
  readonly tone: 'plain' | 'trouble'
  readonly count: number
}

export function NoticeProvider({ children }: { readonly children: ReactNode }) {
  const [notice, setNotice] = useState<Notice | null>(null)
  const tell = useCallback<Tell>((text, tone = 'plain') => setNotice((last) => ({ text, tone, count: (last?.count ?? 0) + 1 })), [])
  useEffect(() => {
    if (notice === null || notice.tone === 'trouble') return
    const timer = setTimeout(() => setNotice(null), SHOWN_MS)
    return () => clearTimeout(timer)
  }, [notice])
  return (
    <NoticeContext.Provider value={tell}>
      {children}
      <div className="notice" data-tone={notice?.tone} data-empty={notice === null}>
        {/* A new key makes the same sentence twice in a row be read twice. */}
        <p role="status">{notice === null ? '' : <span key={notice.count}>{notice.text}</span>}</p>
        {notice !== null && (
          <button type="button" className="notice-close" onClick={() => setNotice(null)} aria-label="Dismiss this message">
            ×
          </button>
        )}
      </div>
    </NoticeContext.Provider>
  )
}
