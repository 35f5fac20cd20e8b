// Draws the PNG icons from icon.svg: `node icons/make-icons.mjs`. The files are committed; run it when the drawing changes.
// All marks of the drawing lie inside the maskable circle, and its ground fills the square, so no padding is added.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

const svg = readFileSync(new URL('./icon.svg', import.meta.url));
const files = { 'favicon-32': 32, 'apple-touch-180': 180, 'icon-192': 192, 'icon-512': 512, 'maskable-512': 512 };

for (const [name, size] of Object.entries(files)) {
  const png = await sharp(svg, { density: 72 * (size / 512) * 2 })
    .resize(size, size)
    .flatten({ background: '#191510' })
    .png({ compressionLevel: 9, palette: true })
    .toBuffer();
  await sharp(png).toFile(fileURLToPath(new URL(`./${name}.png`, import.meta.url)));
}
