/** Area of an ellipse with semi-axes `a`, `b`, in the square of their unit. */
export function ellipseArea(a: number, b: number): number {
  return Math.PI * a * b;
}

/**
 * Perimeter of an ellipse with semi-axes `a`, `b`, in their unit. Relative error -3e-8 at 3:1, -1.2e-5 at 10:1, at
 * worst -4.0e-4 (a flat ellipse).
 * @see Ramanujan 1914, "Modular equations and approximations to pi", second formula
 */
export function ellipsePerimeter(a: number, b: number): number {
  const ratio = (a - b) / (a + b);
  const h = ratio * ratio;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}
