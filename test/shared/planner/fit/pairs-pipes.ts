import { FITS, FITS_IF, NO, pairsOf, type Row, WRONG } from './pair.ts'

/**
 * Pipe threads. NPT: ASME B1.20.1 (E0 at the tip, E1 at the mouth); R: ISO 7-1, pitch diameter of the gauge plane less a sixteenth
 * of the gauge length at the tip; G, Rc, Rp: ISO 228-1 and ISO 7-1. All pitch diameters in mm.
 */
const AMERICAN: readonly Row[] = [
  ['3/8 NPT male', '3/8 NPT female', FITS_IF, 'seals on its flanks with sealant (ASME B1.20.1)'],
  ['1/8-27 NPT male', '1/8 NPT female', FITS_IF, 'the same with the threads per inch said'],
  ['NPT 1/2 male', '1/2-14 NPT female', FITS_IF, 'one size in two spellings'],
  ['1/4 MNPT', '1/4 FNPT', FITS_IF, 'M for male, F for female (trade usage)'],
  ['3/8 NPTF male', '3/8 NPTF female', FITS, 'dryseal on dryseal seals by its flanks (ASME B1.20.3)'],
  ['1/2 NPTF male', '1/2 NPT female', FITS_IF, 'dryseal seals dry only against dryseal'],
  ['1/2 NPT male', '1/2 NPTF female', FITS_IF, 'dryseal seals dry only against dryseal'],
  ['1/4 NPT male', '3/8 NPT female', NO, 'drops in'],
  ['3/8 NPT male', '1/4 NPT female', NO, 'does not start'],
  ['1/2 NPT male', '3/8 NPTF female', NO, 'does not start'],
  ['3/4 NPT male', '1/2 NPT female', NO, 'does not start, although both are 14 per inch'],
  ['1/4 NPTF male', '1/8 NPTF female', NO, 'does not start'],
  ['1/16 NPT male', '1/8 NPT female', NO, 'drops in, although both are 27 per inch'],
]

const BRITISH: readonly Row[] = [
  ['R 1/4', 'Rc 1/4', FITS_IF, 'taper in taper with sealant (ISO 7-1)'],
  ['R 1/4', 'Rp 1/4', FITS_IF, 'taper in parallel with sealant, what Rp is for (ISO 7-1)'],
  ['R 1/2 male', 'Rc1/2 female', FITS_IF, 'taper in taper with sealant'],
  ['3/8 BSPT male', 'Rc 3/8', FITS_IF, 'BSPT male is R'],
  ['3/8 BSPT male', '3/8 BSPT female', FITS_IF, 'BSPT female is Rc'],
  ['R 3/4', 'Rp 3/4', FITS_IF, 'taper in parallel with sealant'],
  ['R 1/4', 'G 1/4 female', WRONG, 'jams in the mouth and weeps: Rp, not G, is made for R'],
  ['G 1/4 male', 'Rp 1/4', WRONG, 'screws in, and neither flanks nor a face seal'],
  ['G 1/4 male', 'Rc 1/4', NO, 'the parallel male binds in the narrowing hole'],
  ['G 1/2 A male', 'Rc 1/2', NO, 'the parallel male binds in the narrowing hole'],
  ['R 1/4', 'Rc 3/8', NO, 'two sizes'],
  ['R 3/8', 'Rp 1/4', NO, 'two sizes, although both are 19 per inch'],
  ['G 1/4 A male', 'G 1/4 female', FITS_IF, 'parallel: the seal is a washer on the face (ISO 228-1)'],
  ['1/4 BSPP male', 'G1/4 female', FITS_IF, 'BSPP is G'],
  ['G 3/8 A', 'G 3/8 female', FITS_IF, 'class A is of the outside thread only (ISO 228-1)'],
  ['G 5/8 male', 'G 5/8 female', FITS_IF, 'the same thread, sealed on the face'],
  ['G 1/4 male', 'G 3/8 female', NO, 'drops in, although both are 19 per inch'],
  ['G 3/8 male', 'G 1/4 female', NO, 'does not start'],
  ['G 1/2 male', 'G 5/8 female', NO, 'both 14 per inch, 0.37 of overlap against tolerances of as much: drops in and wobbles'],
  ['G 3/4 male', 'G 1/2 female', NO, 'does not start'],
  ['G 1/4 LH male', 'G 1/4 female', NO, 'left in right'],
  ['R 1/4', 'R 1/4', NO, 'R is the outside thread: two males'],
  ['Rc 1/4', 'Rp 1/4', NO, 'two females'],
]

