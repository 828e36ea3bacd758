import { Route, Switch } from 'wouter'
import { Build } from '../screens/Build.tsx'
import { Lost } from '../screens/Lost.tsx'
import { Start } from '../screens/Start.tsx'

/** Which screen an address shows. A build starts anew when another one is opened (`key`). */
export function Screens() {
  return (
    <Switch>
      <Route path="/">
        <Start />
      </Route>
      <Route path="/build/:id/:section?">{({ id, section }) => <Build key={id} id={id} section={section ?? null} />}</Route>
      <Route>
        <Lost />
      </Route>
    </Switch>
  )
}
