/** A figure stays on one line with its fraction and its unit: “1” at the end of a line and “⅜ in” on the next would be read as two. */
export const unbroken = (text: string): string => text
  .replace(/(\d) (?=[¼-¾⅐-⅞]|\d+\/\d)/g, '$1\u00a0')
  .replace(/([\d¼-¾⅐-⅞]) (?=(?:mm|cm|m|in|ft|yd|%)(?![a-z]))/g, '$1\u00a0');
