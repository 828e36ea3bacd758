import { defineConfig } from 'drizzle-kit'

/**
 * A new migration: change a file in src/main/database/tables, then
 *
 *     npx drizzle-kit generate --config .config/drizzle.config.ts --name what_it_does
 *
 * drizzle-kit knows neither STRICT tables nor deferred keys. So in the SQL that it wrote
 * 1. end each CREATE TABLE with `) STRICT;`, those of rebuilt tables too;
 * 2. give a key from a table to itself (`corrects`, not `task_after`) `DEFERRABLE INITIALLY DEFERRED`;
 * 3. where it rebuilds a table, take the columns that are new out of its `INSERT INTO … SELECT`: the old table has none of them;
 * 4. write what it has no word for behind the rest: the index without regard to capitals and the table of words of 0001_shelf.sql;
 * 5. leave its PRAGMA lines alone: they do nothing in a transaction, and migrate.ts sees to the keys.
 *
 * A migration that was released is never edited, and a database from before it is kept in test/fixtures/database. The test in test/main/database/schema.test.ts says how to renew the snapshot.
 */
export default defineConfig({
  dialect: 'sqlite',
  schema: './src/main/database/schema.ts',
  out: './migrations',
})
