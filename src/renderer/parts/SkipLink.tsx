/** First stop of the keyboard: jumps over what repeats. Done by hand, since the address's # part belongs to routing. */
export function SkipLink({ to, children }: { readonly to: string; readonly children: string }) {
  return (
    <a
      className="skip"
      href={`#${to}`}
      onClick={(event) => {
        event.preventDefault()
        document.getElementById(to)?.focus()
      }}
    >
      {children}
    </a>
  )
}
