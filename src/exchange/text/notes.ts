import type { Warning, WarningCode } from '../../core/index.js';

/** Collects what a reader had to assume. Each code is noted once per file, at the place where it first came up. */
export interface Notes {
  add(code: WarningCode, message: string, path?: string, figures?: Warning['figures']): void;
  /** Counts what comes up in many readings; `message` is made once, from the count. */
  count(code: WarningCode, path: string, message: (count: number) => string): void;
  list(): readonly Warning[];
}

interface Counted {
  readonly path: string;
  readonly message: (count: number) => string;
  count: number;
}

/** Notes of one file: each code once, at the place where it first came up. */
export function createNotes(): Notes {
  const noted = new Map<WarningCode, Warning | Counted>();
  return {
    add(code, message, path, figures) {
      if (noted.has(code)) return;
      noted.set(code, {
        code,
        message,
        ...(path === undefined ? {} : { path }),
        ...(figures === undefined ? {} : { figures }),
      });
    },
    count(code, path, message) {
      const known = noted.get(code);
      if (known === undefined) noted.set(code, { path, message, count: 1 });
      else if ('count' in known) known.count++;
    },
    list: () =>
      [...noted].map(([code, note]) => {
        if (!('count' in note)) return note;
        const { path, message, count } = note;
        return { code, message: message(count), path, figures: { count } };
      }),
  };
}
