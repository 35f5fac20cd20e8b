/**
 * A drawing of the page as an image that stands alone: styles that come from the style sheet are written into the copy, because an image
 * sees no sheet but its own. Strokes grow with the picture.
 */
const kept = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'paint-order',
  'text-anchor',
  'font-family',
  'font-size',
  'font-weight',
] as const;

export function shapeOf(drawing: SVGSVGElement): number {
  const { width, height } = drawing.viewBox.baseVal;
  return width === 0 ? 0 : height / width;
}

export async function imageOf(drawing: SVGSVGElement, width: number): Promise<HTMLImageElement> {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const [from, to] = [drawing.querySelectorAll('*'), copy.querySelectorAll('*')];
  from.forEach((element, index) => {
    const style = getComputedStyle(element);
    for (const name of kept) to[index]?.setAttribute(name, style.getPropertyValue(name));
  });
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(Math.round(width * shapeOf(drawing))));
  const address = URL.createObjectURL(
    new Blob([new XMLSerializer().serializeToString(copy)], { type: 'image/svg+xml' }),
  );
  const image = new Image();
  image.src = address;
  await image.decode();
  URL.revokeObjectURL(address);
  return image;
}
