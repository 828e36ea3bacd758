/** A value to stand in the place of a symbol; one with a unit is bracketed where an operator would run into it. */
export type Values = Readonly<Record<string, string>>

type Token = { readonly kind: 'name' | 'number' | 'operator' | 'open' | 'close' | 'comma'; readonly text: string }

const TOKEN = /\s*(?:([A-Za-z_][A-Za-z0-9_]*)|(\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|\.\d+)|(<=|>=|==|!=|[-+*/^=<>?:])|(\()|(\))|(,))/y

const GREEK: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  epsilon: 'ε',
  zeta: 'ζ',
  eta: 'η',
  theta: 'θ',
  kappa: 'κ',
  lambda: 'λ',
  mu: 'μ',
  nu: 'ν',
  xi: 'ξ',
  pi: 'π',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  chi: 'χ',
  psi: 'ψ',
  omega: 'ω',
  Delta: 'Δ',
  Sigma: 'Σ',
  Omega: 'Ω',
}
const OPERATORS: Readonly<Record<string, string>> = {
  '*': '·',
  '/': ' / ',
  '+': ' + ',
  '-': ' − ',
  '=': ' = ',
  '==': ' = ',
  '<': ' < ',
  '>': ' > ',
  '<=': ' ≤ ',
  '>=': ' ≥ ',
  '!=': ' ≠ ',
  '?': ' then ',
  ':': ' otherwise ',
}
const POWERS: Readonly<Record<string, string>> = { '2': '²', '3': '³', '4': '⁴' }
const FUNCTIONS: Readonly<Record<string, string>> = {
  sqrt: '√',
  acos: 'arccos',
  asin: 'arcsin',
  atan: 'arctan',
  atan2: 'arctan2',
  ceil: 'round up',
  floor: 'round down',
}
const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉'

/** A table's own entry: a symbol named like something every object has is no entry. */
const own = (table: Values, key: string): string | undefined => (Object.hasOwn(table, key) ? table[key] : undefined)

/**
 * Sets a formula that is written in plain arithmetic as a book would: "A = pi * D^2 / 4" becomes "A = π·D² / 4", and with
 * values given "A = π·(1.75 in)² / 4". Text that is no plain arithmetic comes back as it is.
 */
export function setEquation(equation: string, values: Values = {}): string {
  const tokens = tokenise(equation)
  if (!tokens) return equation
  let text = ''
  for (let i = 0; i < tokens.length; i += 1) {
    const token = tokens[i] as Token
    const before = tokens[i - 1]
    const after = tokens[i + 1]
    text += ifBefore(tokens, i)
    if (token.text === '^') {
      const power = after?.kind === 'number' ? own(POWERS, after.text) : undefined
      text += power ?? '^'
      if (power) i += 1
    } else if (token.kind === 'operator') {
      text += isSign(before, token) ? '−' : own(OPERATORS, token.text)
    } else if (token.kind === 'name') {
      text += setName(token.text, before, after, values)
    } else {
      text += token.kind === 'comma' ? ', ' : token.text
    }
  }
  return text
}

/** A choice ("condition ? this : that") is told in words: an "if" stands where its condition begins. */
function ifBefore(tokens: readonly Token[], at: number): string {
  const opens = tokens[at - 1]?.text === '=' || tokens[at - 1]?.text === ':'
  const rest = tokens.slice(at).map((t) => t.text)
  const [choice, other] = [rest.indexOf('?'), rest.indexOf(':')]
  return opens && choice >= 0 && (other < 0 || choice < other) ? 'if ' : ''
}

/** A symbol as it is set: Greek by its letter, a trailing figure below the line. */
export function setSymbol(symbol: string): string {
  const [, stem = symbol, figures = ''] = /^(.*?[A-Za-z])_?(\d*)$/.exec(symbol) ?? []
  const [head = '', ...tail] = stem.split('_')
  const name = [own(GREEK, head) ?? head, ...tail].join('_')
  return name + [...figures].map((f) => SUBSCRIPTS[Number(f)]).join('')
}

function setName(name: string, before: Token | undefined, after: Token | undefined, values: Values): string {
  if (after?.kind === 'open') return own(FUNCTIONS, name) ?? name
  const value = own(values, name)
  if (value === undefined) return setSymbol(name)
  const touches = (t: Token | undefined) => t !== undefined && /^[*/^]$/.test(t.text)
  const bracket = /^[−-]/.test(value) || (/\s|°/.test(value) && (touches(before) || touches(after)))
  return bracket ? `(${value})` : value
}

/** A minus that follows nothing, an operator or an opening bracket is a sign. */
function isSign(before: Token | undefined, token: Token): boolean {
  return token.text === '-' && (before === undefined || before.kind === 'operator' || before.kind === 'open' || before.kind === 'comma')
}

function tokenise(equation: string): Token[] | null {
  const kinds = ['name', 'number', 'operator', 'open', 'close', 'comma'] as const
  const tokens: Token[] = []
  const text = equation.trim()
  TOKEN.lastIndex = 0
  while (TOKEN.lastIndex < text.length) {
    const match = TOKEN.exec(text)
    if (!match) return null
    const at = match.slice(1).findIndex((m) => m !== undefined)
    tokens.push({ kind: kinds[at] as Token['kind'], text: match[at + 1] as string })
  }
  return tokens
}
