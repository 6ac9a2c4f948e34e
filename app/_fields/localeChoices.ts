import { usableLocale } from '@/app/_words/usableLocale';
import { formatNumber } from '@/shared/formatNumber';

const tags =
  'en-US en-GB en-IE en-CA en-AU en-NZ en-ZA en-IN de-DE de-AT de-CH fr-FR fr-BE fr-CH fr-CA nl-NL nl-BE ' +
  'es-ES es-MX es-AR pt-PT pt-BR it-IT it-CH sv-SE nb-NO da-DK fi-FI is-IS et-EE lv-LV lt-LT pl-PL cs-CZ ' +
  'sk-SK hu-HU sl-SI hr-HR ro-RO bg-BG el-GR tr-TR uk-UA he-IL ar-EG ar-SA hi-IN id-ID ms-MY vi-VN th-TH ' +
  'zh-CN zh-TW ja-JP ko-KR';

/** Ways of writing numbers and dates, each with a sample; the one in use is among them, whatever it is. */
export function localeChoices(inUse: string): readonly Readonly<{ value: string; label: string }>[] {
  const names = new Intl.DisplayNames('en', { type: 'language' });
  const all = tags.split(' ');
  return [...new Set(all.includes(inUse) ? all : [inUse, ...all])].map((value) => {
    const locale = usableLocale(value);
    return {
      value,
      label: `${names.of(locale) ?? value} · ${formatNumber(1234.5, locale, { minDecimals: 2 })}`,
    };
  });
}
