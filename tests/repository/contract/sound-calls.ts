/** A call of an exported function with sound arguments, and what may be left undone to them. */
export interface SoundCall {
  readonly args: readonly unknown[];
  /** Places of arguments that may be left out. */
  readonly optional?: readonly number[];
  /** Places of objects of options: there a name that the function has not is refused. */
  readonly options?: readonly number[];
  /** Places of results of the package, whose kind is checked and not each figure in them, and of arrays that are only written to. */
  readonly results?: readonly number[];
  /** Kinds of garbage that are sound at a place, such as a text where any label will do. */
  readonly sound?: Readonly<Record<number, readonly GarbageKind[]>>;
  /** Properties that may be infinite, by the end of their path. */
  readonly infinite?: readonly string[];
  /** Properties that may hold anything or are not read, by the end of their path: `name`, `source`. */
  readonly free?: readonly string[];
}

export type GarbageKind = 'nothing' | 'null' | 'text' | 'number' | 'NaN' | 'list' | 'flag' | 'object';

/** The sound calls of a room by the name of the function, and the exports that do not keep the contract yet. */
export interface RoomContract {
  readonly calls: Readonly<Record<string, () => SoundCall>>;
  /** Must only shrink: a function that keeps the contract may not stand here. */
  readonly notYet: readonly string[];
}
