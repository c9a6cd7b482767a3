import { accessSync, constants, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Kysely, SqliteDialect } from 'kysely';
import Database from 'libsql';
import { MIGRATIONS } from './migrations.ts';
import type { Tables } from './tables.ts';

export type Db = Kysely<Tables>;
export interface Store {
  db: Db;
  /** Where originals and their smaller copies lie. */
  mediaFolder: string;
  close(): Promise<void>;
}

/** What keeps the data folder from being used, in words for the person who starts the server. */
export class StoreRefused extends Error {}

/**
 * Opens (or makes) the diary's data folder. Every commit reaches the disk before it is acknowledged
 * (write-ahead log with synchronous FULL). Throws StoreRefused when the folder cannot be written.
 */
export function openStore(folder: string): Store {
  const mediaFolder = join(folder, 'media');
  makeWritable(folder, mediaFolder);
  const file = join(folder, 'bundwalk.db');
  const raw = openDatabase(file);
  migrate(raw);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: raw }) });
  return { db, mediaFolder, close: () => db.destroy() };
}

function makeWritable(folder: string, mediaFolder: string): void {
  try {
    mkdirSync(mediaFolder, { recursive: true });
    accessSync(folder, constants.W_OK);
    const probe = join(folder, `.probe-${process.pid}`);
    writeFileSync(probe, 'x'.repeat(4096));
    rmSync(probe);
  } catch (error) {
    throw new StoreRefused(
      `The data folder ${folder} cannot be written (${reason(error)}). Nothing was changed. ` +
        'Free some space or allow writing there, or name another folder with DATA=…, and start again.',
    );
  }
}

function openDatabase(file: string): Database.Database {
  try {
    const raw = new Database(file);
    for (const pragma of ['busy_timeout=5000', 'journal_mode=WAL', 'synchronous=FULL', 'foreign_keys=ON'])
      raw.pragma(pragma);
    return raw;
  } catch (error) {
    throw new StoreRefused(
      `The diary's database ${file} cannot be opened (${reason(error)}). The file was left as it is; ` +
        'keep a copy of the folder before anything else.',
    );
  }
}

function migrate(raw: Database.Database): void {
  raw.exec('create table if not exists migrations (name text primary key, applied_at text not null)');
  const known = new Set(
    (raw.prepare('select name from migrations').all() as { name: string }[]).map((row) => row.name),
  );
  const applied = new Set(MIGRATIONS.map((migration) => migration.name));
  const newer = [...known].filter((name) => !applied.has(name));
  if (newer.length > 0) {
    throw new StoreRefused(
      `This data folder was written by a newer Bundwalk (${newer.join(', ')}). Use that version or newer.`,
    );
  }
  for (const migration of MIGRATIONS) {
    if (known.has(migration.name)) continue;
    raw.transaction(() => {
      for (const sql of migration.sql) raw.exec(sql);
      raw.prepare('insert into migrations values (?, ?)').run(migration.name, new Date().toISOString());
    })();
  }
}

const reason = (error: unknown): string => {
  const { code, message } = error as NodeJS.ErrnoException;
  return code === 'ENOSPC'
    ? 'the disk is full'
    : code === 'EROFS' || code === 'EACCES'
      ? 'it is read-only for us'
      : message;
};
