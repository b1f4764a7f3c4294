import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { pipeline } from 'node:stream/promises';

/** A file by which a report can be traced: its name and its SHA-256 digest (FIPS 180-4), as `sha256sum` prints it. */
export async function inputDigest(path: string): Promise<{ readonly name: string; readonly digest: string }> {
  const hash = createHash('sha256');
  await pipeline(createReadStream(path), hash);
  return { name: path, digest: hash.digest('hex') };
}
