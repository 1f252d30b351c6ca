/**
 * A line broken between words into lines of at most `width` characters, later ones indented by two, so that one answer
 * can be told from the next. A word longer than that stays whole. With `width` null the line comes back as it is.
 */
export const wrapped = (line: string, width: number | null): string => {
  if (width === null) return line;
  const lines: string[] = [];
  let last = '';
  for (const word of line.split(' ')) {
    if (last.trim() !== '' && last.length + 1 + word.length > width) {
      lines.push(last);
      last = `  ${word}`;
    } else {
      last = last === '' ? word : `${last} ${word}`;
    }
  }
  return [...lines, last].join('\n');
};
