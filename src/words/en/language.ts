/** Which language these words are: the tag that Intl, the page, the voice and the home screen go by, and which way it is written. */
export interface Language {
  /** BCP 47. */
  readonly tag: string;
  readonly direction: 'ltr' | 'rtl';
}

export const language: Language = { tag: 'en', direction: 'ltr' };
