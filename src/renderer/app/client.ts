import * as z from 'zod'
import {
  CONTRACT,
  type ProcedureInput,
  type ProcedureName,
  type ProcedureOutput,
  type Procedures,
  problem,
} from '../../shared/contract/contract.ts'
import { readToken } from './token.ts'

declare global {
  interface Window {
    /** one function a procedure, put there by the program's own window; absent in a browser */
    readonly steerwright?: Procedures
  }
}

/** The program did not answer, or not in the form agreed. Its message is written for the reader. */
export class HostError extends Error {
  override readonly name = 'HostError'
}

/** True in the program's own window, false in a browser. */
export const inOwnWindow = (): boolean => window.steerwright !== undefined

/** What the host says about a call that it did not carry out: a list of problems, as the contract's own refusals are. */
const refused = z.object({ problems: z.array(problem) })

async function refusalOf(response: Response): Promise<string> {
  const read = refused.safeParse(await response.json().catch(() => null))
  if (!read.success) return `The program met an error of its own (${response.status}).`
  return read.data.problems.map((one) => one.sentence).join(' ')
}

async function post(name: ProcedureName, input: unknown): Promise<unknown> {
  const token = readToken()
  if (token === null) {
    throw new HostError('This page was opened without its token. Open the whole address that the program printed when it started.')
  }
  const response = await fetch(`/rpc/${name}`, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', Authorization: `Bearer ${token}` },
    body: JSON.stringify(input),
  }).catch(() => {
    throw new HostError('The program no longer answers. It may have been ended in its terminal: start it again and open the new address.')
  })
  if (!response.ok) throw new HostError(await refusalOf(response))
  return await response.json()
}

/**
 * Calls a procedure of the program through whichever door there is.
 * @returns what the contract says comes out, checked against it
 * @throws HostError where no answer came or it was not in the agreed form
 */
export async function call<N extends ProcedureName>(name: N, input: ProcedureInput<N>): Promise<ProcedureOutput<N>> {
  const answer: unknown = window.steerwright === undefined ? await post(name, input) : await window.steerwright[name](input)
  const read = CONTRACT[name].output.safeParse(answer)
  if (!read.success)
    throw new HostError('The program answered in a form this window does not know. Window and program may be of two versions.')
  return read.data as ProcedureOutput<N>
}

/** The message of anything thrown, for the reader. */
export const messageOf = (error: unknown): string =>
  error instanceof HostError
    ? error.message
    : `The window met an error of its own: ${error instanceof Error ? error.message : String(error)}`
