import { Route, Switch } from 'wouter'
import { Build } from '../screens/Build.tsx'
import { Geometry } from '../screens/geometry/Geometry.tsx'
import { Identify } from '../screens/identify/Identify.tsx'
import { Joints } from '../screens/joints/Joints.tsx'
import { Lost } from '../screens/Lost.tsx'
import { Limits } from '../screens/limits/Limits.tsx'
import { BuildPart } from '../screens/parts/BuildPart.tsx'
import { BuildParts } from '../screens/parts/BuildParts.tsx'
import { Start } from '../screens/Start.tsx'
import { Shelf } from '../screens/shelf/Shelf.tsx'
import { ShelfPart } from '../screens/shelf/ShelfPart.tsx'
import { Survey } from '../screens/survey/Survey.tsx'

/** Which screen an address shows. What is shown of a build or a part starts anew when another one is opened (`key`). */
export function Screens() {
  return (
    <Switch>
      <Route path="/">
        <Start />
      </Route>
      <Route path="/shelf">
        <Shelf />
      </Route>
      <Route path="/shelf/new">
        <ShelfPart key="new" id={null} />
      </Route>
      <Route path="/shelf/part/:part">{({ part }) => <ShelfPart key={`part ${part}`} id={part} />}</Route>
      <Route path="/identify">
        <Identify />
      </Route>
      <Route path="/build/:id/edit/parts">{({ id }) => <BuildParts key={id} id={id} />}</Route>
      <Route path="/build/:id/edit/parts/new">{({ id }) => <BuildPart key={`${id} new`} id={id} part={null} />}</Route>
      <Route path="/build/:id/edit/parts/:part">{({ id, part }) => <BuildPart key={`${id}/${part}`} id={id} part={part} />}</Route>
      <Route path="/build/:id/edit/joints">{({ id }) => <Joints key={id} id={id} />}</Route>
      <Route path="/build/:id/edit/survey">{({ id }) => <Survey key={id} id={id} />}</Route>
      <Route path="/build/:id/edit/limits">{({ id }) => <Limits key={id} id={id} />}</Route>
      <Route path="/build/:id/edit/geometry/:field?">{({ id, field }) => <Geometry key={id} id={id} field={field ?? null} />}</Route>
      <Route path="/build/:id/:section?">{({ id, section }) => <Build key={id} id={id} section={section ?? null} />}</Route>
      <Route>
        <Lost />
      </Route>
    </Switch>
  )
}
