/**
 * The independent checker: it reads a book and a finished plan, trusts no solver and no code that made the plan, and
 * derives every figure again in the plainest way, on dates and exact numbers. It imports only {@code measure},
 * {@code book} and the plan's own data; never {@code forecast}, {@code safety}, {@code menu}, {@code sourcing} or what
 * builds a week's problem, so that a fault there cannot hide itself here. Slow and simple on purpose.
 */
package croftboard.plan.check;
