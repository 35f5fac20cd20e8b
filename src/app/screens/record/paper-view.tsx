/** A paper of the plan as it prints, with the ways to get it out of the phone above it. */
import type { ComponentChildren } from 'preact';
import { type Paper, type PaperPart, type PaperTable, paperText } from '../../../plan/paper';
import { recordScreen } from '../../../words/en/record-screen';
import type { Message } from '../../../words/message';
import { saveFile } from '../../files';
import { fileNameOf } from '../../handover/send-file';
import { SendText } from '../../jobs/send-text';
import { useSay } from '../../say';
import '../../jobs/jobs.css';
import '../share/share.css';
import '../sheet/sheet.css';
import './record.css';

interface PaperViewProps {
  readonly paper: Paper;
  /** Of the file, without its ending. */
  readonly fileName: string;
  readonly how: Message;
  readonly kind: 'record' | 'card';
  onKept?(): void;
  /** What is said of the paper beside it and is not printed. */
  readonly children?: ComponentChildren;
}

export function PaperView({ paper, fileName, how, kind, onKept, children }: PaperViewProps) {
  const say = useSay();
  const keep = (): void => {
    saveFile(fileNameOf(fileName, 'txt'), paperText(paper), 'text/plain;charset=utf-8');
    onKept?.();
  };
  return (
    <>
      <div class="no-print paper-ways">
        {children}
        <div class="ways">
          <button type="button" class="btn go" onClick={() => print()}>
            {say(recordScreen.print)}
          </button>
          <button type="button" class="btn tall" onClick={keep}>
            {say(recordScreen.keep)}
          </button>
          <SendText title={paper.title} text={() => paperText(paper)} main={false} />
        </div>
        <p class="small">{say(how)}</p>
      </div>
      <article class={`sheet on-paper paper paper-${kind}`}>
        <header>
          <h1 tabIndex={-1}>{paper.title}</h1>
        </header>
        <div class={kind === 'card' ? 'danger lead' : 'lead'}>
          {paper.lead.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
        <div class="paper-parts">
          {paper.parts.map((part) => (
            <Part key={part.heading ?? ''} part={part} />
          ))}
        </div>
      </article>
    </>
  );
}

function Part({ part: { heading, lines, isList, tables } }: { readonly part: PaperPart }) {
  return (
    <section>
      {heading !== null && <h2>{heading}</h2>}
      {tables.length > 0 && (
        <div class="paper-tables">
          {tables.map((table) => (
            <Table key={table.caption} table={table} />
          ))}
        </div>
      )}
      {isList ? (
        <ul>
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      ) : (
        lines.map((line) => <p key={line}>{line}</p>)
      )}
    </section>
  );
}

/** Wider than a phone only where letters are made very large: then it is moved aside in a box of its own. */
const Table = ({ table: { caption, head, rows } }: { readonly table: PaperTable }) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved sideways must be reached by keys to be moved by them
  <section class="paper-table" tabIndex={0} aria-label={caption}>
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          {head.map((title) => (
            <th key={title} scope="col">
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...cells], index) => (
          <tr key={index}>
            <th scope="row">{name}</th>
            {cells.map((cell, column) => (
              <td key={head[column + 1]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </section>
);
