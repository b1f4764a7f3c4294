import type { Warning, WarningCode } from '../../core/index.js';

/** Collects what a reader had to assume. Each code is noted once a file, at the place where it first came up. */
export interface Notes {
  add(code: WarningCode, message: string, path?: string): void;
  list(): readonly Warning[];
}

/** Notes of one file: each code once, at the place where it first came up. */
export function createNotes(): Notes {
  const noted = new Map<WarningCode, Warning>();
  return {
    add(code, message, path) {
      if (!noted.has(code)) noted.set(code, path === undefined ? { code, message } : { code, message, path });
    },
    list: () => [...noted.values()],
  };
}
