import { makeChain } from '../../formulas/linkage/chain.ts'
import { stateAtAngle } from '../../formulas/linkage/linkage.ts'
import { placeFromRightEnd } from '../../formulas/linkage/mounts.ts'
import { kingpinSpacingAtGround } from '../../formulas/linkage/turning.ts'
import type { Build } from '../../model/build.ts'
import type { PartOf } from '../../model/part.ts'
import { entered, type Known, type Ledger } from '../ledger.ts'
import { type KnownLinkage, type KnownPlace, missingOf, placeOnAxle, typed } from './gather.ts'
import type { SteeringGeometry } from './plan-types.ts'

/** The ram's places with where they came from. */
export interface KnownRam {
  readonly base: KnownPlace & { readonly z: Known<'length'> }
  readonly s: Known<'length'>
  readonly e: Known<'length'>
  readonly z: Known<'length'>
  readonly closed: Known<'length'> | undefined
  readonly stroke: Known<'length'> | undefined
  readonly ended: 'single' | 'double'
  /** place of the ram among the parts */
  readonly i: number
}

export interface KnownSteering {
  readonly linkage: KnownLinkage
  readonly ram: KnownRam | null
  readonly turns: Known<'ratio'> | undefined
  readonly sweep: Known<'angle'> | undefined
  readonly wheelbase: Known<'length'> | undefined
  readonly track: Known<'length'> | undefined
  readonly groundSpacing: Known<'length'> | undefined
  readonly geometry: SteeringGeometry
}

/** All of the steering's geometry: chain, ram, suspension and wheels beside the linkage; what is missing is asked for. */
export function gatherSteering(build: Build, linkage: KnownLinkage, ledger: Ledger): KnownSteering {
  const box = build.parts.findIndex((p) => p.kind === 'steering box')
  const boxPart = build.parts[box]
  const turns = boxPart?.kind === 'steering box' ? entered('ratio', boxPart.turns, ['parts', box, 'turns']) : undefined
  const sweep = boxPart?.kind === 'steering box' ? entered('angle', boxPart.sweep, ['parts', box, 'sweep']) : undefined
  const chain = gatherChain(build, linkage, box >= 0, ledger)
  const ram = gatherRam(build, linkage, ledger)
  const wheelbase = entered('length', build.vehicle.wheelbase, ['vehicle', 'wheelbase'])
  const groundSpacing = spacingAtGround(build, linkage, ledger)
  const rodTube = build.parts.find((p) => p.kind === 'tube' && p.serves === 'tie rod') as PartOf<'tube'> | undefined
  const { hubFace, offset, diameter, width } = build.geometry?.wheel ?? {}
  return {
    linkage,
    ram,
    turns,
    sweep,
    wheelbase,
    track: entered('length', build.axle?.track, ['axle', 'track']),
    groundSpacing,
    geometry: {
      linkage: linkage.made,
      range: linkage.range,
      rodHeight: build.geometry?.tieRod?.above?.si ?? null,
      rodDiameter: rodTube?.outsideDiameter?.si ?? null,
      chain,
      box: { turns: turns?.si ?? null, sweep: sweep?.si ?? null },
      ram: ram && {
        ended: ram.ended,
        base: { x: ram.base.x.si, y: ram.base.y.si, z: ram.base.z.si },
        along: ram.s.si,
        ahead: ram.e.si,
        above: ram.z.si,
        closed: ram.closed?.si ?? null,
        stroke: ram.stroke?.si ?? null,
        bodyLength: build.geometry?.ram?.bodyLength?.si ?? null,
        bodyDiameter: build.geometry?.ram?.bodyDiameter?.si ?? null,
      },
      suspension: chain && suspensionOf(build),
      wheel: {
        diameter: diameter?.si ?? null,
        width: width?.si ?? null,
        outset: hubFace && offset ? hubFace.si + offset.si : null,
      },
      wheelbase: wheelbase?.si ?? null,
      groundSpacing: groundSpacing?.si ?? null,
    },
  }
}

function gatherChain(build: Build, linkage: KnownLinkage, wanted: boolean, ledger: Ledger): SteeringGeometry['chain'] {
  const { pitman, dragLink } = build.geometry ?? {}
  const at = placeOnAxle(build, 'pitman', linkage.w, ledger)
  const length = pitman?.length?.si
  const end = dragLinkEnd(build, linkage)
  if (!at || length === undefined || !pitman?.points || !end) {
    const missing = missingOf({
      "sector shaft's place": at,
      'pitman arm length': length,
      'pitman arm points ahead or behind': pitman?.points,
      "drag link's end at the axle": end ?? undefined,
    })
    if (wanted && build.geometry) ledger.measure('pitman and drag link', ['geometry', 'pitman'], { missing })
    return null
  }
  const straight = stateAtAngle(linkage.made, 'left', -linkage.made.toe / 2)
  if (!straight) return null
  const height = (dragLink?.above?.si ?? 0) - (pitman.ballAbove?.si ?? 0)
  const trueLength = dragLink?.length?.si
  const chain = makeChain(linkage.made, straight, {
    pivot: { x: at.x.si, y: at.y.si },
    pitman: length,
    points: (pitman.points === 'ahead' ? Math.PI / 2 : -Math.PI / 2) + (pitman.angle?.si ?? 0) * (pitman.points === 'ahead' ? 1 : -1),
    end,
    // a link that slopes is shorter seen from above
    ...(trueLength !== undefined && { link: Math.sqrt(Math.max(0, trueLength ** 2 - height ** 2)) }),
  })
  if (chain.ok) return chain.value
  const { link, apart } = chain.issues[0]?.facts ?? {}
  ledger.add({
    code: 'chain.does_not_close',
    severity: 'stops',
    about: ['geometry', 'dragLink'],
    evidence: [
      ...(typeof link === 'number' ? [{ name: 'drag link, seen from above', dimension: 'length' as const, si: link }] : []),
      ...(typeof apart === 'number' ? [{ name: 'from sector shaft to joint', dimension: 'length' as const, si: apart }] : []),
    ],
  })
  return null
}

