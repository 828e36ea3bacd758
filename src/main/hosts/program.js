import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
/**
 * Finds the program's folder by walking up from a file of it to its package.json, so that the same line works from the sources,
 * from the build and from inside an installed program.
 */
export function findProgram(from = import.meta.dirname) {
    for (let folder = from;; folder = dirname(folder)) {
        const file = join(folder, 'package.json');
        if (existsSync(file)) {
            const { name, version } = JSON.parse(readFileSync(file, 'utf8'));
            if (name === 'steerwright' && typeof version === 'string') {
                return {
                    folder,
                    version,
                    migrations: join(folder, 'migrations'),
                    renderer: join(folder, 'out', 'renderer'),
                    preload: join(folder, 'out', 'preload', 'preload.cjs'),
                };
            }
        }
        if (dirname(folder) === folder)
            throw new Error('the program does not lie in its own folder: no package.json above it');
    }
}
