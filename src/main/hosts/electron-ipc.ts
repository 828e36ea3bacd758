import { type IpcMainInvokeEvent, ipcMain } from 'electron'
import { CONTRACT, type ProcedureName } from '../../shared/contract/contract.ts'
import { isOwnPage } from '../window/address.ts'
import { type Dispatch, refusal } from './dispatch.ts'
import type { Log } from './log.ts'

/** The channel of a procedure. The preload uses the same. */
export const channelOf = (name: ProcedureName): string => `steerwright:${name}`

/**
 * Mounts every procedure of the contract. Each message's sender is checked before anything is read from it: only the top frame of
 * the program's own page may ask. Nothing else in the program listens to `ipcMain`.
 */
export function mountProcedures(dispatch: Dispatch, log: Log): void {
  for (const name of Object.keys(CONTRACT) as ProcedureName[]) handle(name, dispatch, log)
}

function handle(name: ProcedureName, dispatch: Dispatch, log: Log): void {
  ipcMain.handle(channelOf(name), async (event, input: unknown) => {
    if (!isTrusted(event)) {
      log(`${name} from a foreign page`, undefined)
      return refusal('sender', '', 'Only the program’s own page may ask.')
    }
    return (await dispatch(name, input)).body
  })
}

function isTrusted({ sender, senderFrame }: IpcMainInvokeEvent): boolean {
  return senderFrame !== null && senderFrame === sender.mainFrame && isOwnPage(senderFrame.url)
}
