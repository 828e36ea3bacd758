import { useLocation } from 'wouter'
import type { Problem } from '../../../shared/contract/contract.ts'
import type { BuildFile } from '../../../shared/model/build.ts'
import type { PartFile } from '../../../shared/model/part.ts'
import { CHANGED_MEANWHILE, type Step, useBuildFile, useChange, useReread } from '../../app/build-file.ts'
import { useNotice } from '../../app/notice.tsx'
import type { Units } from '../../app/queries.ts'
import { useUnits } from '../../app/units.ts'
import { Arrived } from '../../parts/desk/Arrived.tsx'
import { Desk, partAddress, partsAddress } from '../../parts/desk/Desk.tsx'
import { keyOfBuild } from '../../parts/editor/drafts.ts'
import { renamedEnds } from '../../parts/editor/form.ts'
import { PartEditor, type Save } from '../../parts/editor/PartEditor.tsx'
import { addPart, jointsOf, replacePart } from '../../parts/joints/steps.ts'
import { compare } from '../../parts/what-if/compare.ts'

/** A part of a build in its fields; a new one where none is named. */
export function BuildPart({ id, part }: { readonly id: string; readonly part: string | null }) {
  const read = useBuildFile(id)
  const file = read.data?.ok === true ? read.data.value.file : undefined
  const stored = part === null ? null : file?.parts.find((one) => one.id === part)
  const [units, setUnits] = useUnits(file?.build.units ?? 'inch')
  const title = part === null ? 'New part' : (stored?.name ?? 'Part')
  return (
    <Desk
      title={title}
      {...(file === undefined ? {} : { below: `A part of ${file.build.name} · revision ${file.build.revision}` })}
      here="parts"
      build={{ id, name: file?.build.name ?? 'Build' }}
      units={units}
      onUnits={setUnits}
    >
      <Arrived of={read} what="Reading the build">
        {(value) =>
          stored === undefined ? (
            <p role="alert">There is no part “{part}” in this build any more.</p>
          ) : (
            <Editing key={part} file={value.file} id={id} stored={stored} units={units} />
          )
        }
      </Arrived>
    </Desk>
  )
}

function Editing(props: { readonly file: BuildFile; readonly id: string; readonly stored: PartFile | null; readonly units: Units }) {
  const { file, id, stored } = props
  const change = useChange(id)
  const reread = useReread(id)
  const tell = useNotice()
  const [, go] = useLocation()

  const stepOf = ({ form, part, from }: Save): Step =>
    stored === null ? addPart(part) : replacePart(part, renamedEnds(form, from ?? stored))
  const at = stored === null ? file.parts.length : file.parts.findIndex((one) => one.id === stored.id)
  const inPart = (problems: readonly Problem[]): readonly Problem[] =>
    problems.map((problem) => ({ ...problem, place: problem.place.replace(`parts[${at}].`, '') }))
  const taken = (part: PartFile): readonly Problem[] =>
    stored === null && file.parts.some((one) => one.id === part.id)
      ? [{ code: 'window.taken', place: 'id', sentence: `This build has a part with the id “${part.id}” already.` }]
      : []

  const look = async (save: Save) => {
    const problems = taken(save.part)
    if (problems.length > 0) return { ok: false as const, problems }
    const answer = await compare(id, stepOf(save)(file) ?? file, props.units)
    return answer.ok ? answer : { ok: false as const, problems: inPart(answer.problems) }
  }
  const save = async (given: Save) => {
    const { part } = given
    const problems = [...taken(part)]
    if (problems.length === 0) problems.push(...inPart(await change(stepOf(given))))
    if (problems.length > 0) return problems
    tell(`${part.name} is saved.`)
    if (stored === null) go(partAddress(id, part.id), { replace: true })
    return []
  }
  const joints = stored === null ? [] : jointsOf(file, stored.id)
  return (
    <PartEditor
      place={keyOfBuild(id, stored?.id ?? null)}
      stored={stored}
      units={props.units}
      saving="Save into the build"
      onSave={save}
      compare={look}
      remedy={(problems) =>
        problems.some((problem) => problem.code === CHANGED_MEANWHILE) && (
          <>
            <p>Read the build as it is now, look whether this part was changed, and save again. What you typed stays.</p>
            <button type="button" className="button" onClick={() => void reread()}>
              Read the build anew
            </button>
          </>
        )
      }
    >
      {joints.length > 0 && (
        <p className="quiet">
          {joints.length === 1 ? 'One joint holds it.' : `${joints.length} joints hold it.`} A renamed end keeps its joint; an end taken
          away takes its joint with it.
        </p>
      )}
      <p>
        <button type="button" className="button" onClick={() => go(partsAddress(id))}>
          ← All parts of the build
        </button>
      </p>
    </PartEditor>
  )
}
