/** The colours of a page and its figures. Series need seven that keep apart from each other and from the text. */
export interface Palette {
  readonly paper: string;
  readonly ink: string;
  readonly soft: string;
  readonly grid: string;
  readonly limit: string;
  readonly series: readonly string[];
}

export const LIGHT: Palette = {
  paper: '#fff',
  ink: '#191b1e',
  soft: '#54585e',
  grid: '#e5e7e9',
  limit: '#a11d22',
  series: ['#0b5c9c', '#b3431a', '#1d7348', '#84388a', '#7d6200', '#46586a', '#ab2656'],
};

export const DARK: Palette = {
  paper: '#15171a',
  ink: '#e7e7e4',
  soft: '#a9adb3',
  grid: '#2b2f34',
  limit: '#ff9d95',
  series: ['#74b5f0', '#f2956b', '#70cd99', '#d29bdd', '#dfbf55', '#a8b8c6', '#f08db0'],
};

/** A font of the reader's own system, since a figure loads nothing. */
export const SANS = 'system-ui,-apple-system,"Segoe UI","Helvetica Neue",Arial,"Liberation Sans",sans-serif';
