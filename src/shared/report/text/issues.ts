import { DIMENSIONS, type Dimension } from '../../quantities/dimension.ts'
import { decimals, significant } from '../../quantities/print.ts'
import type { Fact, Issue } from '../../result/result.ts'
import { readingProblem } from './identify.ts'
import { pathText } from './places.ts'
import { FAMILY_WORDS } from './verdicts.ts'

const DIMENSION_WORDS: Readonly<Record<string, string>> = {
  ratio: 'a ratio',
  length: 'a length',
  volume: 'a volume',
  angle: 'an angle',
  force: 'a force',
  pressure: 'a pressure',
  torque: 'a torque',
  time: 'a time',
  flow: 'a flow',
  mass: 'a mass',
  area: 'an area',
  temperature: 'a temperature',
  speed: 'a speed',
}
const EXAMPLES: Readonly<Record<string, string>> = {
  ratio: '1:8, 1.5 in/ft or 25 %',
  length: '1 1/4 in or 31.75 mm',
  volume: '1.7 L or 32 fl oz',
  angle: '24°',
  force: '3200 lbf or 14 kN',
  pressure: '1500 psi or 103 bar',
  torque: '85 lbf·ft or 115 N·m',
  time: '2.5 h',
  flow: '2.4 gpm or 9 L/min',
  mass: '80 kg',
  area: '2.4 in²',
  temperature: '40 °C',
  speed: '2 m/s',
}

const TYPE_WORDS: Readonly<Record<string, string>> = {
  string: 'text in quotes',
  number: 'a number without quotes',
  int: 'a whole number without quotes',
  boolean: 'true, without quotes',
  array: 'a list in square brackets',
  object: 'a group in braces',
}
/** What the few keys with a form of their own want; every other such key is an id. */
const FORMS: Readonly<Record<string, string>> = {
  currency: 'three capital letters, such as USD',
  price: 'figures with a point and no sign of the currency, such as 42.50',
  a: "a part's id and the name of its end, such as tie-rod/left",
  b: "a part's id and the name of its end, such as tie-rod/left",
  id: 'small letters, figures and hyphens, such as tie-rod',
}

const dimension = (d: Fact | undefined): string => DIMENSION_WORDS[String(d)] ?? `a ${String(d)}`
const example = (d: Fact | undefined): string => EXAMPLES[String(d)] ?? 'a number with its unit'
const some = (list: Fact | undefined, most = 8): string => {
  const all = Array.isArray(list) ? (list as readonly string[]) : []
  return all.length > most ? `${all.slice(0, most).join(', ')} …` : all.join(', ')
}
const family = (f: Fact | undefined): string => FAMILY_WORDS[f as keyof typeof FAMILY_WORDS] ?? String(f)

/** An issue as a sentence, with its place. */
export function problemSentence(issue: Issue): { code: string; place: string; sentence: string } {
  return { code: issue.code, place: pathText(issue.path), sentence: sentenceFor(issue) }
}

