/** What the program does, for someone who opens it for the first time. */
export function Welcome() {
  return (
    <section className="welcome" aria-labelledby="welcome">
      <h2 id="welcome">From the first tape mark to the road test</h2>
      <p>
        Steerwright takes the parts and measurements of one steering upgrade and says what fits, what does not, and what nobody has measured
        yet. It works out travel, ram, forces, hoses and fluid, and shows the working behind every number. It prints the sheet that goes
        under the vehicle with you: parts, torques, steps and cautions.
      </p>
    </section>
  )
}
