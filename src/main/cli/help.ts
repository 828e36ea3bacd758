export const HELP = `Steerwright plans, checks and records a steering upgrade on a solid-front-axle vehicle.

  plan FILE [--json] [--workings] [--units inch|metric]
                                               plan a build: what stops it, numbers, fit, parts, steps
  sheet FILE -o OUT.pdf [--paper a4|letter] [--units inch|metric] [--workings]
                                               print the shop sheet
  fit "END" "END" [--json]                     does this end go on that one?
  across "END" "END" [--shelf FILE] [--json]   what joins these two ends?
  identify od=22.1mm pitch=1.81mm [--json]     what can this be? also id=, tpi=, taper=, seal=; d1= d2= length=; tube
  formula [ID] [name=quantity ...] [--json]    list the formulas, show one, or evaluate it
  table [NAME] [--json]                        list the standards' tables, or print one with its sources
  schema                                       JSON Schema of the build file
  demo [-o FILE] [--as bought|corrected]       the demo build as a file

FILE may be - for standard input. Ends are written as the trade writes them: "7/8-18 LH female",
"-6 37° flare male", "taper 1.5 in/ft stud, large 0.70 in", "clamp 1 1/4 in".

Exit code: 0 clean, 1 something stops the build (or the two ends do not fit), 2 bad input.
`
