/**
 * A fact that a reader of a result must know but that does not make the result wrong: an assumption a
 * reader made, a figure that is ill-posed, a legal oddity in the data.
 *
 * `code` is stable and for programs; `message` is a full sentence for people; `path` is a path, a wavelength
 * or a line where there is one; `figures` are those that the message names, for programs.
 */
export interface Warning {
  readonly code: string;
  readonly message: string;
  readonly path?: string;
  readonly figures?: Readonly<Record<string, number | string | readonly number[] | readonly string[]>>;
}
