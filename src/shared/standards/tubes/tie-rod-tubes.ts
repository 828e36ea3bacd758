import { defineTable } from '../table.ts'

export interface TieRodTubeRow {
  /** outside diameter and wall, in: "1.500x0.250" */
  readonly size: string
  readonly od_in: number
  readonly wall_in: number
  readonly id_in: number
  readonly area_in2: number
  readonly second_moment_in4: number
  readonly section_modulus_in3: number
  readonly radius_of_gyration_in: number
  readonly lb_per_ft: number
}

/** Tubes that tie rods and drag links are made of, with their section properties. */
export const TIE_ROD_TUBES = defineTable<TieRodTubeRow>({
  name: 'tie-rod-tubes',
  title: 'Tie-rod tubes',
  sources: [
    { id: 'tube-geometry', cites: 'plane geometry of a round tube; steel at 0.2836 lb/in3', mark: 'derived' },
    { id: 'tube-choice', cites: 'which sizes tie rods are made of: common practice, no published source', mark: 'practice' },
  ],
  key: 'size',
  columns: [
    { key: 'size', title: 'Outside diameter x wall', unit: 'in' },
    { key: 'od_in', title: 'Outside diameter', unit: 'in' },
    { key: 'wall_in', title: 'Wall', unit: 'in' },
    { key: 'id_in', title: 'Inside diameter', unit: 'in' },
    { key: 'area_in2', title: 'Metal area', unit: 'in²' },
    { key: 'second_moment_in4', title: 'Second moment of area', unit: 'in⁴' },
    { key: 'section_modulus_in3', title: 'Section modulus', unit: 'in³' },
    { key: 'radius_of_gyration_in', title: 'Radius of gyration', unit: 'in' },
    { key: 'lb_per_ft', title: 'Weight', unit: 'lb/ft' },
  ],
  rows: [
    {
      size: '1.250x0.188',
      od_in: 1.25,
      wall_in: 0.188,
      id_in: 0.874,
      area_in2: 0.6272,
      second_moment_in4: 0.0912,
      section_modulus_in3: 0.1459,
      radius_of_gyration_in: 0.3813,
      lb_per_ft: 2.13,
    },
    {
      size: '1.250x0.250',
      od_in: 1.25,
      wall_in: 0.25,
      id_in: 0.75,
      area_in2: 0.7854,
      second_moment_in4: 0.10431,
      section_modulus_in3: 0.1669,
      radius_of_gyration_in: 0.3644,
      lb_per_ft: 2.67,
    },
    {
      size: '1.375x0.250',
      od_in: 1.375,
      wall_in: 0.25,
      id_in: 0.875,
      area_in2: 0.8836,
      second_moment_in4: 0.14669,
      section_modulus_in3: 0.2134,
      radius_of_gyration_in: 0.4075,
      lb_per_ft: 3.01,
    },
    {
      size: '1.500x0.188',
      od_in: 1.5,
      wall_in: 0.188,
      id_in: 1.124,
      area_in2: 0.7749,
      second_moment_in4: 0.17016,
      section_modulus_in3: 0.2269,
      radius_of_gyration_in: 0.4686,
      lb_per_ft: 2.64,
    },
    {
      size: '1.500x0.250',
      od_in: 1.5,
      wall_in: 0.25,
      id_in: 1,
      area_in2: 0.9817,
      second_moment_in4: 0.19942,
      section_modulus_in3: 0.2659,
      radius_of_gyration_in: 0.4507,
      lb_per_ft: 3.34,
    },
    {
      size: '1.500x0.375',
      od_in: 1.5,
      wall_in: 0.375,
      id_in: 0.75,
      area_in2: 1.3254,
      second_moment_in4: 0.23297,
      section_modulus_in3: 0.3106,
      radius_of_gyration_in: 0.4193,
      lb_per_ft: 4.51,
    },
    {
      size: '1.750x0.250',
      od_in: 1.75,
      wall_in: 0.25,
      id_in: 1.25,
      area_in2: 1.1781,
      second_moment_in4: 0.34054,
      section_modulus_in3: 0.3892,
      radius_of_gyration_in: 0.5376,
      lb_per_ft: 4.01,
    },
    {
      size: '2.000x0.250',
      od_in: 2,
      wall_in: 0.25,
      id_in: 1.5,
      area_in2: 1.3744,
      second_moment_in4: 0.53689,
      section_modulus_in3: 0.5369,
      radius_of_gyration_in: 0.625,
      lb_per_ft: 4.68,
    },
  ],
})
