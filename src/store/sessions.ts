/** Sessions and the password's proof, kept hashed; times in whole seconds since 1970. */
import { jsonQuery, type Query, type Tx } from './query.ts';

export interface SessionRow {
  readonly startedAt: number;
  readonly usedAt: number;
}

/** The session with this hash, or null. */
export const sessionOf = (idHash: string): Query<SessionRow | null> =>
  jsonQuery(
    `select (select json_object('startedAt', started_at, 'usedAt', used_at) from session where id_hash = ?) as body`,
    [idHash],
  );

export const startSession = (tx: Tx, idHash: string, now: number): Promise<void> =>
  tx.run('insert into session (id_hash, started_at, used_at) values (?, ?, ?)', [idHash, now, now]);

export const touchSession = (tx: Tx, idHash: string, now: number): Promise<void> =>
  tx.run('update session set used_at = ? where id_hash = ?', [now, idHash]);

export const endSession = (tx: Tx, idHash: string): Promise<void> =>
  tx.run('delete from session where id_hash = ?', [idHash]);

/** Ends every session started or last used before these moments. */
export const endOldSessions = (tx: Tx, limits: SessionRow): Promise<void> =>
  tx.run('delete from session where started_at < ? or used_at < ?', [limits.startedAt, limits.usedAt]);

/** How a password is proved: salt and hash as base64, and the parameters of scrypt as JSON. */
export interface PasswordProof {
  readonly salt: string;
  readonly parameters: string;
  readonly hash: string;
}

export const passwordProof: Query<PasswordProof | null> = jsonQuery(
  `select (select json_object('salt', salt, 'parameters', parameters, 'hash', hash) from password) as body`,
);

/** Keeps the proof of a new password; whoever came in with the old one must come in again. */
export async function keepPassword(tx: Tx, proof: PasswordProof): Promise<void> {
  await tx.run('delete from session');
  await tx.run('insert or replace into password (id, salt, parameters, hash) values (1, ?, ?, ?)', [
    proof.salt,
    proof.parameters,
    proof.hash,
  ]);
}
