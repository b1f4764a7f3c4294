declare module 'color-diff' {
  export function diff(
    first: { readonly L: number; readonly a: number; readonly b: number },
    second: { readonly L: number; readonly a: number; readonly b: number },
  ): number;
}
