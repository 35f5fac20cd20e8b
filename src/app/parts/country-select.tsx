/** The list of countries by name, in the phone's own control. */
import { countryName } from '../answer-text';
import { countryCodes } from '../countries';

interface CountryProps {
  readonly id: string;
  readonly country: string | undefined;
  readonly none: string;
  readonly onCountry: (country: string | undefined) => void;
}

export function CountrySelect({ id, country, none, onCountry }: CountryProps) {
  const named = countryCodes
    .map((code) => ({ code, name: countryName(code) }))
    .sort((a, b) => a.name.localeCompare(b.name));
  return (
    <select
      id={id}
      value={country ?? ''}
      onChange={(event) => onCountry(event.currentTarget.value === '' ? undefined : event.currentTarget.value)}
    >
      <option value="">{none}</option>
      {named.map(({ code, name }) => (
        <option key={code} value={code}>
          {name}
        </option>
      ))}
    </select>
  );
}
