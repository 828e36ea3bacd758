import { QueryClientProvider } from '@tanstack/react-query'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { Router } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import { guardDrafts } from '../parts/editor/drafts.ts'
import { ImportProvider } from '../parts/import/ImportProvider.tsx'
import { guardKept } from './kept.ts'
import { NoticeProvider } from './notice.tsx'
import { queryClient } from './queries.ts'
import { Screens } from './Screens.tsx'
import { Trouble } from './Trouble.tsx'
import { readTheme, showTheme } from './theme.ts'
import { claimToken } from './token.ts'

claimToken()
guardDrafts()
guardKept()
showTheme(readTheme())

const root = document.getElementById('root')
if (root === null) throw new Error('the page has no #root')

createRoot(root).render(
  <StrictMode>
    <Trouble>
      <QueryClientProvider client={queryClient}>
        <Router hook={useHashLocation}>
          <NoticeProvider>
            <ImportProvider>
              <Screens />
            </ImportProvider>
          </NoticeProvider>
        </Router>
      </QueryClientProvider>
    </Trouble>
  </StrictMode>,
)
