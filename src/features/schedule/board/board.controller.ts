import { Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ReadRoute } from '../../../platform/http/api.js';
import { type Reply, taggedByContent } from '../../../platform/http/reply.js';
import { BoardQuery, BoardView } from './board.dto.js';
import { ReadBoard } from './read-board.js';

@Controller('v1/board')
export class BoardController {
  constructor(private readonly board: ReadBoard) {}

  @ReadRoute(BoardView, { path: '', roles: EVERYONE, problems: ['invalid-input'], summary: 'The board of a week', description: 'Who goes where, who is off, and what must come first, in one request. The ETag is that of the whole answer: with If-None-Match, a board that has not changed is 304.' })
  async read(@CurrentActor() actor: Actor, @Query() { week }: BoardQuery): Promise<Reply<BoardView>> {
    const view = await this.board.execute(actor, week);
    return taggedByContent(view, { 'cache-control': 'private, no-cache' });
  }
}
