import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import {
  BooleanField, ChoiceField, DecimalField, EmailField, Field, IntegerField, ListField, TextField, TimeZoneField,
} from '../../platform/http/fields/index.js';
import { minorUnits } from '../../domain/money/index.js';
import { DomainError } from '../../domain/errors.js';

const CATEGORY_CODE = { test: /^[a-z0-9]+(-[a-z0-9]+)*$/, says: 'must be lower-case letters, digits and single hyphens, such as standard' };

@ApiSchema({ name: 'TaxCategory', description: 'A kind of goods or work that is taxed alike.' })
export class TaxCategoryBody {
  @TextField({ description: 'The code that lines name the category by.', max: 40, pattern: CATEGORY_CODE, example: 'materials' })
  code: string;

  @TextField({ description: 'The name on documents.', max: 80, example: 'State sales tax' })
  name: string;

  @DecimalField({ description: 'The rate in percent.', min: '0', max: '100', scale: 4, example: '6.25' })
  rate: string;
}

function checkCurrency(value: unknown): string | null {
  if (typeof value !== 'string' || !/^[A-Z]{3}$/.test(value)) return 'must be a currency by its ISO 4217 letters, such as USD';
  try {
    minorUnits(value);
    return null;
  } catch (error) {
    if (error instanceof DomainError) return 'must be a currency by its ISO 4217 letters, such as USD';
    throw error;
  }
}

function checkLocale(value: unknown): string | null {
  try {
    return typeof value === 'string' && Intl.DateTimeFormat.supportedLocalesOf(value).length > 0 ? null : 'must be a language tag (BCP 47) such as en-US';
  } catch {
    return 'must be a language tag (BCP 47) such as en-US';
  }
}

@ApiSchema({ name: 'CompanySettings' })
export class CompanyBody {
  @TextField({ description: 'The name on documents.', max: 200, example: 'Fernhollow Water Gardens' })
  name: string;

  @TextField({ description: 'The postal address, one line below the other.', max: 500, multiline: true, optional: true, example: '12 Mill Race Lane\nAlder Falls, MI 48000' })
  address?: string | null;

  @TextField({ description: 'The telephone number on documents.', max: 40, optional: true, example: '+1 555 0100' })
  phone?: string | null;

  @EmailField({ description: 'The e-mail address on documents.', optional: true, example: 'office@fernhollow.example' })
  email?: string | null;

  @TextField({ description: 'The contractor\'s licence number, as it must stand on documents.', max: 60, optional: true, example: 'MI-000000' })
  licenceNumber?: string | null;

  @Field({ description: 'The currency of all prices, by its ISO 4217 letters. It can\'t change once there are parts or quotes.', example: 'USD' }, { type: 'string', pattern: '^[A-Z]{3}$' }, checkCurrency)
  currency: string;

  @TimeZoneField({ description: 'The IANA time zone of the office; a site may have its own.' })
  timeZone: string;

  @Field({ description: 'The language tag (BCP 47) whose form dates and numbers on documents take.', example: 'en-US' }, { type: 'string' }, checkLocale)
  locale: string;

  @ChoiceField({ description: 'The units that quantities are shown in.', of: ['us', 'metric'], example: 'us' })
  unitSystem: 'us' | 'metric';

  @ChoiceField({ description: 'The paper of documents.', of: ['letter', 'a4'], example: 'letter' })
  paperSize: 'letter' | 'a4';

  @DecimalField({ description: 'What an hour of labor sells for, in the company\'s currency.', min: '0', max: '100000', scale: 4, example: '68.00' })
  laborSellRate: string;

  @DecimalField({ description: 'Hours are rounded up to a multiple of this, in hours.', min: '0', above: true, max: '24', scale: 6, example: '0.25' })
  hourIncrement: string;

  @ListField(() => TaxCategoryBody, { description: 'The tax categories that lines can name.', most: 20 })
  taxCategories: TaxCategoryBody[];

  @TextField({ description: 'The code of the tax category of labor; none when labor is not taxed.', max: 40, optional: true })
  laborTaxCategory?: string | null;

  @IntegerField({ description: 'Days from the issue of an invoice until it is due.', min: 0, max: 365, example: 30 })
  paymentTermsDays: number;

  @TextField({ description: 'How to pay, as it stands on invoices.', max: 1000, multiline: true, optional: true })
  paymentInstructions?: string | null;

  @BooleanField({ description: 'Whether photos are kept as they come, with where and with what they were taken. Otherwise that is taken out of them before they are stored.', optional: true, default: false })
  keepPhotoLocation?: boolean | null;
}

@ApiSchema({ name: 'Company', description: 'The company and its settings. Crew roles receive it without `laborSellRate`.' })
export class CompanyView {
  @ApiProperty({ type: 'string', format: 'uuid', description: 'The company.' })
  id: string;

  @ApiProperty({ type: 'string', description: 'The name on documents.' })
  name: string;

  @ApiProperty({ type: 'string', description: 'The postal address, one line below the other.' })
  address: string;

  @ApiProperty({ type: 'string', nullable: true, description: 'The telephone number on documents.' })
  phone: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The e-mail address on documents.' })
  email: string | null;

  @ApiProperty({ type: 'string', nullable: true, description: 'The contractor\'s licence number.' })
  licenceNumber: string | null;

  @ApiProperty({ type: 'string', description: 'The currency, by its ISO 4217 letters.' })
  currency: string;

  @ApiProperty({ type: 'string', description: 'The IANA time zone of the office.' })
  timeZone: string;

  @ApiProperty({ type: 'string', description: 'The language tag whose form dates and numbers take.' })
  locale: string;

  @ApiProperty({ type: 'string', enum: ['us', 'metric'], description: 'The units that quantities are shown in.' })
  unitSystem: 'us' | 'metric';

  @ApiProperty({ type: 'string', enum: ['letter', 'a4'], description: 'The paper of documents.' })
  paperSize: 'letter' | 'a4';

  @ApiProperty({ type: 'string', required: false, description: 'What an hour of labor sells for, in the company\'s currency; only for owner and estimator.' })
  laborSellRate?: string;

  @ApiProperty({ type: 'string', description: 'Hours are rounded up to a multiple of this, in hours.' })
  hourIncrement: string;

  @ApiProperty({ type: [TaxCategoryBody], description: 'The tax categories that lines can name; rates in percent.' })
  taxCategories: TaxCategoryBody[];

  @ApiProperty({ type: 'string', nullable: true, description: 'The tax category of labor.' })
  laborTaxCategory: string | null;

  @ApiProperty({ type: 'integer', description: 'Days from the issue of an invoice until it is due.' })
  paymentTermsDays: number;

  @ApiProperty({ type: 'string', nullable: true, description: 'How to pay, as it stands on invoices.' })
  paymentInstructions: string | null;

  @ApiProperty({ type: 'boolean', description: 'Whether photos keep where and with what they were taken.' })
  keepPhotoLocation: boolean;
}
