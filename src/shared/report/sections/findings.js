/** What stops the build, by itself, so that nobody has to look for it. */
export function stopsSection(findings) {
  const items = findings.filter((f) => f.severity === 'stops')
  return {
    id: 'stops',
    heading: 'What stops the build',
    blocks: [
      items.length > 0
        ? { kind: 'findings', items }
        : {
            kind: 'paragraph',
            text: 'Nothing was found that stops this build. That is no proof that nothing does: what was not measured or not entered was not checked.',
          },
    ],
  }
}
/** What a person must look at and decide, then what is for information; null where there is neither. */
export function lookSection(findings) {
  const items = findings.filter((f) => f.severity !== 'stops')
  return items.length === 0 ? null : { id: 'look', heading: 'What to look at', blocks: [{ kind: 'findings', items }] }
}
