import { Link } from 'wouter'
import { usePageTitle } from '../app/focus.ts'

/** An address that leads nowhere. */
export function Lost() {
  usePageTitle('Not found')
  return (
    <main className="lost">
      <h1>There is nothing at this address</h1>
      <p>It may be an old one, or a build that is no longer here.</p>
      <Link href="/" className="button button-strong">
        Go to the list of builds
      </Link>
    </main>
  )
}
