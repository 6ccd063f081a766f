/** The language of all sentences is English, with the country of a shop that speaks it: "en-GB". */
export function languageOf(locale: string | undefined): string {
  const { language, region } = new Intl.Locale(locale ?? 'en-GB');
  return language === 'en' && region !== undefined ? `en-${region}` : 'en';
}