function sentenceFor({ code, path, facts: f }: Issue): string {
  switch (code) {
    case 'quantity.empty':
      return `Nothing is written here; ${dimension(f.dimension)} is asked for, such as ${example(f.dimension)}.`
    case 'quantity.not_a_number':
      return `"${f.typed}" is not understood as ${dimension(f.dimension)}. Write it like ${example(f.dimension)}.`
    case 'quantity.no_unit':
      return `"${f.typed}" has no unit. Write it like ${example(f.dimension)}.`
    case 'quantity.unknown_unit':
      return `"${f.unit}" is not a unit of ${dimension(f.dimension)}. Write it like ${example(f.dimension)}.`
    case 'quantity.wrong_dimension':
      return `"${f.typed}" is ${dimension(f.got)}, but ${dimension(f.dimension)} is asked for.`
    case 'quantity.ambiguous_comma':
      return `"${f.typed}": the comma can be read in two ways. Write 1500 or 1.5.`
    case 'quantity.zero_denominator':
      return `"${f.typed}" divides by nothing.`
    case 'quantity.out_of_range':
      return `"${f.typed}" is outside what is possible here${range(f)}.`
    case 'quantity.too_long':
    case 'end.too_long':
      return `"${f.typed}…" is too long.`
    case 'linkage.beyond_reach':
      return `The wheels do not go so far to the ${f.side}.`
    case 'end.not_understood':
      return `"${f.typed}" is not understood as an end. Write it like "7/8-18 LH female", "-6 37° flare male" or "taper 1.5 in/ft stud, large 0.70 in".`
    case 'end.unknown_thread':
      return unknownThread(f)
    case 'end.unknown_size':
      return `"${f.said}" is not a size of the ${family(f.family)}. There are: ${some(f.sizes, 14)}.`
    case 'end.no_size':
      return `"${f.typed}" does not say what size of ${family(f.family)}.`
    case 'end.contradicts':
      return `"${f.typed}" says two things that do not go together: ${f.said} and ${f.is}.`
    case 'end.leftover':
      return `"${f.left}" in "${f.typed}" is not understood.`
    case 'end.angle_ambiguous':
      return `"${f.typed}": say whether the angle is the half angle or the included one, or give the taper as 1:8 or 1.5 in/ft.`
    case 'end.dash_without_family':
      return `"${f.typed}": a dash number alone does not say how it seals. Add 37° flare, 45° flare, O-ring boss, inverted flare or face seal.`
    case 'file.too_large':
      return 'The file is too large to be a build.'
    case 'file.not_json':
      return `This is not a build file (${f.says}). A build file comes from Export or from "cli demo -o FILE"; its form is in DEVELOPERS.md.`
    case 'file.not_an_object':
      return 'This is not a build file: it holds no object.'
    case 'file.other_format':
      return `This file says it is "${f.found}"; "${f.known}" is read here.`
    case 'file.newer':
      return `This file is of version ${f.found}, written by a newer program; this one reads version ${f.known}.`
    case 'file.unknown_key':
      return `"${f.key}" is not known here. Is it misspelt?`
    case 'file.missing':
      return `This is missing (${TYPE_WORDS[String(f.expected)] ?? f.expected}).`
    case 'file.wrong_type':
      return `This should be ${TYPE_WORDS[String(f.expected)] ?? `a ${f.expected}`}.`
    case 'file.not_allowed':
      return Array.isArray(f.allowed) && f.allowed.length > 0
        ? `"${f.found ?? ''}" is not one of: ${some(f.allowed, 24)}.`
        : 'This is not allowed here.'
    case 'file.wrong_form':
      return f.form === 'date'
        ? `"${f.found}" is not a day. Write it like 2026-11-25.`
        : `"${f.found}" has not the form asked for: ${FORMS[String(path.at(-1))] ?? FORMS.id}.`
    case 'file.too_small':
      return `This is too ${f.of === 'string' || f.of === 'array' ? 'short' : 'small'}; at least ${f.limit}.`
    case 'file.too_big':
      return `This is too ${f.of === 'string' || f.of === 'array' ? 'long' : 'large'}; at most ${f.limit}.`
    case 'text.not_kept':
    case 'database.text_not_kept':
      return 'This text holds a character that cannot be kept: half of a pair, or a zero. Type it again.'
    case 'reference.twice':
      return `The id "${f.id}" occurs twice.`
    case 'reference.end_twice':
      return `"${f.part}" has two ends named "${f.end}".`
    case 'reference.nothing_there':
      return `There is no ${f.kind} with the id "${f.id}".`
    case 'reference.no_such_end':
      return `The part "${f.part}" has no end named "${f.end}".`
    case 'reference.to_itself':
      return `"${f.id}" is joined to itself.`
    case 'formula.out_of_range':
      return `${f.symbol} is outside the range for which this formula holds${limits(f)}.`
    case 'formula.requires':
      return `This formula asks that ${f.says}.`
    case 'formula.no_value':
      return 'This formula has no answer for these values.'
    case 'formula.unknown':
      return `There is no formula "${f.id}". "formula" alone lists them${near(f)}`.replace(/([^?])$/, '$1.')
    case 'formula.missing_symbol':
      return `A value for ${f.symbol} (${f.meaning}) is missing.`
    case 'formula.unknown_symbol':
      return `"${f.symbol}" is not a symbol of this formula. It has: ${some(f.symbols, 20)}.`
    case 'table.unknown':
      return `There is no table "${f.name}". "table" alone lists them${near(f)}`.replace(/([^?])$/, '$1.')
    case 'cli.unknown_command':
      return `There is no command "${f.name}". There are: ${some(f.commands, 20)}.`
    case 'cli.usage':
      return `${f.says}. Use: ${f.usage}`
    case 'cli.not_allowed':
      return `${f.option} takes ${some(f.allowed)}, not "${f.found}".`
    case 'cli.cannot_read':
      return `"${f.file}" cannot be read${f.code === 'ENOENT' ? ': there is no such file' : f.code === 'EISDIR' ? ': it is a folder' : ''}.`
    case 'cli.cannot_write':
      return `"${f.file}" was not written: ${f.says}.`
    case 'build.exists':
      return `A build with the id "${f.id}" is there already.`
    case 'build.unknown':
      return `There is no build "${f.id}" in the database any more.`
    case 'build.changed_meanwhile':
      return `The build "${f.id}" was changed meanwhile, in another window perhaps: this change was made from revision ${f.basedOn}, and the stored one is ${f.revision === f.basedOn ? 'another of the same number' : `revision ${f.revision}`}. Nothing was overwritten.`
    case 'shelf.exists':
      return `A part with the id "${f.id}" is on the shelf already.`
    case 'csv.no_heading':
      return `The first row does not name the columns. Known are: ${some(f.columns, 40)}.`
    case 'csv.unknown_column':
      return `The column "${f.heading}" is not known. Known are: ${some(f.columns, 40)}.`
    case 'csv.column_twice':
      return `The column "${f.heading}" is there twice.`
    case 'csv.id_twice':
      return `The id "${f.id}" is in row ${f.before} already.`
    case 'csv.too_many_cells':
      return 'This row has more cells than there are columns.'
    case 'csv.quotes':
      return 'The quotes around a cell of this row do not close as they should.'
    case 'shelf.unknown':
      return `There is no part "${f.id}" on the shelf any more.`
    case 'database.newer':
      return `The database was written by a newer version of this program (schema ${f.found}; this one knows ${f.known}). It was left untouched.`
    case 'database.no_place':
      return 'The database of this version has no place for this, so nothing was saved. The file itself is as it was.'
    case 'database.not_ours':
      return 'The file that should be the database belongs to another program. It was left untouched.'
    case 'database.other_history':
      return 'The database was made by another version of this program that took another way. It was left untouched.'
    case 'database.migration_failed':
      return `The database could not be brought up to date (${f.step}: ${f.says}). It is as it was before.`
    case 'database.disk_failed':
      return 'The disk did not read or write as it should. Nothing more was changed. Look after your backups.'
    case 'database.damaged':
      return 'The database is damaged. It was left untouched; a backup can be put in its place.'
    case 'database.not_a_database':
      return 'The file that should be the database is something else. It was left untouched.'
    case 'database.read_only':
      return 'The database cannot be written to: the file or its folder is read-only. Nothing was changed.'
    case 'database.locked':
      return 'Another program holds the database. Close it and try again. Nothing was changed.'
    case 'database.full':
      return 'The disk is full. Nothing was lost; make room and try again.'
    case 'database.folder_unusable':
      return 'The data folder cannot be used. Choose another with STEERWRIGHT_DATA.'
    default:
      return readingProblem({ code, path, facts: f }) ?? `${code} ${JSON.stringify(f)}`
  }
}

