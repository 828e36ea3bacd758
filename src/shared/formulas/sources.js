const source = (s) => s
/** Publications that several cards rest on. A card with a source of its own keeps it beside the formula. */
export const geometry = source({ id: 'geometry', cites: 'Plane and solid geometry', mark: 'derived' })
export const mechanics = source({ id: 'mechanics', cites: 'Statics of rigid bodies', mark: 'derived' })
export const b1_1 = source({
  id: 'asme-b1.1',
  cites: 'ASME B1.1, Unified Inch Screw Threads, basic thread form and Appendix B',
  mark: 'memory',
  checked: 'reproduces the published rows of the UNC and UNF tables',
})
export const b1_1Rows = source({
  id: 'asme-b1.1-rows',
  cites: 'ASME B1.1, tables of UNC and UNF threads',
  mark: 'published',
  read: 'reproductions of the tables',
})
export const b1_13mRows = source({
  id: 'asme-b1.13m-rows',
  cites: 'ASME B1.13M, table of internal metric threads',
  mark: 'published',
  read: 'a reproduction of the table',
})
export const iso724 = source({
  id: 'iso-724',
  cites: 'ISO 724 and ISO 68-1, basic dimensions of the 60° thread form',
  mark: 'memory',
  checked: 'reproduces the published rows of ASME B1.13M and B1.1',
})
export const iso898 = source({
  id: 'iso-898-1',
  cites: 'ISO 898-1, 9.1.6.1, nominal stress area',
  mark: 'memory',
  checked: 'reproduces the published stress-area and proof-load tables',
})
export const iso898Rows = source({
  id: 'iso-898-1-rows',
  cites: 'ISO 898-1, stress areas and proof loads',
  mark: 'published',
  read: 'reproductions of the tables',
})
export const iso228 = source({
  id: 'iso-228-1',
  cites: 'ISO 228-1 and ISO 7-1, 55° thread form',
  mark: 'memory',
  checked: 'reproduces the published rows of G and R threads',
})
export const iso228Rows = source({
  id: 'iso-228-1-rows',
  cites: 'ISO 228-1 and ISO 7-1, table of pipe threads',
  mark: 'published',
  read: "a reproduction, and Mechanical Engineer's Pocket Book, 4.1.38",
})
export const b1_20_1 = source({
  id: 'asme-b1.20.1',
  cites: 'ASME B1.20.1, American National Standard taper pipe thread (NPT), basic dimensions',
  mark: 'memory',
  checked: 'reproduces the published rows of Table 2 to 0.000 02 in',
})
export const b1_20_1Rows = source({
  id: 'asme-b1.20.1-rows',
  cites: 'ASME B1.20.1, Table 2',
  mark: 'published',
  read: 'two reproductions of the table',
})
export const lookAlikes = source({
  id: 'look-alike-threads',
  cites: 'Arithmetic on the nominal sizes of ASME B1.1, ISO 261 and ISO 228-1',
  mark: 'derived',
})
export const cylinderPage = source({
  id: 'fluid-power-cylinder-page',
  cites: 'Fluid-power data book, page of cylinder formulas, with worked figures (pi taken as 3.14)',
  mark: 'published',
})
export const cylinderTable = source({
  id: 'cylinder-push-table',
  cites: 'Technical page of a cylinder maker, table of push forces, metric bores',
  mark: 'published',
})
export const sizingSheet = source({
  id: 'hydrostatic-steering-sheet',
  cites: 'Sizing sheets for hydrostatic steering (three independent ones): kingpin torque, cylinder force, effective lever',
  mark: 'published',
})
export const gum = source({
  id: 'jcgm-100',
  cites: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement (GUM): 4.2.3, 4.3.7, 5.1.2, 6.2.1 and F.2.2.1',
  mark: 'memory',
})
export const surveyGeometry = source({
  id: 'travel-survey',
  cites: 'Geometry of the travel survey: marks on the tie rod against a straight edge on the axle',
  mark: 'derived',
})
export const arithmetic = source({ id: 'arithmetic', cites: 'Arithmetic on round figures', mark: 'derived' })
export const fluidMechanics = source({
  id: 'white-fluid-mechanics',
  cites: 'White, Fluid Mechanics, Examples 6.6 and 6.7',
  mark: 'published',
  read: 'a course copy',
})
export const lineVelocities = source({
  id: 'line-velocities',
  cites: 'Fluid-power tip on line sizes, table of velocities',
  mark: 'published',
  read: 'web copy',
})
export const mechanicsOfMaterials = source({
  id: 'gere-goodno',
  cites: 'Gere and Goodno, Mechanics of Materials, 7th edition, chapter 11',
  mark: 'published',
  read: 'copies of published solutions',
})
export const machineElements = source({
  id: 'mott',
  cites: 'Mott, Machine Elements in Mechanical Design, chapter 6',
  mark: 'published',
  read: 'copies of published solutions',
})
export const faires = source({
  id: 'faires-334',
  cites: 'Faires, Design of Machine Elements, Problem 334',
  mark: 'published',
  read: 'a solution set',
})
export const chassis = source({
  id: 'barton-fieldhouse',
  cites: 'Barton and Fieldhouse, Automotive Chassis Engineering, chapter 2 (pp. 82, 84, 90)',
  mark: 'published',
})
export const steeringQuestion = source({
  id: 'steering-question',
  cites: 'Published exam question: wheelbase 2.743 m, pivots 1.065 m, track 1.217 m, inner wheel 40°',
  mark: 'published',
})
export const tubeRows = source({
  id: 'tube-rows',
  cites: 'Arithmetic on tube sizes, E = 29 000 000 psi, 48 in between joints',
  mark: 'derived',
})
