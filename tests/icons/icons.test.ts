import { readdirSync, readFileSync } from 'node:fs';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { webManifest } from '../../src/app/web-manifest';
import { language } from '../../src/words/en/language';
import { manifestWords } from '../../src/words/en/manifest';

const manifest = webManifest(manifestWords, language);
const icons = [...(manifest.icons ?? []), ...(manifest.shortcuts ?? []).flatMap(({ icons }) => icons ?? [])];
const sizeOf = async (file: string) => {
  const { width, height, format, hasAlpha } = await sharp(file).metadata();
  return { size: `${width}x${height}`, format, hasAlpha };
};

test.each(icons.filter(({ src }) => src.endsWith('.png')))('$src is as large as the manifest says', async (icon) => {
  expect(await sizeOf(icon.src)).toMatchObject({ size: icon.sizes, format: 'png' });
});

// Sizes and purposes: what browsers ask for before they offer to install (W3C Web Application Manifest, "purpose" member;
// 192 and 512 are common practice, no source).
test('the manifest has what an installable app needs', () => {
  expect(manifest).toMatchObject({ name: 'Halyard', display: 'standalone', start_url: './', scope: './' });
  const of = (purpose: string) => manifest.icons?.filter((icon) => icon.purpose === purpose).map(({ sizes }) => sizes);
  expect(of('any')).toEqual(expect.arrayContaining(['192x192', '512x512']));
  expect(of('maskable')).toEqual(['512x512']);
});

test('the page names icons that exist, at their sizes', async () => {
  const page = readFileSync('src/index.html', 'utf8');
  const named = [...page.matchAll(/"\.\/(icons\/[\w.-]+)/g)].map(([, file]) => file);
  expect(named).toEqual(['icons/icon.svg', 'icons/favicon-32.png', 'icons/apple-touch-180.png']);
  expect((await sizeOf('icons/favicon-32.png')).size).toBe('32x32');
  // A home-screen icon with holes would be filled with black.
  expect(await sizeOf('icons/apple-touch-180.png')).toMatchObject({ size: '180x180', hasAlpha: false });
});

test('the icons are drawn from one picture, whose marks stay inside the maskable circle', async () => {
  expect(readdirSync('icons').filter((name) => name.endsWith('.png')).length).toBe(5);
  // Safe zone: a circle of 40 % of the icon's width (W3C Web Application Manifest, "maskable" purpose).
  const { data, info } = await sharp('icons/maskable-512.png')
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const ground = [...data.subarray(0, 3)];
  let farthest = 0;
  for (let y = 0; y < info.height; y++) {
    for (let x = 0; x < info.width; x++) {
      const at = (y * info.width + x) * info.channels;
      if (ground.some((value, channel) => Math.abs(value - data[at + channel]) > 24)) {
        farthest = Math.max(farthest, Math.hypot(x + 0.5 - info.width / 2, y + 0.5 - info.height / 2));
      }
    }
  }
  expect(farthest).toBeGreaterThan(100);
  expect(farthest).toBeLessThanOrEqual(0.4 * info.width);
});
