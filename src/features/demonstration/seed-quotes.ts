import { Injectable } from '@nestjs/common';
import { CreateQuote, IssueQuote, type QuoteBody, ReviseQuote } from '../quotes/index.js';
import { COMPANY } from './content/company.js';
import type { DemoQuote, DemoRevision } from './content/quote.js';
import { ACCEPTED_QUOTES } from './content/quotes-accepted.js';
import { OPEN_QUOTES } from './content/quotes-open.js';
import type { Scene } from './scene.js';

/** The quotes, each as far as issued, in the order in which they were made: so their numbers follow the days. */
@Injectable()
export class SeedQuotes {
  constructor(
    private readonly createQuote: CreateQuote,
    private readonly issueQuote: IssueQuote,
    private readonly reviseQuote: ReviseQuote,
  ) {}

  async execute(scene: Scene): Promise<void> {
    const quotes = [...ACCEPTED_QUOTES, ...OPEN_QUOTES].sort((a, b) => b.madeDaysAgo - a.madeDaysAgo);
    for (const quote of quotes) await this.make(scene, quote);
  }

  private async make(scene: Scene, quote: DemoQuote): Promise<void> {
    const made = scene.calendar.moment(quote.madeDaysAgo, '16:00');
    const id = scene.newId(`quote ${quote.key}`, made);
    const place = quote.surveyed ? { surveyId: scene.id(`survey ${quote.feature}`) } : { featureId: scene.id(`feature ${quote.feature}`) };
    await scene.on(made, () => this.createQuote.execute(scene.as('estimator'), { id, ...place, title: quote.title, ...lines(scene, quote) }));
    if (quote.issuedDaysAgo !== null) await this.issue(scene, id, quote.issuedDaysAgo);
    if (quote.revised !== undefined) await this.revise(scene, id, quote.revised);
  }

  private async revise(scene: Scene, id: string, revision: DemoRevision): Promise<void> {
    const moment = scene.calendar.moment(revision.issuedDaysAgo, '09:00');
    await scene.on(moment, () => this.reviseQuote.execute(scene.as('estimator'), id, { reason: revision.reason, ...lines(scene, revision) }));
    await this.issue(scene, id, revision.issuedDaysAgo);
  }

  private async issue(scene: Scene, id: string, daysAgo: number): Promise<void> {
    await scene.on(scene.calendar.moment(daysAgo, '10:00'), () => this.issueQuote.execute(scene.as('estimator'), id));
  }
}

type Lines = Pick<QuoteBody, 'labor' | 'parts' | 'other'>;

function lines(scene: Scene, { sections = [], ...always }: Pick<DemoQuote, 'labor' | 'parts' | 'other' | 'sections'>): Lines & Pick<QuoteBody, 'sections'> {
  const all = [linesIn(scene, always, null), ...sections.map((section) => linesIn(scene, section, section.key))];
  return {
    sections: sections.map(({ key, title, phase, optional = false }) => ({ key, title, phase, optional })),
    labor: all.flatMap(({ labor }) => labor ?? []),
    parts: all.flatMap(({ parts }) => parts ?? []),
    other: all.flatMap(({ other }) => other ?? []),
  };
}

function linesIn(scene: Scene, { labor, parts, other = [] }: Pick<DemoQuote, 'labor' | 'parts' | 'other'>, section: string | null): Lines {
  const { currency } = COMPANY;
  return {
    labor: labor.map((item) => (typeof item === 'string' ? { costCode: item, section } : { costCode: item[0], quantity: item[1], section })),
    parts: parts.map(([sku, quantity, costCode]) => ({ partId: scene.id(`part ${sku}`), quantity, costCode, section })),
    other: other.map(([description, price, cost, costCode]) => ({
      description, quantity: '1', unitPrice: { amount: price, currency }, unitCost: { amount: cost, currency }, taxCategory: null, costCode, section,
    })),
  };
}
