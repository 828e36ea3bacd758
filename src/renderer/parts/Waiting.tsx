/** Shown only when something takes longer than a blink (style/base.css delays it), so that nothing flickers. */
export function Waiting({ what }: { readonly what: string }) {
  return (
    <p className="waiting" role="status">
      <span className="waiting-rule" aria-hidden="true" />
      {what}…
    </p>
  )
}
