/** Symbols that the cards of the linkage share, and the sizes of their worked examples. */

export const planView = {
  id: 'linkage-plan-view',
  cites: 'Plan-view geometry of kingpins, arms and tie rod (circle and circle)',
  mark: 'derived',
  checked: 'a second program that solves the constraint equations by halving',
} as const

export const length = (meaning: string) => ({ meaning, dimension: 'length' }) as const
export const spacing = { meaning: 'distance between the kingpin axes at the height of the rod', dimension: 'length', above: 0 } as const
export const armOf = (side: string) => ({ meaning: `length of the ${side} arm in plan`, dimension: 'length', above: 0 }) as const
export const leanOf = (side: string) =>
  ({ meaning: `lean of the ${side} arm inward, wheel straight`, dimension: 'angle', min: -1.2, max: 1.2 }) as const
export const angleOf = (side: string) =>
  ({ meaning: `angle of the ${side} wheel, left turn positive`, dimension: 'angle', min: -1.2, max: 1.2 }) as const
export const rodLength = { meaning: 'length of the tie rod, joint to joint', dimension: 'length', above: 0 } as const
export const toe = { meaning: 'total static toe, toe-in positive', dimension: 'angle', min: -0.35, max: 0.35 } as const
export const k = { meaning: 'where the rod lies: 1 behind the axle, -1 ahead of it', dimension: 'ratio', min: -1, max: 1 } as const
export const middle = length('middle of the rod, to the right of the middle between the kingpins')
export const tilt = { meaning: 'tilt of the rod in plan', dimension: 'angle', min: -1.5, max: 1.5 } as const

export const EQUAL = { w: '1.25 m', r_L: '0.15 m', r_R: '0.15 m', beta_L: '9.594068°', beta_R: '9.594068°' } as const
export const UNEQUAL = { w: '1.25 m', r_L: '0.15 m', r_R: '0.17 m', beta_L: '9.594068°', beta_R: '6°' } as const
/** what stands beside an example that was worked out by the second program */
export const e1 = { because: 'as many figures as it is written with', source: planView } as const
