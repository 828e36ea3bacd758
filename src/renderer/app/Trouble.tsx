import { Component, type ReactNode } from 'react'
import { messageOf } from './client.ts'

/** The last net: a fault in the window itself shows a message instead of an empty page. Nothing saved is touched by it. */
export class Trouble extends Component<{ readonly children: ReactNode }, { readonly error: unknown }> {
  override state: { readonly error: unknown } = { error: null }

  static getDerivedStateFromError(error: unknown) {
    return { error }
  }

  override render() {
    if (this.state.error === null) return this.props.children
    return (
      <main className="lost">
        <h1>The window stumbled</h1>
        <p>{messageOf(this.state.error)}</p>
        <p>Your builds are safe: the window only shows them.</p>
        <button type="button" className="button button-strong" onClick={() => window.location.reload()}>
          Load the window again
        </button>
      </main>
    )
  }
}
