import { useState } from 'react'
import { useLocation } from 'wouter'
import { call, messageOf } from '../../app/client.ts'
import { useNotice } from '../../app/notice.tsx'
import { forgetAll } from '../../app/queries.ts'

type Which = 'bought' | 'corrected'

/** Adds the demo build, as it was first bought or as corrected, and opens it. */
export function DemoOffer({ quiet }: { readonly quiet: boolean }) {
  const [adding, setAdding] = useState<Which | null>(null)
  const tell = useNotice()
  const [, go] = useLocation()

  const add = async (which: Which) => {
    if (adding !== null) return
    setAdding(which)
    try {
      const added = await call('demo.add', { which })
      if (added.ok) {
        await forgetAll()
        go(`/build/${encodeURIComponent(added.value.id)}`)
        tell('The demo build is in.')
        return
      }
      tell(added.problems.map((problem) => problem.sentence).join(' '), 'trouble')
    } catch (error) {
      tell(messageOf(error), 'trouble')
    }
    setAdding(null)
  }

  return (
    <section className={quiet ? 'demo demo-quiet' : 'demo'} aria-labelledby="demo">
      <h2 id="demo">{quiet ? 'The demo build' : 'Try it on the demo build'}</h2>
      <p>
        Larch is an invented forest-road crew truck getting a heavier front axle and an assist ram. As first bought, its parts hold a
        handful of honest mistakes.
      </p>
      <div className="demo-choice">
        <button
          type="button"
          className={quiet ? 'button' : 'button button-strong'}
          aria-disabled={adding !== null}
          onClick={() => void add('bought')}
        >
          {adding === 'bought' ? 'Adding…' : 'Add Larch as first bought'}
        </button>
        <button type="button" className="button" aria-disabled={adding !== null} onClick={() => void add('corrected')}>
          {adding === 'corrected' ? 'Adding…' : 'Add Larch as corrected'}
        </button>
      </div>
    </section>
  )
}
