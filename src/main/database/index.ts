export type { Database, ReadableDatabase, SaveHow, StoredBuild, WritableDatabase } from './database.ts'
export { BACKUP_FOLDER, FILE_NAME, type OpenOptions, openDatabase } from './open.ts'
export { troubleOf } from './trouble.ts'