/** 60° against 55°. Where the pitches differ the thread binds; where they do not, it goes in and weeps. */
const ACROSS: readonly Row[] = [
  ['1/8 NPT male', 'G 1/8 female', NO, 'the tip, 9.233, is 0.09 larger than 9.147'],
  ['1/8 NPT male', 'Rc 1/8', NO, 'the tip is 0.09 larger'],
  ['1/4 NPT male', 'G 1/4 female', NO, '12.126 in 12.301, 18 against 19 per inch: binds in under two turns'],
  ['1/4 NPT male', 'Rc 1/4', NO, 'as in G: binds in under two turns'],
  ['3/8 NPT male', 'G 3/8 female', NO, '15.545 in 15.806: binds after two turns'],
  ['3/8 NPT male', 'Rp 3/8', NO, '15.545 in 15.806: binds after two turns'],
  ['1/2 NPT male', 'G 1/2 female', WRONG, 'both 14 per inch, 19.264 in 19.793: 4.7 turns, then weeps'],
  ['1/2 NPTF male', '1/2 BSPP female', WRONG, 'the same trap in other words'],
  ['1/2 NPT male', 'Rc 1/2', WRONG, 'both 14 per inch: 4.7 turns, flanks of 60° on 55°'],
  ['1/2 NPT male', 'Rp 1/2', WRONG, 'both 14 per inch: 4.7 turns'],
  ['3/4 NPT male', 'G 3/4 female', WRONG, 'both 14 per inch, 24.579 in 25.279: 6.2 turns, then weeps'],
  ['3/4 NPT male', 'Rc 3/4', WRONG, 'both 14 per inch'],
  ['G 1/2 male', '1/2 NPT female', NO, '19.793 against 19.772 at the mouth: binds at once'],
  ['G 3/4 male', '3/4 NPT female', NO, '25.279 is 0.16 larger than the mouth'],
  ['G 1/4 male', '1/4 NPT female', NO, '12.301 in 12.487: binds in a turn'],
  ['G 3/8 male', '3/8 NPT female', NO, '15.806 in 15.926: binds in under a turn'],
  ['G 1 male', '1 NPT female', NO, '31.770 is larger than the mouth of 31.461'],
  ['R 1/2', '1/2 NPT female', WRONG, 'both 14 per inch, tip 19.281 in a mouth of 19.772: 4.3 turns, then weeps'],
  ['R 3/4', '3/4 NPT female', WRONG, 'both 14 per inch, tip 24.685 in a mouth of 25.117: 3.8 turns, then weeps'],
  ['R 1/4', '1/4 NPT female', NO, 'tip 11.926 in a mouth of 12.487, 19 against 18 per inch: wedge and pitches bind it in 2.6 turns'],
  ['R 3/8', '3/8 NPT female', NO, 'tip 15.406 in a mouth of 15.926, 19 against 18 per inch: wedge and pitches bind it in 2.4 turns'],
  ['1/2 NPT male', 'G 3/8 female', NO, 'does not start'],
  ['1/4 NPT male', 'G 3/8 female', NO, 'drops in'],
  ['G 1/4 male', '3/8 NPT female', NO, 'drops in'],
]

const AGAINST_STRAIGHT: readonly Row[] = [
  ['1/8 NPT male', 'M10x1 female', NO, '9.233 in 9.351, pitches 0.06 apart: binds in about a turn'],
  ['M10x1 male', '1/8 NPT female', NO, '9.351 in 9.489: binds in a turn'],
  ['1/8 NPT male', '3/8-24 female', NO, '9.233 is larger than 8.838'],
  ['1/4 NPT male', '1/2-20 female', NO, '12.126 is larger than 11.875'],
  ['1/4 NPT male', 'M14x1.5 female', WRONG, '12.126 in 13.026 on half the thread: 4.5 turns'],
  ['M14x1.5 male', '1/4 NPT female', NO, '13.026 is larger than the mouth of 12.487'],
  ['1/4 NPT male', '9/16-18 female', WRONG, 'both 18 per inch, 12.126 in 13.371 on a third of the thread: never tight'],
  ['3/8 NPT male', '11/16-18 female', WRONG, 'both 18 per inch, 15.545 in 16.546: never tight'],
  ['3/8 NPT male', '5/8-18 female', NO, '15.545 is larger than 14.958'],
  ['3/8 NPT male', 'M16x1.5 female', NO, '15.545 is larger than 15.026'],
  ['1/2 NPT male', 'M20x1.5 female', NO, '19.264 is larger than 19.026'],
  ['9/16-18 male', '3/8 NPT female', NO, 'drops in, although both are 18 per inch'],
  ['5/8-18 male', '3/8 NPT female', WRONG, 'both 18 per inch, 14.958 in a mouth of 15.926 on half the thread'],
  ['7/8-14 male', '1/2 NPT female', NO, '21.047 is larger than the mouth of 19.772'],
  ['7/8-14 male', '3/4 NPT female', NO, 'drops in, although both are 14 per inch'],
  ['R 1/4', 'M14x1.5 female', WRONG, 'tip 11.926 in 13.026 on a quarter of the thread: 3.4 turns'],
  ['M18x1.5 male', '3/8 NPT female', NO, '17.026 is larger than the mouth of 15.926'],
  ['3/4-16 male', 'Rc 1/2', NO, '19.05 in a hole of 18.6: less overlap than the tolerances'],
  ['1/2 NPT male', '1/2-13 female', NO, 'pipe size is not bolt size: 21 against 12.7'],
  ['3/8 NPT male', '3/8-16 female', NO, 'pipe size is not bolt size: 17 against 9.5'],
]

export const PIPE_PAIRS = pairsOf([...AMERICAN, ...BRITISH, ...ACROSS, ...AGAINST_STRAIGHT])
