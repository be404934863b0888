import type { workerWords as English } from '../en/worker.ts';

export const worker: ReturnType<typeof English> = {
  theWiringCannotBeWorkedOut: (message) => `De bedrading kan niet uitgerekend worden: ${message}`,
  theEngineFailedDetailYour: (detail) => `De rekenkern faalde: ${detail}. Je metingen zijn veilig.`,
  theEngineCouldNotStartError: (error) => `De rekenkern kon niet starten: ${error}`,
  aMessageCouldNotBeRead: 'een bericht kon niet gelezen worden',
  theEngineStoppedTwiceInARow: (detail: string) =>
    `De rekenkern stopte twee keer achter elkaar${detail === '' ? '' : ` (${detail})`}. Je metingen zijn veilig: probeer opnieuw, of bewaar de klus als bestand.`,
  theEngineHasNotAnsweredFor: (seconds) =>
    `De rekenkern heeft ${seconds} seconden niet geantwoord en is opnieuw gestart. Je metingen zijn veilig: probeer opnieuw.`,
  aNewerQuestionTookItsPlace: 'Een nieuwere vraag kwam in de plaats.',
  theEngineWasPutAway: 'De rekenkern is opgeruimd.',
};