function dragLinkEnd(build: Build, { made }: KnownLinkage) {
  const link = build.geometry?.dragLink
  if (!link?.to) return null
  if (link.to === 'tie rod') {
    if (!link.along || !link.rodEnd) return null
    return {
      kind: 'tie rod',
      along: link.rodEnd === 'left' ? link.along.si : made.rod - link.along.si,
      ahead: link.ahead?.si ?? 0,
    } as const
  }
  if (!link.armLength || !link.armPoints) return null
  const side = link.to === 'left knuckle' ? 'left' : 'right'
  const [length, lean] = [link.armLength.si, link.armAngle?.si ?? 0]
  const inward = side === 'left' ? 1 : -1
  const arm = { x: inward * length * Math.sin(lean), y: (link.armPoints === 'ahead' ? 1 : -1) * length * Math.cos(lean) }
  return { kind: 'knuckle', side, arm } as const
}

function gatherRam(build: Build, linkage: KnownLinkage, ledger: Ledger): KnownRam | null {
  const i = build.parts.findIndex((p) => p.kind === 'ram')
  const part = build.parts[i]
  if (part?.kind !== 'ram' || !build.geometry) return null
  const at = placeOnAxle(build, 'ram', linkage.w, ledger)
  const baseZ = typed(build, 'ram', 'above', 'length')
  const along = typed(build, 'ram', 'rodAlong', 'length')
  const rodEnd = build.geometry.ram?.rodEnd
  const rodZ = typed(build, 'tieRod', 'above', 'length')
  const above = typed(build, 'ram', 'rodAbove', 'length')
  const e = typed(build, 'ram', 'rodAhead', 'length')
  if (!at || !baseZ || !along || !rodEnd || !rodZ || !above || !e || !part.ended) {
    const missing = missingOf({
      'pin on the axle: along and fore and aft': at,
      'pin on the axle: height': baseZ,
      'pin on the tie rod: along it': along && rodEnd,
      'pin on the tie rod: ahead of it': e,
      'pin on the tie rod: above it': above,
      'tie rod: height': rodZ,
      'single- or double-ended': part.ended,
    })
    ledger.measure('ram places', ['geometry', 'ram'], { missing, part: part.name })
    return null
  }
  const s = rodEnd === 'left' ? along : ledger.compute('ram-space.via-along', placeFromRightEnd, { c: linkage.c, a: along })
  if (!s) return null
  const z = ledger.sum('ram-space.via-height', 'length', { 'tie rod': rodZ, 'above it': above })
  const closed = entered('length', part.closedLength, ['parts', i, 'closedLength'])
  const stroke = entered('length', part.stroke, ['parts', i, 'stroke'])
  if (!closed && part.ended === 'single') ledger.measure('ram closed length', ['parts', i, 'closedLength'], { part: part.name })
  return { base: { ...at, z: baseZ }, s, e, z, closed, stroke, ended: part.ended, i }
}

function spacingAtGround(build: Build, linkage: KnownLinkage, ledger: Ledger): Known<'length'> | undefined {
  const sigma = entered('angle', build.axle?.kingpinInclination, ['axle', 'kingpinInclination'])
  const radius = typed(build, 'wheel', 'loadedRadius', 'length')
  const above = typed(build, 'tieRod', 'above', 'length')
  if (!sigma || !radius || !above || radius.si + above.si < 0) return undefined
  const h = ledger.sum('linkage.via-rod-over-ground', 'length', { radius, above })
  return ledger.compute('linkage.ground-spacing', kingpinSpacingAtGround, { w: linkage.w, h, sigma })
}

function suspensionOf(build: Build): SteeringGeometry['suspension'] {
  const ball = build.geometry?.pitman?.ballAbove
  const joint = build.geometry?.dragLink?.above
  const { trackBarLength, trackBarAbove, trackBarFrameEnd, spring } = build.geometry?.suspension ?? {}
  if (!ball || !joint || (spring !== 'leaf' && !(trackBarLength && trackBarAbove && trackBarFrameEnd))) return null
  const trackBar =
    trackBarLength && trackBarAbove && trackBarFrameEnd
      ? { length: trackBarLength.si, above: trackBarAbove.si, frameEnd: trackBarFrameEnd }
      : null
  return { ballHeight: ball.si, jointHeight: joint.si, trackBar }
}
