/** Says a line aloud with a voice of the phone itself. Nothing is sent anywhere: a voice that needs the network is not used. */

/** A voice of the phone itself that speaks the language of the words; asked when the button is pressed, since voices arrive late. */
function localVoice(language: string): SpeechSynthesisVoice | undefined {
  const spoken = (tag: string): string | undefined => tag.toLowerCase().split(/[-_]/)[0];
  return speechSynthesis
    .getVoices()
    .find(({ localService, lang }) => localService && spoken(lang) === spoken(language));
}

export const canSpeak = (): boolean => 'speechSynthesis' in globalThis;

/** False when there is no voice that works with no signal. */
export function speak(text: string, language: string): boolean {
  if (!canSpeak()) return false;
  const voice = localVoice(language);
  if (voice === undefined) return false;
  speechSynthesis.cancel();
  const line = new SpeechSynthesisUtterance(text);
  line.voice = voice;
  line.lang = voice.lang;
  line.rate = 0.9;
  speechSynthesis.speak(line);
  return true;
}
