import { useQuery } from '@tanstack/react-query'
import type { BuildFile } from '../../../shared/model/build.ts'
import type { PartFile } from '../../../shared/model/part.ts'
import type { ChainWords, InsteadWords } from '../../../shared/report/text/across.ts'
import { call } from '../../app/client.ts'
import type { Units } from '../../app/queries.ts'
import { Arrived } from '../desk/Arrived.tsx'
import { useDoing } from '../desk/useDoing.ts'
import type { Act } from '../desk/useSteps.ts'
import { keyed } from '../keyed.ts'
import { StateTag } from '../Mark.tsx'
import { chainsOf, changeHoseEnd, putChain, shelfIds } from './chain.ts'
import { endAt, type JointFile } from './steps.ts'

/** What joins two ends that do not meet: chains of adapters, and the hose made with another end instead. */
export function WayAcross(props: {
  readonly file: BuildFile
  readonly joint: JointFile
  /** what the joint is called */
  readonly called: string
  readonly a: string
  readonly b: string
  readonly units: Units
  readonly onStep: Act
  /** the chain is in, and the joint gone */
  readonly onGone: () => void
  /** the hose's end is another, and the joint with it */
  readonly onChanged: () => void
}) {
  const { file, joint, a, b, units } = props
  const hoseEnds = (['a', 'b'] as const).filter((side) => endAt(file, joint[side])?.part.kind === 'hose')
  const way = useQuery({
    queryKey: ['across', a, b, units, hoseEnds],
    queryFn: () => call('fit.across', { a, b, units, hoseEnds }),
    staleTime: 0,
  })
  const { busy, run } = useDoing()

  const put = async (chain: ChainWords) => {
    const parts = new Map<string, PartFile>()
    for (const id of shelfIds(chain)) {
      const found = await run(() => call('shelf.read', { id }))
      if (found === null) return
      parts.set(id, found.part)
    }
    const count = chain.pieces.length
    const done = await props.onStep(
      putChain(joint, chain, parts),
      `${count === 1 ? 'One piece went' : `${count} pieces went`} between, joined at both ends.`,
    )
    if (done) props.onGone()
  }
  const remake = async (change: InsteadWords) => {
    if (await props.onStep(changeHoseEnd(joint, change), `The hose is to be made with ${change.to}.`)) props.onChanged()
  }
  return (
    <section className="across" aria-label={`Way across: ${props.called}`}>
      <h4>Way across</h4>
      <Arrived of={way} what="Looking for a way">
        {(words) => (
          <>
            <p>
              <StateTag
                state={words.state}
                text={words.outcome === 'found' ? 'there is a way' : words.outcome === 'none' ? 'no way' : 'not needed'}
              />{' '}
              {words.answer}
            </p>
            {words.measure.length > 0 && <p>Measure first: {words.measure.join('; ')}.</p>}
            <ol className="chains">
              {keyed(chainsOf(words), ({ chain }) => chain.title + chain.pieces.map((piece) => piece.id).join()).map(
                ({ key, item }, at) => (
                  <li key={key} className="chain">
                    <Chain
                      chain={item.chain}
                      a={a}
                      b={b}
                      title={`${at === 0 ? 'Best' : item.buying ? 'Fewer leak points, with something to buy' : 'Or'}: ${item.chain.title}`}
                    />
                    <button
                      type="button"
                      className={at === 0 ? 'button button-strong' : 'button'}
                      disabled={busy}
                      onClick={() => void put(item.chain)}
                    >
                      Put this chain into the build
                      <span className="unseen">{` of ${item.chain.pieces.map((piece) => piece.name).join(', ')}`}</span>
                    </button>
                  </li>
                ),
              )}
            </ol>
            {words.changes.map((change, at) => (
              <div key={change.change + change.to} className="chain">
                <p>{words.instead[at]}.</p>
                <button type="button" className="button" onClick={() => void remake(change)}>
                  Change this hose end instead
                </button>
              </div>
            ))}
          </>
        )}
      </Arrived>
    </section>
  )
}

function Chain({ chain, a, b, title }: { readonly chain: ChainWords; readonly a: string; readonly b: string; readonly title: string }) {
  return (
    <>
      <h5>{title}</h5>
      <ol className="links">
        <li className="link-end">
          <code>{a}</code>
        </li>
        {chain.pieces.map((piece, at) => (
          // a chain may hold the same piece twice, and never changes its order
          <li key={`${piece.id} ${chain.pieces.indexOf(piece)}`}>
            <Meeting chain={chain} at={at} />
            <p>
              <strong>{piece.name}</strong> <span className={piece.from === 'to buy' ? 'buy' : 'quiet'}>{piece.from}</span>
            </p>
            <p className="quiet">{piece.through}</p>
            {piece.notes.map((note) => (
              <p key={note} className="quiet">
                {note}
              </p>
            ))}
          </li>
        ))}
        <li className="link-end">
          <Meeting chain={chain} at={chain.pieces.length} />
          <code>{b}</code>
        </li>
      </ol>
    </>
  )
}

/** How two neighbours of a chain meet. */
function Meeting({ chain, at }: { readonly chain: ChainWords; readonly at: number }) {
  const meeting = chain.meetings[at]
  if (meeting === undefined) return null
  return (
    <p className="meeting">
      <StateTag state={meeting.state} text={meeting.word} />
      {meeting.conditions.length > 0 && <span className="quiet"> {meeting.conditions.join('; ')}</span>}
    </p>
  )
}
