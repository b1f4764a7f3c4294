import { TintladderError } from '../../core/index.js';

/** Bytes that arrive in pieces: a web stream, a Node stream, or any other async iterable of bytes. */
export type ByteSource = ReadableStream<Uint8Array> | AsyncIterable<Uint8Array>;

/**
 * The pieces of a source one after another. The source is cancelled when the caller stops early, and when the signal is aborted, whose reason is
 * then thrown.
 *
 * @throws TintladderError `invalid-option` for what is no source of bytes
 */
export async function* piecesOf(source: ByteSource, signal?: AbortSignal): AsyncGenerator<Uint8Array, void, undefined> {
  signal?.throwIfAborted();
  const { next, cancel } = openSource(source);
  const abortion = watch(signal);
  try {
    while (true) {
      const pending = next();
      const part = await (abortion ? Promise.race([pending, abortion.promise]) : pending);
      if (part.done) return;
      if (!(part.value instanceof Uint8Array)) {
        throw new TintladderError('invalid-option', {
          path: 'stream',
          received: part.value,
          expected: 'pieces of bytes',
        });
      }
      yield part.value;
    }
  } finally {
    abortion?.stop();
    // a source that waits for bytes that never come must not hold up the end
    void Promise.resolve(cancel()).catch(() => undefined);
  }
}

interface OpenSource {
  next(): Promise<{ readonly done?: boolean | undefined; readonly value?: unknown }>;
  cancel(): unknown;
}

function openSource(source: ByteSource): OpenSource {
  if (typeof source === 'object' && source !== null) {
    if ('getReader' in source) {
      const reader = source.getReader();
      return { next: () => reader.read(), cancel: () => reader.cancel() };
    }
    if (Symbol.asyncIterator in source) {
      const iterator = source[Symbol.asyncIterator]();
      return { next: () => iterator.next(), cancel: () => iterator.return?.() };
    }
  }
  throw new TintladderError('invalid-option', {
    path: 'stream',
    received: source,
    expected: 'a stream or an async iterable of bytes',
  });
}

/** A promise that fails when the signal is aborted. */
function watch(signal: AbortSignal | undefined): { readonly promise: Promise<never>; stop(): void } | undefined {
  if (!signal) return undefined;
  let stop: () => void = () => undefined;
  const promise = new Promise<never>((_, reject) => {
    const onAbort = () => reject(signal.reason);
    signal.addEventListener('abort', onAbort);
    stop = () => signal.removeEventListener('abort', onAbort);
  });
  promise.catch(() => undefined);
  return { promise, stop: () => stop() };
}
