/** The summary card on a canvas, black on white whatever the screen shows, and as a PNG file. */
import { CARD_WIDTH, type CardItem, type CardLayout, type CardParts, cardLayout, type TextStyle } from './card-layout';
import type { QrDrawing } from './qr-drawing';
import { imageOf, shapeOf } from './svg-image';

const ink = '#000';
const paper = '#fff';
const edge = 56;

const fontOf = ({ weight, size }: TextStyle): string =>
  `${weight} ${size}px ${getComputedStyle(document.body).fontFamily}`;

interface Pictures {
  readonly drawing: HTMLImageElement | null;
  readonly code: QrDrawing | null;
}

export interface CardSource extends Omit<CardParts, 'drawingShape' | 'hasCode'> {
  readonly drawing: SVGSVGElement | null;
  readonly code: QrDrawing | null;
}

export async function paintCard({ content, words, drawing, code }: CardSource): Promise<Blob> {
  await document.fonts.ready;
  const pictures = { drawing: drawing === null ? null : await imageOf(drawing, CARD_WIDTH), code };
  const canvas = document.createElement('canvas');
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('no 2d canvas');
  const layout = cardLayout(
    { content, words, drawingShape: drawing === null ? null : shapeOf(drawing), hasCode: code !== null },
    (text, style) => {
      context.font = fontOf(style);
      return context.measureText(text).width;
    },
  );
  paint(canvas, context, layout, pictures);
  return blobOf(canvas);
}

function paint(canvas: HTMLCanvasElement, context: CanvasRenderingContext2D, layout: CardLayout, pictures: Pictures) {
  canvas.width = layout.width;
  canvas.height = layout.height;
  context.fillStyle = paper;
  context.fillRect(0, 0, layout.width, layout.height);
  context.fillStyle = ink;
  context.strokeStyle = ink;
  for (const item of layout.items) paintItem(context, item, pictures);
}

function paintItem(context: CanvasRenderingContext2D, item: CardItem, { drawing, code }: Pictures): void {
  switch (item.kind) {
    case 'text':
      context.font = fontOf(item.style);
      context.fillText(item.text, item.x, item.y);
      return;
    case 'rule':
      context.fillRect(edge, item.y, CARD_WIDTH - 2 * edge, item.heavy ? 4 : 2);
      return;
    case 'stripes':
      stripes(context, item.y, item.height);
      return;
    case 'drawing':
      if (drawing !== null) context.drawImage(drawing, item.x, item.y, item.width, item.height);
      return;
    case 'code':
      if (code !== null) paintCode(context, code, item);
  }
}

/** Slanted stripes: this can injure you. */
function stripes(context: CanvasRenderingContext2D, y: number, height: number): void {
  context.save();
  context.beginPath();
  context.rect(edge, y, CARD_WIDTH - 2 * edge, height);
  context.clip();
  context.lineWidth = 16;
  for (let x = edge - height; x < CARD_WIDTH; x += 36) {
    context.beginPath();
    context.moveTo(x, y + height + 4);
    context.lineTo(x + height + 8, y - 4);
    context.stroke();
  }
  context.restore();
}

function paintCode(
  context: CanvasRenderingContext2D,
  code: QrDrawing,
  { x, y, width }: Extract<CardItem, { readonly kind: 'drawing' | 'code' }>,
): void {
  context.save();
  // Whole pixels to a module keep its edges sharp.
  const module = Math.max(Math.floor(width / code.size), 1);
  context.translate(x, y);
  context.scale(module, module);
  context.fill(new Path2D(code.path));
  context.restore();
}

const blobOf = (canvas: HTMLCanvasElement): Promise<Blob> =>
  new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob === null ? reject(new Error('no PNG')) : resolve(blob)), 'image/png');
  });
