/** What stands beside the work where it can hurt someone. */
const CAUTIONS: Readonly<Record<string, string>> = {
  stands:
    'Raise and at once support the vehicle on rated stands on firm, level ground. Nobody works under a load held by a jack alone. Shake it before you go under.',
  injection:
    'Oil under pressure goes through skin and gloves. Engine off, wheel turned to and fro to let the pressure go before any line is opened. Search for leaks with card, never with a hand. A pinprick wound from oil is an emergency: to hospital at once, and say what it is.',
  'hot oil': 'Steering oil and pump get hot enough to burn. Let them cool; wear eye protection.',
  weld: 'Steering and axle brackets are welded by a qualified welder and inspected. Some places forbid any weld on steering parts: ask first.',
  fire: 'Battery disconnected, oil and fuel lines away or shielded, extinguisher at hand, and a look back after half an hour.',
  brake: 'An opened brake line is closed, bled and tested before the vehicle moves.',
  'maker first': "The maker's torque and instructions go before any value printed here.",
  'taper dry': 'Tapers clean and dry, no grease and no paint. Check the bearing with marking blue.',
  'one link': 'Hand wheel and road wheels stay mechanically linked at all times. Steering without such a link is outside this program.',
  pinch: 'Wheels, links and ram move with great force. Hands and face clear of them; one person gives the word.',
  cotter: 'New cotter pin every time. Tighten on to the next slot, never back a castle nut off to meet a hole.',
  'road law': 'Local rules decide whether assisted or welded steering parts may be used on the road, and who must inspect them.',
  mechanic: 'Have a licensed mechanic look over the steering before it meets traffic. If anything feels wrong, stop.',
}

/** A caution in full, as it stands once on every sheet. */
export const cautionText = (code: string): string => CAUTIONS[code] ?? code

/** The same in one breath, as it stands beside each step where it bites. */
const SHORT: Readonly<Record<string, string>> = {
  stands: 'Rated stands on firm ground, shaken; never under a load on a jack alone.',
  injection: 'Oil under pressure goes through skin and gloves: pressure off first, card for leaks, hospital at once for a pinprick.',
  'hot oil': 'Hot oil burns: let it cool, eye protection on.',
  weld: 'Qualified welder, inspected; ask first whether welds on steering parts are allowed.',
  fire: 'Battery off, oil and fuel lines shielded, extinguisher at hand, look back after half an hour.',
  brake: 'An opened brake line is closed, bled and tested before the vehicle moves.',
  'maker first': "The maker's torque and instructions go first.",
  'taper dry': 'Tapers clean and dry; check with marking blue.',
  'one link': 'Hand wheel and road wheels stay mechanically linked.',
  pinch: 'Hands and face clear: wheels, links and ram move with great force. One person gives the word.',
  cotter: 'New cotter pin; on to the next slot, never back.',
  'road law': 'Local rules decide whether this may be used on the road.',
  mechanic: 'Have a licensed mechanic look it over first. If anything feels wrong, stop.',
}
export const shortCaution = (code: string): string => SHORT[code] ?? cautionText(code)

/** Stand on every sheet, whatever is built. */
export const GENERAL_CAUTIONS: readonly string[] = [
  'Steering failure kills. This sheet helps to plan and check; it does not certify. A licensed mechanic or engineer has the last word.',
  CAUTIONS.stands as string,
  CAUTIONS.injection as string,
  CAUTIONS.cotter as string,
  CAUTIONS.weld as string,
  CAUTIONS['maker first'] as string,
  CAUTIONS['one link'] as string,
  CAUTIONS['road law'] as string,
]
