import type { Source } from '../../standards/source.ts'

/** Where the rules of fit come from. */
export const FROM = {
  handOfThread: {
    id: 'thread-hand',
    cites: 'Definition of the hand of a screw thread: ISO 5408 (terms for screw threads)',
    mark: 'memory',
  },
  threadForm: { id: 'thread-form', cites: 'Basic profiles: ISO 68-1 / ASME B1.1 (60°), ISO 228-1 / ISO 7-1 (55°)', mark: 'memory' },
  lookAlike: {
    id: 'look-alike',
    cites: 'Worked from the basic profiles: play of the flanks against the drift of the pitches',
    mark: 'derived',
  },
  engagement: {
    id: 'engagement',
    cites: 'Common practice, no published source: 1 diameter in steel, 1.5 in aluminium or cast iron',
    mark: 'practice',
  },
  pipeSealant: {
    id: 'pipe-sealant',
    cites: 'ASME B1.20.1 (NPT needs sealant), ASME B1.20.3 (dryseal only NPTF on NPTF)',
    mark: 'published',
    read: 'a fittings guideline, appendix on pipe threads',
  },
  britishPipe: {
    id: 'iso-7-1',
    cites: 'ISO 7-1: R (taper outside) goes with Rc or Rp; ISO 228-1 (G) does not seal on its threads',
    mark: 'memory',
  },
  pipeMix: { id: 'pipe-mix', cites: 'NPT against G and R: pitch diameters at the hand-tight plane compared', mark: 'derived' },
  flare37: {
    id: 'sae-j514',
    cites: 'SAE J514 / ISO 8434-2: metal cone, 37° half angle',
    mark: 'published',
    read: 'front matter and a thread page',
  },
  flare45: {
    id: 'sae-j512',
    cites: 'SAE J512: 45° flare; inverted flare on a 42° seat',
    mark: 'published',
    read: 'abstract and a thread page',
  },
  oRingBoss: {
    id: 'sae-j1926',
    cites: 'SAE J1926-1 / ISO 11926-1: O-ring in the chamfer of the port',
    mark: 'published',
    read: 'summaries',
  },
  faceSeal: { id: 'sae-j1453', cites: 'SAE J1453 / ISO 8434-3: O-ring in the flat face', mark: 'published', read: 'front matter' },
  metricPort: {
    id: 'iso-6149',
    cites: 'ISO 6149-1: O-ring in the chamfer of the port, metric thread',
    mark: 'published',
    read: 'size list',
  },
  flatFace: {
    id: 'iso-9974-1179',
    cites: 'ISO 9974 and ISO 1179: washer, profile ring or bonded seal on a flat face',
    mark: 'published',
    read: 'a sealing-washer article',
  },
  sealMethods: {
    id: 'seal-methods',
    cites: 'Follows from the two sealing methods: where the one has no counterpart, nothing seals',
    mark: 'derived',
  },
  cone24: { id: 'iso-8434-1', cites: 'ISO 8434-1: 24° cone, by tube and series (light, heavy)', mark: 'memory' },
  cone60: { id: 'iso-8434-6', cites: 'ISO 8434-6: 60° cone on a G thread', mark: 'memory' },
  tubeORing: {
    id: 'tube-o-ring',
    cites: 'Steering-gear tube nut with an O-ring on the tube nose: common practice, no published source',
    mark: 'practice',
  },
  banjo: { id: 'banjo', cites: 'Banjo eye with a crush washer on both sides (DIN 7603 washers): common practice', mark: 'practice' },
  taperMatch: { id: 'taper-match', cites: 'Angle mismatch on diameter over the contact length: L (k1 - k2)', mark: 'derived' },
  standOff: {
    id: 'stand-off',
    cites: 'Shop manual for passenger cars of 1942-47, steering section: 3/32 to 1/4 in between arm face and stud shoulder',
    mark: 'published',
    read: 'steering section of the manual',
  },
  cotter: {
    id: 'cotter',
    cites: 'Steering-parts bulletin on cotter pins; TM 10-3930-660-34 p. 12-14: tighten to the slot, never back off, new pin',
    mark: 'published',
  },
  clamp: {
    id: 'clamp',
    cites: 'Split clamp on a tube: bore within 0.1 mm under and 0.4 mm over the tube; common practice, no published source',
    mark: 'practice',
  },
  bolt: {
    id: 'bolt-in-bore',
    cites: 'Bolt in a rod-end or clevis bore: no more than 0.2 mm of play in steering; common practice, no published source',
    mark: 'practice',
  },
  clampSize: {
    id: 'clamp-size',
    cites:
      'A clamp that carries a ram is three quarters of the tube diameter wide or more, on a wall of a tenth of it or more; common practice, no published source',
    mark: 'practice',
  },
  tilt: {
    id: 'tilt',
    cites: "A rod end tilted further than it is made for bends its shank: the maker's misalignment angle is the limit",
    mark: 'practice',
  },
  spline: { id: 'spline', cites: 'A splined shaft fits by count and diameter', mark: 'practice' },
  hose: {
    id: 'hose-on-barb',
    cites: 'A hose is pushed on a barb of its own nominal bore: common practice, no published source',
    mark: 'practice',
  },
  weld: { id: 'weld', cites: 'Welded steering parts by a qualified welder and inspected; local rules may forbid them', mark: 'practice' },
  kinds: { id: 'kinds', cites: 'Two kinds of end that have no way of holding each other', mark: 'derived' },
} as const satisfies Record<string, Source>
