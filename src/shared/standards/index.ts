import { BOLT_GRADES } from './bolts/grades.ts'
import { PROOF_LOADS } from './bolts/proof-loads.ts'
import { PROPERTY_CLASSES } from './bolts/property-classes.ts'
import { CASTLE_NUTS_INCH, CASTLE_NUTS_METRIC } from './fasteners/castle-nuts.ts'
import { COTTER_HOLES_INCH, COTTER_HOLES_METRIC } from './fasteners/cotter-holes.ts'
import { JAM_NUTS_INCH, JAM_NUTS_METRIC } from './fasteners/jam-nuts.ts'
import { STEERING_FLUIDS, VISCOSITY_GRADES } from './fluids/viscosity.ts'
import { HOSE_BEND_RADII } from './hoses/bend-radius.ts'
import { HOSE_DASH_SIZES } from './hoses/j517-dash.ts'
import { HOSE_RATINGS, STEERING_HOSE_STANDARDS } from './hoses/ratings.ts'
import { TUBE_PRESSURES } from './lines/tube-pressure.ts'
import { LINE_VELOCITIES } from './lines/velocity.ts'
import { TUBE_MATERIALS } from './materials/tubes.ts'
import { BANJO_BOLTS } from './ports/banjo.ts'
import { BSP_CONES, ISO_1179_PORTS } from './ports/bsp-ports.ts'
import { DASH_PORTS } from './ports/dash.ts'
import { PORT_FAMILY_FACTS } from './ports/families.ts'
import { CONE_24, ISO_6149_PORTS, ISO_9974_PORTS } from './ports/metric-ports.ts'
import { TUBE_O_RING_NUTS } from './ports/tube-o-ring.ts'
import { RAM_BORES, RAM_PAIRS, RAM_RODS, RAM_STROKES } from './ram/sizes.ts'
import { CLEVIS_BORES, ROD_ENDS } from './rod-ends/bores.ts'
import { INPUT_SHAFT_SPLINES } from './splines/input-shafts.ts'
import { SECTOR_SHAFT_SPLINES } from './splines/sector-shafts.ts'
import { FREE_PLAY_LIMITS, LINKAGE_PLAY_LIMITS } from './steering/free-play.ts'
import type { StandardTable } from './table.ts'
import { TAPERS } from './tapers.ts'
import { METRIC_THREADS } from './threads/metric.ts'
import { METRIC_SPECIAL_THREADS } from './threads/metric-special.ts'
import { G_R_THREADS, NPT_THREADS } from './threads/pipe.ts'
import { UNIFIED_THREADS } from './threads/unified.ts'
import { INCH_BOLT_TORQUES, METRIC_BOLT_TORQUES } from './torque/bolt-torques.ts'
import { FACE_SEAL_TORQUES } from './torque/face-seal.ts'
import { FLARE_37_TORQUES } from './torque/flare-37.ts'
import { METRIC_STUD_TORQUES } from './torque/metric-studs.ts'
import { NUT_FACTORS } from './torque/nut-factors.ts'
import { O_RING_BOSS_TORQUES } from './torque/o-ring-boss.ts'
import { DOM_SIZES } from './tubes/dom-sizes.ts'
import { TIE_ROD_TUBES } from './tubes/tie-rod-tubes.ts'
import { LOAD_INDICES } from './tyres/load-index.ts'

/** Every table of the room, sorted by name. */
export const TABLES: readonly StandardTable[] = [
  TAPERS,
  BANJO_BOLTS,
  BOLT_GRADES,
  INCH_BOLT_TORQUES,
  METRIC_BOLT_TORQUES,
  BSP_CONES,
  CASTLE_NUTS_INCH,
  CASTLE_NUTS_METRIC,
  CLEVIS_BORES,
  CONE_24,
  COTTER_HOLES_INCH,
  COTTER_HOLES_METRIC,
  DASH_PORTS,
  DOM_SIZES,
  FACE_SEAL_TORQUES,
  FLARE_37_TORQUES,
  G_R_THREADS,
  HOSE_BEND_RADII,
  HOSE_DASH_SIZES,
  HOSE_RATINGS,
  INPUT_SHAFT_SPLINES,
  ISO_1179_PORTS,
  ISO_6149_PORTS,
  ISO_9974_PORTS,
  JAM_NUTS_INCH,
  JAM_NUTS_METRIC,
  LINE_VELOCITIES,
  LOAD_INDICES,
  METRIC_SPECIAL_THREADS,
  METRIC_STUD_TORQUES,
  METRIC_THREADS,
  NPT_THREADS,
  NUT_FACTORS,
  O_RING_BOSS_TORQUES,
  PORT_FAMILY_FACTS,
  PROOF_LOADS,
  PROPERTY_CLASSES,
  RAM_BORES,
  RAM_PAIRS,
  RAM_RODS,
  RAM_STROKES,
  ROD_ENDS,
  SECTOR_SHAFT_SPLINES,
  STEERING_FLUIDS,
  FREE_PLAY_LIMITS,
  STEERING_HOSE_STANDARDS,
  LINKAGE_PLAY_LIMITS,
  TIE_ROD_TUBES,
  TUBE_MATERIALS,
  TUBE_O_RING_NUTS,
  TUBE_PRESSURES,
  UNIFIED_THREADS,
  VISCOSITY_GRADES,
]
