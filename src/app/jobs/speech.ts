/** Says a line aloud with a voice of the phone itself. Nothing is sent anywhere: a voice that needs the network is not used. */

/** Whether the phone has a voice of its own; asked when the button is pressed, since voices arrive late. */
function localVoice(language: string): SpeechSynthesisVoice | undefined {
  const voices = speechSynthesis.getVoices().filter(({ localService }) => localService);
  return voices.find(({ lang }) => lang.toLowerCase().startsWith(language)) ?? voices.find((voice) => voice.default);
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
