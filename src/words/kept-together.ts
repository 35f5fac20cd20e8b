/**
 * What a line must not part: a number and its unit, "40 m", "26 W", and the code of a core or a cable, "FT240-31", "RG-58".
 * For what is shown on a page only; what is saved, copied, sent or spoken keeps its plain spaces and hyphens.
 */

/** SI symbols and those of the trade, alike in every language. Inches are left out: "in" is a word too, and lengths join theirs already. */
const unit = '[mck]?m|[kMG]?Hz|[mkµ]?[WVA]|[kM]?Ω|dB[id]?|[pnµ][FH]|k?g|k?N|°C|ft|AWG|min|[sh]';
const beforeUnit = new RegExp(`(?<=[\\p{Nd}½]) (?=(?:${unit})(?![\\p{L}\\p{Nd}])|%)`, 'gu');
const insideCode = /(?<=\b(?:F?T\d+|RG))-(?=\d)/g;

/** The same text, with no-break spaces before units and word joiners around the hyphens of codes. */
export const keptTogether = (text: string): string =>
  text.replace(beforeUnit, '\u00a0').replace(insideCode, '\u2060-\u2060');
