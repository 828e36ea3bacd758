/** What must be read before any work; never folded away. */
export function SafetyNote() {
  return (
    <section className="safety" aria-labelledby="safety">
      <h2 id="safety">Before you touch the vehicle</h2>
      <p>
        <strong>Steering failure kills.</strong> This program helps you check; it does not inspect. A licensed mechanic or engineer has the
        last word, and local rules decide whether the vehicle may go on the road.
      </p>
      <ul>
        <li>The vehicle stands on stands, never on a jack.</li>
        <li>Oil under pressure goes through skin. A pinhole wound is an emergency, however small it looks.</li>
        <li>A cotter pin is used once. A castle nut is never backed off to meet its hole.</li>
        <li>Steering parts are welded by a qualified welder, then inspected.</li>
        <li>What a part’s maker prescribes goes before anything computed here.</li>
        <li>A mechanical link from hand wheel to road wheel is taken for granted. Steering without one is outside this program.</li>
      </ul>
    </section>
  )
}
