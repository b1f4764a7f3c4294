/** Text that Markdown shows as it is: no markup, no HTML, no link, one line. */
export function escapeMarkdown(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Cs}\u2028-\u202e\u2066-\u2069]+/gu, ' ')
    .replace(/[\\`*_{}[\]<>#|~&$@]/g, '\\$&')
    .replace(/:(?=\/\/)/g, '\\:')
    .replace(/\bwww\./gi, (match) => `${match.slice(0, -1)}\\.`)
    .replace(/^(\s*)([-+=])/, '$1\\$2')
    .replace(/^(\s*\d+)([.)])(?=\s|$)/, '$1\\$2');
}