/** The range of a formula's symbol, in base SI, as its card holds it. */
function limits({ min, max, dimension: d }: Issue['facts']): string {
  const unit = DIMENSIONS[d as Dimension]?.unit
  const figure = (v: number) => `${significant(v, 6)}${unit === undefined || unit === '1' ? '' : ` ${unit}`}`
  if (typeof min === 'number' && typeof max === 'number') return `: ${figure(min)} to ${figure(max)}`
  if (typeof min === 'number') return `: from ${figure(min)} up`
  return typeof max === 'number' ? `: up to ${figure(max)}` : ''
}

const near = ({ near: names }: Issue['facts']): string =>
  Array.isArray(names) && names.length > 0 ? `; did you mean ${(names as readonly string[]).join(', ')}?` : ''

function range(f: Issue['facts']): string {
  if (typeof f.min === 'number' && f.max === null) return f.excludesMin ? ' (it must be more than nothing)' : ''
  return ''
}

/** "M22x1.75 is not an ISO size": with what a person has probably measured instead. */
function unknownThread(f: Issue['facts']): string {
  const standard = f.family === 'metric' ? 'ISO 261' : f.family === 'unified' ? 'the Unified tables' : 'the pipe-thread tables'
  const pitch =
    typeof f.pitch === 'number' && typeof f.perInch === 'number'
      ? ` A pitch of ${decimals(f.pitch * 1000, 2)} mm is ${decimals(f.perInch, 1)} per inch.`
      : ''
  const near = some(f.near, 6)
  const others = some(f.others, 6)
  return `"${f.typed}" is not in ${standard}.${pitch}${near ? ` Look at: ${near}.` : ''}${!near && others ? ` This size has: ${others}.` : ''}`
}
