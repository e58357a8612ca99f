/** What every dose says first: the figure is arithmetic, and nobody should pour by arithmetic alone. */
export const LABEL_DECIDES = "This is arithmetic: the product's label and a qualified person decide the dose. Wear what the label says, and dissolve and spread it away from the fish.";
