const KEYS = ['7', '8', '9', '4', '5', '6', '1', '2', '3', '.', '0', '/'] as const
const EIGHTHS = ['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'] as const

/**
 * Large keys for figures and fractions, for a thumb. They write into the field, which keeps the focus; a keyboard does not stop
 * at them.
 */
export function Pad(props: {
  readonly inch: boolean
  readonly onType: (text: string) => void
  readonly onBack: () => void
  readonly onAdd: () => void
}) {
  const key = (label: string, act: () => void, more = '', name = label) => (
    <button
      key={label}
      type="button"
      tabIndex={-1}
      className={`pad-key ${more}`}
      aria-label={name}
      // the field keeps the focus, so that figures may come from both
      onPointerDown={(event) => event.preventDefault()}
      onClick={act}
    >
      {label}
    </button>
  )
  return (
    <fieldset className="pad">
      <legend className="unseen">Keys for the thumb</legend>
      {props.inch && <div className="pad-eighths">{EIGHTHS.map((part) => key(part, () => props.onType(part), 'pad-small'))}</div>}
      <div className="pad-keys">
        {KEYS.map((figure) => key(figure, () => props.onType(figure)))}
        {key('⌫', props.onBack, 'pad-back', 'Take away the last figure')}
        {key('space', () => props.onType(' '), 'pad-space pad-small')}
        {key('Add', props.onAdd, 'pad-add', 'Add this reading')}
      </div>
    </fieldset>
  )
}

/** What a key makes of the text: a fraction after a whole number is set off by a space. */
export const typedOnto = (text: string, key: string): string =>
  key.includes('/') && key.length > 1 && /\d$/.test(text) ? `${text} ${key}` : `${text}${key}`
