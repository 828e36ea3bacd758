import type { FormulaCard } from './card.ts'
import { boltJointConstant, boltPreload, boltPreloadStress, boltProofLoad, boltServiceStress, boltTorque } from './fasteners/bolt.ts'
import { fluidBottles, fluidToBuy, hoseContent } from './hydraulics/fluid.ts'
import {
  hydraulicPower,
  ramAnnulusArea,
  ramAreaRatio,
  ramCapArea,
  ramEffectiveLever,
  ramFlowForTime,
  ramForce,
  ramForceWithEfficiency,
  ramPressure,
  ramRodVolume,
  ramSpeed,
  ramVolume,
} from './hydraulics/ram.ts'
import { surveyOffCentre, surveyStroke, surveyTotal, surveyTravel } from './survey/survey.ts'
import {
  surveyCombinedUncertainty,
  surveyExpandedUncertainty,
  surveyRepeatability,
  surveyResolutionUncertainty,
} from './survey/uncertainty.ts'
import {
  taperDiameterAt,
  taperHalfAngle,
  taperIncludedAngle,
  taperMismatchGap,
  taperRatioFromAngle,
  taperRatioFromDiameters,
  taperStandOffShift,
} from './tapers/taper.ts'
import {
  threadMinorExternal60,
  threadMinorInternal60,
  threadPitch,
  threadPitchDiameter55,
  threadPitchDiameter60,
  threadStressAreaFromDiameters,
} from './threads/diameters.ts'
import { threadPitchMismatch, threadTurnsToBind } from './threads/mismatch.ts'
import { threadNptE0, threadNptE1 } from './threads/npt.ts'
import { threadStressAreaInch, threadStressAreaInchStrong, threadStressAreaMetric } from './threads/stress-area.ts'

/** Every card of the house, in the order of their ids. */
export const FORMULAS: readonly FormulaCard[] = [
  boltJointConstant,
  boltPreload,
  boltPreloadStress,
  boltProofLoad,
  boltServiceStress,
  boltTorque,
  fluidBottles,
  fluidToBuy,
  hoseContent,
  hydraulicPower,
  ramAnnulusArea,
  ramAreaRatio,
  ramCapArea,
  ramEffectiveLever,
  ramFlowForTime,
  ramForce,
  ramForceWithEfficiency,
  ramPressure,
  ramRodVolume,
  ramSpeed,
  ramVolume,
  surveyCombinedUncertainty,
  surveyExpandedUncertainty,
  surveyOffCentre,
  surveyRepeatability,
  surveyResolutionUncertainty,
  surveyStroke,
  surveyTotal,
  surveyTravel,
  taperDiameterAt,
  taperHalfAngle,
  taperIncludedAngle,
  taperMismatchGap,
  taperRatioFromAngle,
  taperRatioFromDiameters,
  taperStandOffShift,
  threadMinorExternal60,
  threadMinorInternal60,
  threadNptE0,
  threadNptE1,
  threadPitch,
  threadPitchDiameter55,
  threadPitchDiameter60,
  threadPitchMismatch,
  threadStressAreaFromDiameters,
  threadStressAreaInch,
  threadStressAreaInchStrong,
  threadStressAreaMetric,
  threadTurnsToBind,
]

/** The card with this id, or undefined. */
export const findFormula = (id: string): FormulaCard | undefined => FORMULAS.find((card) => card.id === id)
