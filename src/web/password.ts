/** Proves the password by scrypt without keeping it. */
import { randomBytes, type ScryptOptions, scrypt, timingSafeEqual } from 'node:crypto';
import { ok, type Result } from '../husbandry/result.ts';
import { keepPassword, type PasswordProof, passwordProof, type Store } from '../store/index.ts';

/** N = 2^15, r = 8, p = 3: about 32 MB and a few tenths of a second a guess. */
const PARAMETERS = { N: 2 ** 15, r: 8, p: 3 };
const MEMORY_PER_BLOCK = 128;
const SALT_BYTES = 16;
const HASH_BYTES = 32;

/** Keeps the proof of this password; if it is not the one proved before, every session ends. */
export async function setPassword(store: Store, password: string): Promise<Result<null>> {
  const before = await store.ask(passwordProof);
  if (before !== null && (await proves(password, before))) return ok(null);
  const proof = await proofOf(password);
  return store.write(async (tx) => {
    await keepPassword(tx, proof);
    return ok(null);
  });
}

/** Whether this is the password proved. */
export async function isPassword(store: Store, password: string): Promise<boolean> {
  const proof = await store.ask(passwordProof);
  return proof !== null && proves(password, proof);
}

async function proofOf(password: string): Promise<PasswordProof> {
  const salt = randomBytes(SALT_BYTES);
  const hash = await derive(password, salt, PARAMETERS);
  return {
    salt: salt.toString('base64'),
    parameters: JSON.stringify(PARAMETERS),
    hash: hash.toString('base64'),
  };
}

async function proves(password: string, { salt, parameters, hash }: PasswordProof): Promise<boolean> {
  const derived = await derive(password, Buffer.from(salt, 'base64'), JSON.parse(parameters));
  const kept = Buffer.from(hash, 'base64');
  return derived.length === kept.length && timingSafeEqual(derived, kept);
}

const derive = (password: string, salt: Buffer, parameters: typeof PARAMETERS): Promise<Buffer> =>
  new Promise((resolve, reject) => {
    const maxmem = 2 * MEMORY_PER_BLOCK * parameters.N * parameters.r;
    const options: ScryptOptions = { ...parameters, maxmem };
    scrypt(password.normalize('NFC'), salt, HASH_BYTES, options, (error, hash) =>
      error === null ? resolve(hash) : reject(error),
    );
  });
