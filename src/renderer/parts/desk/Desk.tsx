import type { ReactNode } from 'react'
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components'
import { Link } from 'wouter'
import { usePageTitle } from '../../app/focus.ts'
import type { Units } from '../../app/queries.ts'
import { SkipLink } from '../SkipLink.tsx'

/** Where in the program one is. */
export type Here = 'shelf' | 'identify' | 'parts' | 'joints' | 'survey' | 'geometry' | 'limits' | 'none'

export const buildAddress = (id: string): string => `/build/${encodeURIComponent(id)}`
export const partsAddress = (id: string): string => `${buildAddress(id)}/edit/parts`
export const partAddress = (id: string, part: string): string => `${partsAddress(id)}/${encodeURIComponent(part)}`
export const jointsAddress = (id: string): string => `${buildAddress(id)}/edit/joints`
export const surveyAddress = (id: string): string => `${buildAddress(id)}/edit/survey`
export const limitsAddress = (id: string): string => `${buildAddress(id)}/edit/limits`
/** The places of the joints; with a place of the build file ("geometry.ram.along"), at its field. */
export const geometryAddress = (id: string, place?: string): string =>
  `${buildAddress(id)}/edit/geometry${place === undefined ? '' : `/${encodeURIComponent(place)}`}`
export const shelfPartAddress = (part: string): string => `/shelf/part/${encodeURIComponent(part)}`

/** A place where something is worked on: the strip along the top with the ways to the other places, and the bench below. */
export function Desk(props: {
  readonly title: string
  readonly below?: string
  readonly here: Here
  /** takes as little height as can be in a narrow window */
  readonly slim?: boolean
  readonly build?: { readonly id: string; readonly name: string }
  readonly units: Units
  readonly onUnits: (units: Units) => void
  readonly children: ReactNode
}) {
  const { build, here, units } = props
  usePageTitle(build === undefined ? props.title : `${build.name}: ${props.title}`)
  return (
    <div className={props.slim === true ? 'desk desk-slim' : 'desk'}>
      <SkipLink to="desk">Skip to the work</SkipLink>
      <header className="title-bar">
        <div className="title-name">
          <h1>{props.title}</h1>
          {props.below !== undefined && <p>{props.below}</p>}
        </div>
        <nav className="places" aria-label="Places">
          <Place to="/">All builds</Place>
          {build !== undefined && (
            <>
              <Place to={buildAddress(build.id)}>Sheet</Place>
              <Place to={partsAddress(build.id)} here={here === 'parts'}>
                Parts
              </Place>
              <Place to={jointsAddress(build.id)} here={here === 'joints'}>
                Joints
              </Place>
              <Place to={surveyAddress(build.id)} here={here === 'survey'}>
                Survey
              </Place>
              <Place to={geometryAddress(build.id)} here={here === 'geometry'}>
                Geometry
              </Place>
              <Place to={limitsAddress(build.id)} here={here === 'limits'}>
                Limits
              </Place>
            </>
          )}
          <Place to="/shelf" here={here === 'shelf'}>
            Shelf
          </Place>
          <Place to="/identify" here={here === 'identify'}>
            What is this?
          </Place>
        </nav>
        <ToggleButtonGroup
          aria-label="Units (Ctrl+U)"
          className="switch"
          selectionMode="single"
          disallowEmptySelection
          selectedKeys={[units]}
          onSelectionChange={(keys) => props.onUnits(keys.has('inch') ? 'inch' : 'metric')}
        >
          <ToggleButton id="inch" className="switch-part">
            inch
          </ToggleButton>
          <ToggleButton id="metric" className="switch-part">
            mm
          </ToggleButton>
        </ToggleButtonGroup>
        <div className="bench-rule" data-units={units} aria-hidden="true" />
      </header>
      <main id="desk" className="desk-main" tabIndex={-1}>
        {props.children}
      </main>
    </div>
  )
}

function Place(props: { readonly to: string; readonly here?: boolean; readonly children: ReactNode }) {
  return (
    <Link href={props.to} className="place" aria-current={props.here === true ? 'page' : undefined}>
      {props.children}
    </Link>
  )
}
