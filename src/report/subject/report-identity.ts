/** What a report is of and where it comes from, as the one who makes it knows it; nothing of it is looked up. */
export interface ReportIdentity {
  /** When the report was made, as it is to be printed; ISO 8601 is understood everywhere. */
  readonly date?: string | undefined;
  /** Who made it. */
  readonly author?: string | undefined;
  /** The program and its version. */
  readonly version?: string | undefined;
  /** The files that went in, each with a digest by which it can be recognised. */
  readonly inputs?: readonly { readonly name: string; readonly digest: string }[] | undefined;
}
