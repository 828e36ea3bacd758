import { useEffect, useRef, useState } from 'react'
import { Link } from 'wouter'
import { useBuildFile } from '../../app/build-file.ts'
import { type Units, useBuild } from '../../app/queries.ts'
import { useUnits } from '../../app/units.ts'
import { Arrived } from '../../parts/desk/Arrived.tsx'
import { Desk, limitsAddress } from '../../parts/desk/Desk.tsx'
import { WorkingProvider } from '../../parts/working/WorkingProvider.tsx'
import { isDone, MARKS, STEP_NAME, STEPS, type StepId } from './form.ts'
import { type Leaving, MarkStep } from './MarkStep.tsx'
import { Result, RunningLine, surveyFindings } from './Running.tsx'
import { Saving } from './Saving.tsx'
import { AngleStep, EndsStep, MethodStep, NoteStep, SureStep, TapeStep } from './steps.tsx'
import { useSurvey } from './useSurvey.ts'

/** The travel survey, filled in as the tape is read: one thing at a time, large enough for a thumb. */
export function Survey({ id }: { readonly id: string }) {
  const read = useBuildFile(id)
  const file = read.data?.ok === true ? read.data.value.file : undefined
  const [units, setUnits] = useUnits(file?.build.units ?? 'inch')
  return (
    <Desk
      title="Travel survey"
      {...(file === undefined ? {} : { below: `${file.build.name} · revision ${file.build.revision}` })}
      here="survey"
      slim
      build={{ id, name: file?.build.name ?? 'Build' }}
      units={units}
      onUnits={setUnits}
    >
      <Arrived of={read} what="Reading the build">
        {() => <Filling id={id} units={units} />}
      </Arrived>
    </Desk>
  )
}

function Filling({ id, units }: { readonly id: string; readonly units: Units }) {
  const filling = useSurvey(id)
  const { form } = filling
  const plan = useBuild(id, units)
  const open = plan.data?.ok === true ? plan.data.value : undefined
  const [step, setStep] = useState<StepId>(() => STEPS.find((one) => !isDone(one, form)) ?? 'result')
  const [by, setBy] = useState(() => form.readings.at(-1)?.by ?? '')
  const [unit, setUnit] = useState<'in' | 'mm'>(units === 'inch' ? 'in' : 'mm')
  const leaving = useRef<Leaving>(null)
  const body = useRef<HTMLElement>(null)
  const first = useRef(true)
  const at = STEPS.indexOf(step)
  const [before, after] = [STEPS[at - 1], STEPS[at + 1]]

  // the next thing to do is where the focus goes: the field of a reading, else the heading
  useEffect(() => {
    if (first.current && step === 'sure') {
      first.current = false
      return
    }
    first.current = false
    const target = body.current?.querySelector<HTMLElement>('#reading') ?? body.current?.querySelector<HTMLElement>('h2')
    target?.focus({ preventScroll: true })
    body.current?.scrollIntoView({ block: 'nearest' })
  }, [step])

  const go = async (to: StepId) => {
    const taken = (await leaving.current?.take()) ?? true
    if (taken) setStep(to)
  }
  const mark = MARKS.find((one) => one.key === step)
  return (
    <WorkingProvider numbers={open?.numbers ?? []} workings={open?.workings ?? []}>
      <div className="survey">
        <RunningLine open={open} />
        <nav className="survey-steps" aria-label="Steps of the survey">
          <ol>
            {STEPS.map((one, number) => (
              <li key={one}>
                <button type="button" className="survey-step" aria-current={one === step ? 'step' : undefined} onClick={() => void go(one)}>
                  <span aria-hidden="true">{isDone(one, form) ? '✓' : number + 1}</span>
                  <span className="unseen">
                    {STEP_NAME[one]}
                    {isDone(one, form) ? ', done' : ''}
                  </span>
                  <span className="survey-step-name" aria-hidden="true">
                    {STEP_NAME[one]}
                  </span>
                </button>
              </li>
            ))}
          </ol>
        </nav>
        <section ref={body} className="survey-body" aria-labelledby="survey-step">
          <h2 id="survey-step" tabIndex={-1}>
            {STEP_NAME[step]}
          </h2>
          {mark !== undefined && (
            <MarkStep
              key={mark.key}
              ref={leaving}
              id={id}
              mark={mark}
              filling={filling}
              unit={unit}
              onUnit={setUnit}
              by={by}
              findings={surveyFindings(open)}
              onEnter={() => after !== undefined && void go(after)}
            />
          )}
          {step === 'sure' && <SureStep filling={filling} />}
          {step === 'method' && <MethodStep filling={filling} />}
          {step === 'tape' && <TapeStep ref={leaving} id={id} filling={filling} by={by} onBy={setBy} unit={unit} />}
          {step === 'ends' && <EndsStep filling={filling} />}
          {step === 'angle' && <AngleStep ref={leaving} id={id} filling={filling} />}
          {step === 'note' && <NoteStep id={id} filling={filling} />}
          {step === 'result' && (
            <p>
              <Link href={limitsAddress(id)} className="button button-strong">
                See what stops the wheels
              </Link>
            </p>
          )}
        </section>
        <div className="survey-foot">
          <Saving filling={filling} />
          <div className="survey-move">
            <button
              type="button"
              className="button big"
              disabled={before === undefined}
              onClick={() => before !== undefined && void go(before)}
            >
              ← Back
            </button>
            {after !== undefined && (
              <button type="button" className="button button-strong big" onClick={() => void go(after)}>
                Next: {STEP_NAME[after]}
              </button>
            )}
          </div>
        </div>
        <section className="survey-result" aria-labelledby="survey-so-far">
          <h2 id="survey-so-far">So far</h2>
          {step !== 'result' && open !== undefined && <p className="quiet">As saved, revision {open.summary.revision}.</p>}
          <Result open={open} />
        </section>
      </div>
    </WorkingProvider>
  )
}
