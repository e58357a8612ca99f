/** The migrated database that each test file copies its own from. */
export const templateName = 'rillbook_template';
