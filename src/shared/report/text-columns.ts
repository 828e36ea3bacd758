/** Text broken into lines of at most `width` characters, at spaces where there are any, inside a word where it is too long. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/\s+/).filter((w) => w !== '')) {
    let rest = word
    if (line !== '' && line.length + 1 + rest.length <= width) {
      line = `${line} ${rest}`
      continue
    }
    if (line !== '') lines.push(line)
    while (rest.length > width) {
      lines.push(rest.slice(0, width))
      rest = rest.slice(width)
    }
    line = rest
  }
  if (line !== '' || lines.length === 0) lines.push(line)
  return lines
}

/** Wrapped text whose first line starts with `lead` and whose further lines hang under it. */
export function fill(lead: string, text: string, width: number): string[] {
  return wrap(text, width - lead.length).map((line, i) => (i === 0 ? lead : ' '.repeat(lead.length)) + line)
}

export const padTo = (text: string, width: number, right: boolean): string => (right ? text.padStart(width) : text.padEnd(width))
