import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { IsInt, IsOptional, IsUUID, Max, Min } from 'class-validator';

export const MOST_ITEMS = 200;
const USUAL_ITEMS = 50;

/** `?limit=&cursor=` of every list. A slice's own query extends it with its filters. */
export class ListQuery {
  @ApiProperty({ type: 'integer', required: false, minimum: 1, maximum: MOST_ITEMS, default: USUAL_ITEMS, description: 'The most items to return.', example: 50 })
  @Transform(({ value }: { value: unknown }) => (typeof value === 'string' && /^\d{1,6}$/.test(value) ? Number(value) : value))
  @IsInt({ message: `must be a whole number from 1 to ${MOST_ITEMS}` })
  @Min(1, { message: `must be a whole number from 1 to ${MOST_ITEMS}` })
  @Max(MOST_ITEMS, { message: `must be a whole number from 1 to ${MOST_ITEMS}` })
  @IsOptional()
  limit: number = USUAL_ITEMS;

  @ApiProperty({ type: 'string', required: false, description: 'The `nextCursor` of the page before; leave it out for the first page.' })
  @IsUUID('all', { message: 'must be the nextCursor of an earlier answer' })
  @IsOptional()
  cursor?: string;
}

export interface Page<T> {
  readonly items: readonly T[];
  readonly nextCursor: string | null;
}

/** Cuts the extra row off that told whether there is another page. */
export function pageOf<T extends { id: string }>(rows: readonly T[], limit: number): Page<T> {
  const items = rows.slice(0, limit);
  return { items, nextCursor: rows.length > limit ? (items.at(-1)?.id ?? null) : null };
}

export function mapPage<T, U>(page: Page<T>, map: (item: T) => U): Page<U> {
  return { items: page.items.map(map), nextCursor: page.nextCursor };
}

/** Filter of a list by one id. */
export function IdFilter(description: string): PropertyDecorator {
  return applyDecorators(
    ApiProperty({ type: 'string', format: 'uuid', required: false, description }),
    IsUUID('all', { message: 'must be the id (a UUID) of one of them' }),
    IsOptional(),
  );
}
