import type { CompanyBlock, Party } from '../../platform/documents/index.js';
import type { DocumentCompany, DocumentCustomer, DocumentSite } from './parts.js';

export function companyBlock(company: DocumentCompany): CompanyBlock {
  const reach = present([company.phone, company.email]).join(' · ');
  const licence = company.licenceNumber ? `License ${company.licenceNumber}` : null;
  return { name: company.name, lines: present([...company.addressLines, reach, licence]) };
}

export function customerParty(heading: string, customer: DocumentCustomer): Party {
  const { name, addressLines, phone, email } = customer;
  return { heading, lines: present([name, ...addressLines, phone, email]) };
}

export function siteParty({ featureName, featureKind, addressLines }: DocumentSite): Party {
  const kindIsSaid = featureName.toLowerCase().includes(featureKind.toLowerCase());
  return {
    heading: 'Site',
    lines: present([kindIsSaid ? featureName : `${featureName} (${featureKind})`, ...addressLines]),
  };
}

/** The words of the documents are English; the company's own English tells a screen reader which. */
export function documentLanguage(locale: string): string {
  return /^en\b/iu.test(locale) ? locale : 'en';
}

function present(lines: readonly (string | null)[]): string[] {
  return lines.filter((line): line is string => line !== null && line.trim() !== '');
}
