import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDatabase } from '../../src/main/database/index.ts';
import { makeDispatch } from '../../src/main/hosts/dispatch.ts';
import { startLoopback } from '../../src/main/hosts/loopback.ts';
import { findProgram } from '../../src/main/hosts/program.ts';
import { makeProcedures } from '../../src/main/procedures/index.ts';
/**
 * Starts the program on a data folder of its own.
 * @param prepare lays something into the data folder first
 */
export async function startProgram(prepare) {
    const program = findProgram();
    if (!existsSync(join(program.renderer, 'index.html')))
        throw new Error('The page is not built: npm run build first (npm test does it).');
    const folder = await mkdtemp(join(tmpdir(), 'steerwright-window-'));
    await prepare?.(folder);
    const database = openDatabase(folder, { migrationsFolder: program.migrations });
    const procedures = makeProcedures({ database, clock: () => new Date(), host: 'browser', dataFolder: folder, version: program.version });
    const faults = [];
    const log = (where, error) => {
        faults.push(`${where}: ${String(error)}`);
    };
    const loopback = await startLoopback({ dispatch: makeDispatch(procedures, log), log, renderer: program.renderer });
    return {
        address: loopback.address,
        origin: loopback.origin,
        folder,
        procedures,
        faults,
        close: async () => {
            await loopback.close();
            if (database.ok)
                database.value.close();
            await rm(folder, { recursive: true, force: true });
        },
    };
}
/** What a procedure gave, where a refusal would be a fault of the test itself. */
export function given(answer) {
    if (!answer.ok)
        throw new Error(`refused: ${JSON.stringify(answer.problems)}`);
    return answer.value;
}
