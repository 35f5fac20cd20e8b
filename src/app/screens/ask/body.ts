/** What every kind of question body is given. */
import type { Question } from '../../../advice/route';
import type { DraftAnswers } from '../../../design/answers';

export interface BodyProps {
  readonly question: Question;
  /** The plan's own answers. */
  readonly answers: DraftAnswers;
  /** With what is set for all plans. */
  readonly draft: DraftAnswers;
  /** Text typed into a field of this question and not yet accepted. */
  readonly typed: (field: string) => string | undefined;
  readonly onTyped: (field: string, text: string) => void;
  /** Saves an answer; an empty record takes it back. */
  readonly onAnswer: (answer: DraftAnswers) => void;
  /** Accepts a typed answer, clears the text of its field, and goes on. */
  readonly onAccept: (answer: DraftAnswers, field: string) => void;
  readonly onNext: () => void;
  readonly onNotSure: () => void;
  /** Set by the body: called by "Next". True lets it go on. */
  readonly accept: { current: () => boolean };
}
