/** What to do, a sentence to a line, so that it can be read out to a second person line by line. */
import { language } from '../../../words/en/language';

interface StepTextProps {
  readonly text: string;
  readonly kind: 'do' | 'held-text';
}

export function StepText({ text, kind }: StepTextProps) {
  const lines = sentencesOf(text);
  if (lines.length === 1) return <p class={kind}>{text}</p>;
  return (
    <ul class={kind}>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

/** By the rules of the language (Unicode text segmentation, UAX 29). An older browser gets the text in one piece. */
function sentencesOf(text: string): readonly string[] {
  if (!('Segmenter' in Intl)) return [text];
  const sentences = new Intl.Segmenter(language.tag, { granularity: 'sentence' }).segment(text);
  return [...sentences].map(({ segment }) => segment.trim());
}
